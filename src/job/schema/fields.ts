import { z } from "zod";
import { catalogue } from "../../catalogue/catalogue.ts";
import { kindInWords } from "../../units/kinds.ts";
import type { Kind } from "../../units/kinds.ts";
import { formatQuantity } from "../../units/format.ts";
import { parseQuantity } from "../../units/parse.ts";

/** What a custom issue carries so that the reader can say what was wrong and which form would do. */
export interface FieldProblem {
  readonly code: "unit" | "range" | "reference" | "date";
  readonly reason: string;
  readonly example: string;
}

interface Limits {
  /** Least value that is taken, SI. */
  readonly least?: number;
  /** The value has to be above this, SI. */
  readonly above?: number;
  /** Greatest value that is taken, SI. */
  readonly greatest?: number;
}

/** A quantity written as text with its unit; reads to a plain SI number. `example` is shown where the text will not do. */
export function quantity(kind: Kind, example: string, limits: Limits = {}) {
  return z
    .string()
    .max(80)
    .transform((text, context): number => {
      const read = parseQuantity(kind, text);
      if (!read.ok) return refuse(context, { code: "unit", reason: read.reason, example });
      const reason = whyOutside(kind, read.value, limits);
      return reason === undefined ? read.value : refuse(context, { code: "range", reason, example });
    })
    .meta({ description: `${kindInWords(kind)} as text with its unit`, examples: [example] });
}

function refuse(context: z.RefinementCtx, problem: FieldProblem): never {
  context.addIssue({ code: "custom", message: problem.reason, params: { ...problem } });
  return z.NEVER;
}

function whyOutside(kind: Kind, value: number, { above, least, greatest }: Limits): string | undefined {
  const text = (limit: number): string => formatQuantity(kind, limit, "metric");
  if (above !== undefined && value <= above) return `has to be above ${text(above)}`;
  if (least !== undefined && value < least) return `may not be below ${text(least)}`;
  if (greatest !== undefined && value > greatest) return `may not be above ${text(greatest)}`;
  return undefined;
}

/** A length above zero; no part of a box is longer than 20 m. */
export function size(example: string, greatest = 20) {
  return quantity("length", example, { above: 0, greatest });
}

/** A distance to a point, which may be zero or behind the origin. */
export function place(example: string) {
  return quantity("length", example, { least: -20, greatest: 20 });
}

/** A distance that may be zero. */
export function gap(example: string, greatest = 20) {
  return quantity("length", example, { least: 0, greatest });
}

/** The id of a catalogue row. */
export function rowOf(table: keyof typeof ROW_FIELDS) {
  return ROW_FIELDS[table];
}

const ROW_FIELDS = {
  boxes: rowField("boxes"),
  boards: rowField("boards"),
  sections: rowField("sections"),
  foams: rowField("foams"),
  batts: rowField("batts"),
  coatings: rowField("coatings"),
  articles: rowField("articles"),
};

function rowField(table: keyof typeof catalogue) {
  const reason = `is not in the catalogue of ${table}`;
  return z
    .string()
    .max(80, { abort: true })
    .superRefine((id, context) => {
      if (catalogue[table].has(id)) return;
      const [example = ""] = catalogue[table].nearest(id);
      refuse(context, { code: "reference", reason, example });
    })
    .meta({ description: `id of a row in the catalogue of ${table}`, examples: catalogue[table].rows.map(({ id }) => id) });
}

/** An id that the job gives itself: letters, digits and hyphens, so that it can stand in file names and labels. */
export const ownId = z
  .string()
  .regex(/^[A-Za-z][A-Za-z0-9-]{0,39}$/, "letters, digits and hyphens, starting with a letter, 40 at most")
  .meta({ description: "id within this job", examples: ["D1"] });

/** One line of plain text. */
export const words = z.string().trim().min(1).max(200).meta({ description: "a line of text", examples: ["in a few words"] });

/** The name of one of the job's own build-ups. */
export const buildUpName = z.string().max(40).meta({ description: "name of one of the job's build-ups", examples: ["wall"] });

/** Where an opening or a fire rating stands. */
export const faceOrPartition = z
  .string()
  .max(40)
  .meta({ description: "a face of the box, or the id of a partition", examples: ["left"] });

/** A calendar day. */
export const day = z
  .string()
  .superRefine((text, context) => {
    if (isDay(text)) return;
    refuse(context, { code: "date", reason: "is not a calendar day", example: "2027-02-01" });
  })
  .meta({ description: "calendar day as year-month-day", examples: ["2027-02-01"] });

function isDay(text: string): boolean {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (match === null) return false;
  const [year, month, date] = [Number(match[1]), Number(match[2]), Number(match[3])];
  if (year < 1970 || year > 2199) return false;
  const at = new Date(Date.UTC(year, month - 1, date));
  return at.getUTCMonth() === month - 1 && at.getUTCDate() === date;
}
