import { isObject, type JobFile } from "../../job/file.ts";
import { contentOf } from "../../job/merge.ts";
import { writeJob } from "../../job/write.ts";

/** What makes a job another one than the job that it starts from. */
export interface Fresh {
  readonly title: string;
  readonly drawnBy: string;
  /** Calendar day, year-month-day. */
  readonly date: string;
}

/** The text of a new job made from another's: its own title, id, date and drafter, revision A. Undefined where the text is no job file. */
export function newJobText(text: string, { title, drawnBy, date }: Fresh): string | undefined {
  const from = contentOf(text);
  if (!isObject(from)) return undefined;
  const identity = isObject(from["job"]) ? from["job"] : {};
  const file: JobFile = { ...from, job: { ...identity, id: idFrom(title), title, revision: "A", date, drawnBy } };
  return writeJob(file);
}

/** A title as an id: small letters, digits and hyphens, starting with a letter, 40 at most. */
export function idFrom(title: string): string {
  const words = title.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase().replace(/[^a-z0-9]+/g, "-");
  const id = words.replace(/^[^a-z]+/, "").slice(0, LONGEST_ID).replace(/-+$/, "");
  return id === "" ? "job" : id;
}

const LONGEST_ID = 40;

/** A moment as calendar day on this device's clock. */
export function dayOf(moment: Date): string {
  const two = (n: number): string => String(n).padStart(2, "0");
  return `${moment.getFullYear()}-${two(moment.getMonth() + 1)}-${two(moment.getDate())}`;
}

/** A moment of a save as people read it: day and time on this device's clock. The text itself where it is no moment. */
export function whenText(iso: string): string {
  const moment = new Date(iso);
  if (Number.isNaN(moment.getTime())) return iso;
  const two = (n: number): string => String(n).padStart(2, "0");
  return `${dayOf(moment)} ${two(moment.getHours())}:${two(moment.getMinutes())}`;
}
