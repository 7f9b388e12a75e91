import { catalogue } from "../../catalogue/catalogue.ts";
import type { JsonValue } from "../../job/file.ts";
import type { CutPiece } from "../../takeoff/takeoff.ts";
import type { System } from "../../units/display.ts";
import { csv } from "../csv.ts";
import type { Paper } from "../paper.ts";
import type { Results } from "../results.ts";
import { shownText } from "../shownText.ts";
import { sizeText } from "../write.ts";

/** Every piece to be cut: bundles of equal pieces, and which bar or sheet each piece comes from. */
export const cutList: Paper = {
  id: "cut-list",
  title: "Cut list",
  make: (results) => ({
    section: { template: TEMPLATE, data: dataOf(results) },
    files: [{ path: "cut-list.csv", text: table(results) }],
  }),
};

function dataOf({ takeoff, job }: Results): JsonValue {
  const system = job.units;
  return [...grouped(takeoff.cutList, ({ row }) => row)].map(([row, pieces]) => ({
    row: rowName(row),
    bundles: [...grouped(pieces, (piece) => `${sizes(piece, system)} ${piece.cuts}`)].map(([, alike]) => bundleRow(alike, system)),
    stock: stockRows(pieces, system),
  }));
}

/** What the catalogue calls the stock. */
function rowName(id: string): string {
  return (catalogue.sections.has(id) ? catalogue.sections : catalogue.boards).get(id).what;
}

function bundleRow(pieces: readonly CutPiece[], system: System): readonly string[] {
  const first = firstOf(pieces);
  const labels = pieces.map(({ label }) => label).sort((a, b) => a.localeCompare(b, "en", { numeric: true }));
  return [String(pieces.length), sizes(first, system), cutsText(first), labels.join(", ")];
}

/** Bars or sheets in a row that are cut alike stand on one line: "17 to 77". */
function stockRows(pieces: readonly CutPiece[], system: System): readonly (readonly string[])[] {
  const runs: { readonly look: string; readonly bars: (readonly CutPiece[])[] }[] = [];
  for (const [, bar] of grouped(pieces, stockKey)) {
    const look = [firstOf(bar).from, ...bar].map((one) => sizes(one, system)).join(" + ");
    const last = runs.at(-1);
    if (last?.look === look) last.bars.push(bar);
    else runs.push({ look, bars: [bar] });
  }
  return runs.map(({ bars }) => runRow(bars, system));
}

function runRow(bars: readonly (readonly CutPiece[])[], system: System): readonly string[] {
  const [first = []] = bars;
  const [from, to] = [firstOf(first).from, firstOf(bars.at(-1) ?? first).from];
  if (bars.length === 1) {
    return [String(from.number), sizes(from, system), first.map((piece) => `${piece.label} ${sizes(piece, system)}`).join("; ")];
  }
  const cut = first.map((piece) => sizes(piece, system)).join(" + ");
  const labels = bars.map((bar) => bar.map(({ label }) => label).join(" + ")).join("; ");
  return [`${from.number} to ${to.number}`, sizes(from, system), `each ${cut}: ${labels}`];
}

function firstOf([first]: readonly CutPiece[]): CutPiece {
  if (first === undefined) throw new RangeError("a bar or sheet without pieces");
  return first;
}

/** One bought bar or sheet: its number within row and stock size. */
function stockKey({ from, bundle }: CutPiece): string {
  return `${from.length} ${from.width ?? ""} ${bundle.endsWith(" temporary") ? "temporary" : ""} ${from.number}`;
}

function sizes({ length, width }: { readonly length: number; readonly width?: number }, system: System): string {
  return width === undefined ? sizeText(length, system) : `${sizeText(length, system)} × ${sizeText(width, system)}`;
}

function cutsText({ cuts }: CutPiece): string {
  return cuts === 0 ? "none" : String(cuts);
}

function grouped<T>(things: readonly T[], keyOf: (thing: T) => string): ReadonlyMap<string, readonly T[]> {
  const groups = new Map<string, T[]>();
  for (const thing of things) {
    const group = groups.get(keyOf(thing));
    if (group === undefined) groups.set(keyOf(thing), [thing]);
    else group.push(thing);
  }
  return groups;
}

/** Lengths stand unrounded in metres, and beside them as a tape shows them. */
function table({ takeoff, job }: Results): string {
  const header = [
    "label", "part", "stock row", "what", "length m", "width m", "holes and notches", "bundle",
    "from number", "stock length m", "stock width m", "size in job units",
  ];
  return csv(
    header,
    takeoff.cutList.map((piece) => [
      piece.label, piece.part, piece.row, shownText(piece.what), piece.length, piece.width, piece.cuts, piece.bundle,
      piece.from.number, piece.from.length, piece.from.width, sizes(piece, job.units),
    ]),
  );
}

const TEMPLATE = String.raw`
#import "style.typ": *

#let body(rows) = {
  // A label is never broken at its hyphen.
  show regex("[A-Z][0-9]?-[A-Z][0-9.]+"): box
  [Lengths are finished lengths; the saw's kerf is in the nesting. A label names the face, the kind of piece and its number: #box[L-S03]
  is the third stud of the left wall. Measure the box before cutting.]
  for r in rows {
    heading(level: 2, outlined: false, r.row)
    heading(level: 3, outlined: false)[Pieces, equal ones together]
    listing((auto, auto, auto, 1fr), (right, left, left, left), ("Count", "Size", "Holes", "Labels"), r.bundles, size: 8pt)
    heading(level: 3, outlined: false)[#r.row: from which bar or sheet]
    listing((auto, auto, 1fr), (right, left, left), ("No.", "Stock", "Pieces in order"), r.stock, size: 8pt)
  }
}
`;
