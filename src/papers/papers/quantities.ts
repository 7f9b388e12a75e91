import { catalogue } from "../../catalogue/catalogue.ts";
import type { JsonValue } from "../../job/file.ts";
import type { CutPiece, TakeoffGroup, TakeoffLine } from "../../takeoff/takeoff.ts";
import type { System } from "../../units/display.ts";
import type { Quantity } from "../../working/quantity.ts";
import { csv } from "../csv.ts";
import type { Paper } from "../paper.ts";
import type { Results } from "../results.ts";
import { shownText } from "../shownText.ts";
import { amountText, liquidText, sizeText } from "../write.ts";

/** What goes into the box, and what has to be bought in whole stock. */
export const quantities: Paper = {
  id: "quantities",
  title: "Quantity list",
  make: (results) => ({
    section: { template: TEMPLATE, data: dataOf(results) },
    files: [{ path: "quantities.csv", text: table(results) }],
  }),
};

/** Titles of the groups, in the order in which they are printed. */
const GROUPS: Readonly<Record<TakeoffGroup, string>> = {
  box: "Box as bought",
  steel: "Steel",
  framing: "Framing",
  foam: "Foam",
  batts: "Batts",
  boards: "Boards",
  floor: "Floor",
  coatings: "Coatings",
  openings: "Openings and equipment",
  items: "Fit-out items",
  fasteners: "Fasteners",
  sealants: "Sealants",
};

function dataOf({ takeoff, job }: Results): JsonValue {
  const { cutList } = takeoff;
  return Object.entries(GROUPS)
    .map(([group, title]) => ({
      title,
      rows: takeoff.lines.filter((line) => line.group === group).map((line) => row(line, cutList, job.units)),
    }))
    .filter(({ rows }) => rows.length > 0);
}

function row(line: TakeoffLine, cutList: readonly CutPiece[], system: System): readonly string[] {
  const also = line.also.map((one) => alsoText(one, line, system)).join("; ");
  return [line.what, amountText(line.net, system), also, buyText(line, system), oneText(line, cutList, system)];
}

/** What one of the bought things is, in the job's units: the length of a bar, the size of a sheet, what a can or a roll holds. */
function oneText({ row, buy }: TakeoffLine, cutList: readonly CutPiece[], system: System): string {
  if (row?.table === "sections" && buy.holds !== undefined) return sizeText(buy.holds.value, system);
  if (row?.table === "coatings" && buy.holds !== undefined) return liquidText(buy.holds.value, system);
  if (row?.table === "batts") {
    const { pack, width, length } = catalogue.batts.get(row.id);
    return `${pack} of ${sizeText(width, system)} × ${sizeText(length, system)}`;
  }
  if (row?.table === "sealants") {
    const { amount, of } = catalogue.sealants.get(row.id).perPiece;
    return amountText({ value: amount, unit: of }, system);
  }
  const area = buy.holds?.value ?? Number.NaN;
  const sheet = cutList.find((piece) => piece.row === row?.id && Math.abs(piece.from.length * (piece.from.width ?? Number.NaN) - area) < SAME_AREA);
  return sheet?.from.width === undefined ? buy.each : `${sizeText(sheet.from.width, system)} × ${sizeText(sheet.from.length, system)}`;
}

/** Sheets of one row differ by far more, m2. */
const SAME_AREA = 1e-6;

/** "pieces: 19": the line says of what. */
function alsoText(also: Quantity, { what, group }: TakeoffLine, system: System): string {
  const [means = "", of = ""] = also.means.split(/ of (.*)/s);
  const amount = group === "coatings" && also.unit === "m3" ? liquidText(also.value, system) : amountText(also, system);
  return `${of !== "" && what.startsWith(of) ? means : also.means}: ${amount}`;
}

function buyText({ buy }: TakeoffLine, system: System): string {
  return `${amountText(buy.count, system)} × ${buy.unit}`;
}

/** Numbers stand unrounded in SI; the last column has the net quantity in the job's units. */
function table({ takeoff, job }: Results): string {
  const header = ["id", "group", "what", "net", "net unit", "buy", "sold by", "one is", "one holds", "holds unit", "also", "net in job units"];
  return csv(
    header,
    takeoff.lines.map((line) => [
      line.id, line.group, shownText(line.what), line.net.value, line.net.unit, line.buy.count.value, line.buy.unit, line.buy.each,
      line.buy.holds?.value, line.buy.holds?.unit, line.also.map((one) => alsoText(one, line, job.units)).join("; "),
      amountText(line.net, job.units),
    ]),
  );
}

const TEMPLATE = String.raw`
#import "style.typ": *

#let body(groups) = {
  [Net is what the parts take; buy is in whole stock as really cut or packed, with what is lost on the way.]
  grouped-listing((1.5fr, auto, 1.2fr, auto, auto), (left, right, left, right, left), ("What", "Net", "Also", "Buy", "One is"), groups)
}
`;
