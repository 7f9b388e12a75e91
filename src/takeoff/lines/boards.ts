import type { Part } from "../../build/part.ts";
import { catalogue } from "../../catalogue/catalogue.ts";
import type { BoardRow } from "../../catalogue/rows.ts";
import { isRect, type Polygon } from "../../geometry/polygon.ts";
import { rectHeight, rectWidth } from "../../geometry/rect.ts";
import { apply } from "../../working/formula.ts";
import { given, type Quantity } from "../../working/quantity.ts";
import { netArea } from "../formulas.ts";
import { type NestedSheet, nestSheets, SHEET_KERF, type SheetPiece } from "../nestSheets.ts";
import type { CutPiece, TakeoffLine } from "../takeoff.ts";
import { areaOf, byKey, firstOf, piecesOf, rowField } from "./partQuantities.ts";

/** Boards, plates and coverings by row and sheet size, with the list of pieces to cut. */
export function boardLines(
  parts: readonly Part[],
  labels: ReadonlyMap<string, string>,
): { readonly lines: readonly TakeoffLine[]; readonly cutList: readonly CutPiece[] } {
  const lines: TakeoffLine[] = [];
  const cutList: CutPiece[] = [];
  const boards = byKey(parts, (part) =>
    part.shape.kind === "panel" && part.row?.table === "boards" ? `${part.row.id}${part.temporary ? " temporary" : ""}` : undefined,
  );
  for (const group of boards.values()) {
    const row = catalogue.boards.get(firstOf(group).row?.id ?? "");
    const partOf = new Map(group.map((part) => [part.id, part]));
    const nested = bySize(nestSheets(group.map(blankOf), row.stock));
    for (const [size, sheets] of nested) {
      const taken = sheets.flatMap(({ placed }) => placed.map(({ piece }) => partFor(piece, partOf)));
      lines.push(lineOf(row, size, sheets, taken));
      cutList.push(
        ...sheets.flatMap(({ stock, placed }, at) =>
          placed.map(({ piece }) => cutPiece(piece, partFor(piece, partOf), { number: at + 1, ...stock }, row, labels)),
        ),
      );
    }
  }
  return { lines, cutList };
}

function blankOf(part: Part): SheetPiece {
  if (part.shape.kind !== "panel") throw new RangeError(`part ${part.id} is no panel`);
  const sides = [rectWidth(part.shape.blank), rectHeight(part.shape.blank)];
  return { key: part.id, width: Math.min(...sides), length: Math.max(...sides) };
}

function bySize(sheets: readonly NestedSheet[]): ReadonlyMap<string, readonly NestedSheet[]> {
  const groups = new Map<string, NestedSheet[]>();
  for (const sheet of sheets) {
    const size = sizeText(sheet.stock);
    const group = groups.get(size);
    if (group === undefined) groups.set(size, [sheet]);
    else group.push(sheet);
  }
  return new Map([...groups].sort(([, [a]], [, [b]]) => sheetArea(a) - sheetArea(b)));
}

function sheetArea(sheet: NestedSheet | undefined): number {
  if (sheet === undefined) throw new RangeError("a size without sheets");
  return sheet.stock.width * sheet.stock.length;
}

function sizeText({ width, length }: { readonly width: number; readonly length: number }): string {
  return `${(width * 1000).toFixed(0)} x ${(length * 1000).toFixed(0)} mm`;
}

function lineOf(row: BoardRow, size: string, sheets: readonly NestedSheet[], parts: readonly Part[]): TakeoffLine {
  const { stock } = firstOf(sheets);
  const special = !row.stock.some((one) => sizeText(one) === size);
  const temporary = parts.every((part) => part.temporary);
  const wholeArea = stock.width * stock.length;
  const what = special ? `${row.what}, made to size` : row.what;
  return {
    id: `boards/${row.id}/${size.replaceAll(/[^0-9]+/g, "-").replace(/-$/, "")}${temporary ? "/temporary" : ""}`,
    group: parts.every((part) => part.role === "floor board") ? "floor" : "boards",
    what: temporary ? `${what}, temporary: comes off before delivery and can be used again` : what,
    row: { table: "boards", id: row.id },
    net: apply(netArea, { A: parts.map(areaOf) }, { means: `area of ${row.what} in place` }),
    also: [piecesOf(parts, `pieces of ${row.what}`)],
    buy: {
      count: sheetsBought(sheets, wholeArea),
      unit: Math.max(stock.length, stock.width) > LONGEST_SHEET ? "roll" : "sheet",
      each: size,
      holds: rowField("boards", row, "stock size", wholeArea, { unit: "m2", symbol: "A_each", means: "area of one sheet" }),
    },
    parts: parts.map((part) => part.id),
  };
}

/** Nothing stiff is sold longer; longer pieces come off a roll. */
const LONGEST_SHEET = 6;

/** The residual is the share of sheets above the least that area alone allows. */
function sheetsBought(sheets: readonly NestedSheet[], wholeArea: number): Quantity<"1"> {
  const pieces = sheets.flatMap(({ placed }) => placed.map(({ piece }) => piece));
  const area = pieces.reduce((sum, piece) => sum + piece.width * piece.length, 0);
  const least = Math.ceil(area / wholeArea - 1e-9);
  return given(sheets.length, "1", "n_buy", "whole sheets to buy", {
    kind: "solver",
    method: `guillotine first fit decreasing with ${SHEET_KERF * 1000} mm kerf, residual as share of sheets above the least by area`,
    size: `${pieces.length} pieces`,
    residual: (sheets.length - least) / sheets.length,
  });
}

function cutPiece(piece: SheetPiece, part: Part, from: CutPiece["from"], row: BoardRow, labels: ReadonlyMap<string, string>): CutPiece {
  const cuts = part.shape.kind === "panel" ? cutsIn(part.shape.outline) : 0;
  const label = labels.get(part.id) ?? part.id;
  // A piece with holes or notches is like no other: the same count of cuts may lie elsewhere.
  const own = cuts === 0 ? "" : ` ${label}`;
  return {
    label,
    part: part.id,
    row: row.id,
    what: part.what,
    length: piece.length,
    width: piece.width,
    cuts,
    bundle: `${row.id} ${(piece.length * 1000).toFixed(1)} x ${(piece.width * 1000).toFixed(1)}${own}`,
    from,
  };
}

/** Holes, and notches: each pair of corners beyond a rectangle's four is a notch or a corner cut away. */
function cutsIn(outline: readonly Polygon[]): number {
  return outline.reduce((sum, polygon) => {
    if (isRect(polygon)) return sum;
    return sum + polygon.holes.length + Math.ceil((polygon.outer.length - 4) / 2);
  }, 0);
}

function partFor(piece: SheetPiece, partOf: ReadonlyMap<string, Part>): Part {
  const part = partOf.get(piece.key);
  if (part === undefined) throw new RangeError(`no part for the piece ${piece.key}`);
  return part;
}
