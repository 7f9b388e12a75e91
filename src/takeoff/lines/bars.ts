import type { Part } from "../../build/part.ts";
import { catalogue } from "../../catalogue/catalogue.ts";
import type { SectionRow } from "../../catalogue/rows.ts";
import { apply } from "../../working/formula.ts";
import { given, type Quantity } from "../../working/quantity.ts";
import { netLength } from "../formulas.ts";
import { type BarPiece, nestBars, type NestedBar, SAW_KERF, spliced } from "../nestBars.ts";
import type { CutPiece, TakeoffLine } from "../takeoff.ts";
import { byKey, firstOf, lengthOf, piecesOf, rowField } from "./partQuantities.ts";

/** Bars by section and stock length, with the list of pieces to cut. Temporary bars stand apart: they come off and are used again. */
export function barLines(
  parts: readonly Part[],
  labels: ReadonlyMap<string, string>,
): { readonly lines: readonly TakeoffLine[]; readonly cutList: readonly CutPiece[] } {
  const lines: TakeoffLine[] = [];
  const cutList: CutPiece[] = [];
  const bars = byKey(parts, (part) =>
    part.shape.kind === "bar" && part.row?.table === "sections" ? `${part.row.id}${part.temporary ? " temporary" : ""}` : undefined,
  );
  for (const group of bars.values()) {
    const row = catalogue.sections.get(firstOf(group).row?.id ?? "");
    const partOf = new Map(group.map((part) => [part.id, part]));
    const pieces = group.flatMap((part) => spliced({ key: part.id, length: lengthOf(part).value }, row.stockLengths));
    const nested = byStock(nestBars(pieces, row.stockLengths));
    for (const [stock, taken] of nested) {
      lines.push(lineOf(row, stock, taken, partOf));
      cutList.push(...taken.flatMap((bar, at) => bar.pieces.map((piece) => cutPiece(piece, at + 1, stock, row, partOf, labels))));
    }
  }
  return { lines, cutList };
}

function byStock(bars: readonly NestedBar[]): ReadonlyMap<number, readonly NestedBar[]> {
  const groups = new Map<number, NestedBar[]>();
  for (const bar of [...bars].sort((a, b) => a.stock - b.stock)) {
    const group = groups.get(bar.stock);
    if (group === undefined) groups.set(bar.stock, [bar]);
    else group.push(bar);
  }
  return groups;
}

function lineOf(row: SectionRow, stock: number, bars: readonly NestedBar[], partOf: ReadonlyMap<string, Part>): TakeoffLine {
  const pieces = bars.flatMap((bar) => bar.pieces);
  const parts = [...new Set(pieces.map(({ key }) => partFor(key, partOf)))];
  const temporary = parts.every((part) => part.temporary);
  const lengths = pieces.map((piece) => pieceLength(piece, partFor(piece.key, partOf)));
  return {
    id: `sections/${row.id}/${Math.round(stock * 1000)}${temporary ? "/temporary" : ""}`,
    group: row.material === "steel" ? "steel" : "framing",
    what: temporary ? `${row.what}, temporary: comes off before delivery and can be used again` : row.what,
    row: { table: "sections", id: row.id },
    net: apply(netLength, { L: lengths }, { means: `length of ${row.what} in place` }),
    also: [piecesOf(parts, `pieces of ${row.what}`)],
    buy: {
      count: barsBought(bars, stock),
      unit: "bar",
      each: `${(stock * 1000).toFixed(0)} mm`,
      holds: rowField("sections", row, "stock length", stock, { unit: "m", symbol: "L_each", means: "length of one bar" }),
    },
    parts: parts.map((part) => part.id),
  };
}

/** A whole part's own length, or the length of one run of a spliced part. */
function pieceLength(piece: BarPiece, part: Part): Quantity<"m"> {
  if (piece.key === part.id) return lengthOf(part);
  const field = `length of run ${piece.key.slice(part.id.length + 1)}`;
  return given(piece.length, "m", "L", `run of ${part.what}`, { kind: "part", id: part.id, field });
}

/** The residual is the share of bars above the least that length alone allows. */
function barsBought(bars: readonly NestedBar[], stock: number): Quantity<"1"> {
  const pieces = bars.flatMap((bar) => bar.pieces);
  const length = pieces.reduce((sum, piece) => sum + piece.length, 0);
  const least = Math.ceil(length / stock - 1e-9);
  return given(bars.length, "1", "n_buy", "whole bars to buy", {
    kind: "solver",
    method: `first fit decreasing with ${SAW_KERF * 1000} mm kerf, residual as share of bars above the least by length`,
    size: `${pieces.length} pieces`,
    residual: (bars.length - least) / bars.length,
  });
}

function cutPiece(
  piece: BarPiece,
  number: number,
  stock: number,
  row: SectionRow,
  partOf: ReadonlyMap<string, Part>,
  labels: ReadonlyMap<string, string>,
): CutPiece {
  const part = partFor(piece.key, partOf);
  const run = piece.key === part.id ? "" : `.${piece.key.slice(part.id.length + 1)}`;
  return {
    label: `${labels.get(part.id) ?? part.id}${run}`,
    part: part.id,
    row: row.id,
    what: part.what,
    length: piece.length,
    cuts: 0,
    bundle: `${row.id} ${(piece.length * 1000).toFixed(1)}${part.temporary ? " temporary" : ""}`,
    from: { number, length: stock },
  };
}

function partFor(key: string, partOf: ReadonlyMap<string, Part>): Part {
  const part = partOf.get(key.split("#")[0] ?? key);
  if (part === undefined) throw new RangeError(`no part for the piece ${key}`);
  return part;
}
