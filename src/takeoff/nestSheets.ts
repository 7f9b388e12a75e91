import { SAME_LENGTH } from "../geometry/tolerance.ts";

/** A rectangle to be cut from a sheet. */
export interface SheetPiece {
  readonly key: string;
  readonly width: number;
  readonly length: number;
}

export interface SheetSize {
  readonly width: number;
  readonly length: number;
}

/** A piece in its place: corner across and along the sheet, `turned` where its length lies across. */
export interface PlacedPiece {
  readonly piece: SheetPiece;
  readonly across: number;
  readonly along: number;
  readonly turned: boolean;
}

export interface NestedSheet {
  readonly stock: SheetSize;
  readonly placed: readonly PlacedPiece[];
}

/** Kerf of a panel saw or plasma torch, metres: common practice. */
export const SHEET_KERF = 0.003;

/**
 * Cuts rectangles from whole sheets by edge-to-edge (guillotine) cuts, first fit decreasing: greatest area first, each into
 * the first rest of a sheet that holds it, as it lies or turned. Every cut leaves two rests, and rests are used again. Tried
 * with each size alone that holds every piece, and with the smallest size that holds the piece at hand; the least area
 * bought is kept, then the fewest sheets. Grain is not looked at, and no claim is made that it is the best possible.
 * A piece that fits no size comes from a sheet of its own size, to be ordered so.
 */
export function nestSheets(pieces: readonly SheetPiece[], sizes: readonly SheetSize[]): readonly NestedSheet[] {
  if (pieces.length === 0) return [];
  const ordered = [...pieces].sort(greaterFirst);
  const stocks = [...sizes].sort((a, b) => areaOf(a) - areaOf(b));
  const able = stocks.filter((stock) => ordered.every((piece) => fits(piece, stock)));
  const ways = [...able.map((stock) => firstFit(ordered, [stock])), firstFit(ordered, stocks)];
  return ways.reduce((best, way) => (isBetter(way, best) ? way : best));
}

interface Rest extends SheetSize {
  readonly across: number;
  readonly along: number;
}

function greaterFirst(a: SheetPiece, b: SheetPiece): number {
  if (areaOf(a) !== areaOf(b)) return areaOf(b) - areaOf(a);
  if (a.length !== b.length) return b.length - a.length;
  return a.key < b.key ? -1 : 1;
}

function firstFit(ordered: readonly SheetPiece[], stocks: readonly SheetSize[]): readonly NestedSheet[] {
  const sheets: { stock: SheetSize; rests: Rest[]; placed: PlacedPiece[] }[] = [];
  for (const piece of ordered) {
    let sheet = sheets.find(({ rests }) => rests.some((rest) => fits(piece, rest)));
    if (sheet === undefined) {
      const stock = stocks.find((size) => fits(piece, size)) ?? { width: piece.width, length: piece.length };
      sheet = { stock, rests: [{ ...stock, across: 0, along: 0 }], placed: [] };
      sheets.push(sheet);
    }
    const at = sheet.rests.findIndex((rest) => fits(piece, rest));
    const rest = sheet.rests[at];
    if (rest === undefined) throw new RangeError(`nestSheets: no room for ${piece.key}`);
    const turned = !fitsAsItLies(piece, rest);
    sheet.placed.push({ piece, across: rest.across, along: rest.along, turned });
    sheet.rests.splice(at, 1, ...restsOf(rest, turned ? { width: piece.length, length: piece.width } : piece));
  }
  return sheets.map(({ stock, placed }) => ({ stock, placed }));
}

/** What two cuts leave, the greater rest kept whole; the smaller stands first, so that small pieces use it up. */
function restsOf(rest: Rest, cut: SheetSize): readonly Rest[] {
  const beside = rest.width - cut.width - SHEET_KERF;
  const beyond = rest.length - cut.length - SHEET_KERF;
  const besideWhole = { across: rest.across + cut.width + SHEET_KERF, along: rest.along, width: beside, length: rest.length };
  const beyondWhole = { across: rest.across, along: rest.along + cut.length + SHEET_KERF, width: rest.width, length: beyond };
  const pair =
    beside * rest.length > beyond * rest.width
      ? [{ ...beyondWhole, width: cut.width }, besideWhole]
      : [{ ...besideWhole, length: cut.length }, beyondWhole];
  return pair.filter(({ width, length }) => width > SAME_LENGTH && length > SAME_LENGTH);
}

function fits(piece: SheetSize, into: SheetSize): boolean {
  return fitsAsItLies(piece, into) || fitsAsItLies({ width: piece.length, length: piece.width }, into);
}

function fitsAsItLies(piece: SheetSize, into: SheetSize): boolean {
  return piece.width <= into.width + SAME_LENGTH && piece.length <= into.length + SAME_LENGTH;
}

function areaOf({ width, length }: SheetSize): number {
  return width * length;
}

function isBetter(way: readonly NestedSheet[], than: readonly NestedSheet[]): boolean {
  const less = bought(than) - bought(way);
  return less > SAME_LENGTH || (less > -SAME_LENGTH && way.length < than.length);
}

function bought(sheets: readonly NestedSheet[]): number {
  return sheets.reduce((sum, { stock }) => sum + areaOf(stock), 0);
}
