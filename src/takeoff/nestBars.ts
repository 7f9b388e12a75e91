import { SAME_LENGTH } from "../geometry/tolerance.ts";

/** A piece of a bar to be cut; `key` finds it again. */
export interface BarPiece {
  readonly key: string;
  readonly length: number;
}

export interface NestedBar {
  readonly stock: number;
  readonly pieces: readonly BarPiece[];
}

/** Saw kerf, metres: common practice for a cold saw or chop saw. */
export const SAW_KERF = 0.003;

/**
 * Cuts pieces from whole bars by first fit decreasing: longest piece first, each into the first bar with room for it and
 * for the saw's kerf. Tried with each stock length alone that can hold the longest piece, and with the shortest that
 * holds the piece at hand; the least length bought is kept, then the fewest bars, then the way tried first. No claim that
 * it is the best possible. A piece longer than every stock length throws RangeError: splice it first.
 */
export function nestBars(pieces: readonly BarPiece[], stockLengths: readonly number[]): readonly NestedBar[] {
  if (pieces.length === 0) return [];
  const ordered = [...pieces].sort(longerFirst);
  const stocks = [...stockLengths].sort((a, b) => a - b);
  const longest = Math.max(...pieces.map(({ length }) => length));
  const able = stocks.filter((stock) => longest <= stock + SAME_LENGTH);
  if (able.length === 0) throw new RangeError(`nestBars: a piece of ${longest} m is longer than every bar on sale`);
  const ways = [...able.map((stock) => firstFit(ordered, [stock])), firstFit(ordered, stocks)];
  return ways.reduce((best, way) => (isBetter(way, best) ? way : best));
}

/** Splits a piece that no bar can hold into whole bars and a rest; the joints are spliced on the job. */
export function spliced(piece: BarPiece, stockLengths: readonly number[]): readonly BarPiece[] {
  const longest = Math.max(...stockLengths);
  if (piece.length <= longest + SAME_LENGTH) return [piece];
  const whole = Math.floor((piece.length - SAME_LENGTH) / longest);
  const lengths = [...Array.from({ length: whole }, () => longest), piece.length - whole * longest];
  return lengths.map((length, at) => ({ key: `${piece.key}#${at + 1}`, length }));
}

function longerFirst(a: BarPiece, b: BarPiece): number {
  if (a.length !== b.length) return b.length - a.length;
  return a.key < b.key ? -1 : 1;
}

function firstFit(ordered: readonly BarPiece[], stocks: readonly number[]): readonly NestedBar[] {
  const bars: { stock: number; used: number; pieces: BarPiece[] }[] = [];
  for (const piece of ordered) {
    let bar = bars.find(({ stock, used }) => used + piece.length <= stock + SAME_LENGTH);
    if (bar === undefined) {
      const stock = stocks.find((length) => piece.length <= length + SAME_LENGTH);
      if (stock === undefined) throw new RangeError(`nestBars: no bar holds ${piece.length} m`);
      bar = { stock, used: 0, pieces: [] };
      bars.push(bar);
    }
    bar.used += piece.length + SAW_KERF;
    bar.pieces.push(piece);
  }
  return bars.map(({ stock, pieces }) => ({ stock, pieces }));
}

function isBetter(way: readonly NestedBar[], than: readonly NestedBar[]): boolean {
  const less = bought(than) - bought(way);
  return less > SAME_LENGTH || (less > -SAME_LENGTH && way.length < than.length);
}

function bought(bars: readonly NestedBar[]): number {
  return bars.reduce((sum, { stock }) => sum + stock, 0);
}
