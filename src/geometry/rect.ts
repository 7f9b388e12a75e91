import { SAME_LENGTH } from "./tolerance.ts";

/** An axis-parallel rectangle: u0 < u1, v0 < v1, metres. */
export interface Rect {
  readonly u0: number;
  readonly u1: number;
  readonly v0: number;
  readonly v1: number;
}

/** Makes a rectangle from a corner and sizes. Throws RangeError where a size is not above zero. */
export function rectAt(u: number, v: number, width: number, height: number): Rect {
  if (!(width > 0) || !(height > 0)) throw new RangeError(`a rectangle of ${width} by ${height} m has no area`);
  return { u0: u, u1: u + width, v0: v, v1: v + height };
}

export function rectWidth(r: Rect): number {
  return r.u1 - r.u0;
}

export function rectHeight(r: Rect): number {
  return r.v1 - r.v0;
}

export function rectArea(r: Rect): number {
  return rectWidth(r) * rectHeight(r);
}

/** The rectangle grown by `by` on every side (shrunk where negative). */
export function grow(r: Rect, by: number): Rect {
  return { u0: r.u0 - by, u1: r.u1 + by, v0: r.v0 - by, v1: r.v1 + by };
}

/** The common part of two rectangles, or undefined where they share no area. */
export function intersect(a: Rect, b: Rect): Rect | undefined {
  const u0 = Math.max(a.u0, b.u0);
  const u1 = Math.min(a.u1, b.u1);
  const v0 = Math.max(a.v0, b.v0);
  const v1 = Math.min(a.v1, b.v1);
  return u1 - u0 > SAME_LENGTH && v1 - v0 > SAME_LENGTH ? { u0, u1, v0, v1 } : undefined;
}

/** The same area as these rectangles cover together, in rectangles that share none. */
export function disjoint(rects: readonly Rect[]): readonly Rect[] {
  const apart: Rect[] = [];
  for (const rect of rects) apart.push(...apart.reduce<readonly Rect[]>((pieces, taken) => pieces.flatMap((one) => without(one, taken)), [rect]));
  return apart;
}

/** What is left of a rectangle beside, below and above another. */
function without(r: Rect, taken: Rect): readonly Rect[] {
  const cut = intersect(r, taken);
  if (cut === undefined) return [r];
  const pieces = [
    { ...r, u1: cut.u0 },
    { ...r, u0: cut.u1 },
    { u0: cut.u0, u1: cut.u1, v0: r.v0, v1: cut.v0 },
    { u0: cut.u0, u1: cut.u1, v0: cut.v1, v1: r.v1 },
  ];
  return pieces.filter((piece) => rectWidth(piece) > SAME_LENGTH && rectHeight(piece) > SAME_LENGTH);
}

/** True where two rectangles share more than an edge. */
export function overlaps(a: Rect, b: Rect): boolean {
  return intersect(a, b) !== undefined;
}

/** Least distance between two rectangles, 0 where they touch or overlap, metres. */
export function rectDistance(a: Rect, b: Rect): number {
  const du = Math.max(0, a.u0 - b.u1, b.u0 - a.u1);
  const dv = Math.max(0, a.v0 - b.v1, b.v0 - a.v1);
  return Math.hypot(du, dv);
}
