import type { Rect } from "../../geometry/rect.ts";
import { edgesOf } from "../../geometry/polygon.ts";
import { SAME_LENGTH } from "../../geometry/tolerance.ts";
import type { Vec2 } from "../../geometry/vector.ts";
import type { Section } from "./section.ts";
import type { NotSolved } from "./solution.ts";

/** Lines that a mesh of the section has to have: where outlines and sheets bend, and where slopes cross such lines. */
export interface Breaks {
  readonly ok: true;
  readonly xs: readonly number[];
  readonly ys: readonly number[];
  /** Those of the lines that pass through a vertex or an edge of the window; the others only cross slopes. */
  readonly bends: { readonly xs: ReadonlySet<number>; readonly ys: ReadonlySet<number> };
}

/** A straight piece of an outline or a sheet. */
export interface Segment {
  readonly a: Vec2;
  readonly b: Vec2;
}

/** More lines than this on one axis, and the section is refused: its slopes cut each other's lines without end. */
const MOST_BREAKS = 300;

/**
 * The lines at every vertex inside the window, closed under the slopes: a line that crosses a slope brings the line of the
 * other axis through the same point, until nothing is added. Then every slope runs along diagonals of cells.
 */
export function breaksOf(section: Section): Breaks | NotSolved {
  const { window } = section;
  const xs = [window.u0, window.u1];
  const ys = [window.v0, window.v1];
  const segments = segmentsOf(section).filter((segment) => reaches(segment, window));
  for (const { a, b } of segments) {
    for (const { x, y } of [a, b]) {
      insert(xs, x);
      insert(ys, y);
    }
  }
  const slopes = segments.filter(isSlope);
  for (const { x, y } of crossings(slopes)) {
    insert(xs, x);
    insert(ys, y);
  }
  const bends = { xs: new Set(xs), ys: new Set(ys) };
  for (let added = true; added; ) {
    added = false;
    for (const slope of slopes) {
      for (const x of xs.slice()) {
        const y = yOn(slope, x);
        if (y !== undefined && insert(ys, y)) added = true;
      }
      for (const y of ys.slice()) {
        const x = xOn(slope, y);
        if (x !== undefined && insert(xs, x)) added = true;
      }
      if (xs.length > MOST_BREAKS || ys.length > MOST_BREAKS) {
        return { ok: false, reason: `the slopes of the section ask for more than ${MOST_BREAKS} lines on one axis` };
      }
    }
  }
  return { ok: true, xs, ys, bends };
}

/** Every straight piece of every outline and sheet. */
export function segmentsOf(section: Section): readonly Segment[] {
  const rings = section.regions.flatMap(({ outline }) => [outline.outer, ...outline.holes]);
  return [
    ...rings.flatMap((ring) => edgesOf(ring).map(([a, b]) => ({ a, b }))),
    ...section.sheets.flatMap(({ points }) => sheetSegments(points)),
  ];
}

/** The straight pieces between the points of a sheet. */
export function sheetSegments(points: readonly Vec2[]): readonly Segment[] {
  return points.slice(1).map((b, at) => ({ a: points[at] as Vec2, b }));
}

export function isSlope({ a, b }: Segment): boolean {
  return Math.abs(a.x - b.x) > SAME_LENGTH && Math.abs(a.y - b.y) > SAME_LENGTH;
}

/** Height of a slope at x; undefined where the slope does not pass x. */
export function yOn({ a, b }: Segment, x: number): number | undefined {
  const part = (x - a.x) / (b.x - a.x);
  return part > 0 && part < 1 ? a.y + part * (b.y - a.y) : undefined;
}

/** Place of a slope at height y; undefined where the slope does not pass y. */
export function xOn({ a, b }: Segment, y: number): number | undefined {
  const part = (y - a.y) / (b.y - a.y);
  return part > 0 && part < 1 ? a.x + part * (b.x - a.x) : undefined;
}

/** Index of the line nearest to a place among sorted lines. */
export function nearest(lines: ArrayLike<number>, at: number): number {
  const after = firstNotBelow(lines, at);
  if (after === 0) return 0;
  if (after === lines.length) return after - 1;
  return at - (lines[after - 1] as number) <= (lines[after] as number) - at ? after - 1 : after;
}

/** Adds a line between the first and the last unless one is there already; true where it was added. */
function insert(lines: number[], at: number): boolean {
  const first = lines[0] as number;
  const last = lines[lines.length - 1] as number;
  if (at <= first || at >= last) return false;
  if (Math.abs((lines[nearest(lines, at)] as number) - at) <= SAME_LENGTH) return false;
  lines.splice(firstNotBelow(lines, at), 0, at);
  return true;
}

function firstNotBelow(lines: ArrayLike<number>, at: number): number {
  let low = 0;
  let high = lines.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((lines[middle] as number) < at) low = middle + 1;
    else high = middle;
  }
  return low;
}

function reaches({ a, b }: Segment, window: Rect): boolean {
  return (
    Math.max(a.x, b.x) >= window.u0 - SAME_LENGTH &&
    Math.min(a.x, b.x) <= window.u1 + SAME_LENGTH &&
    Math.max(a.y, b.y) >= window.v0 - SAME_LENGTH &&
    Math.min(a.y, b.y) <= window.v1 + SAME_LENGTH
  );
}

/** Points where two slopes cross between their ends. */
function crossings(slopes: readonly Segment[]): readonly Vec2[] {
  return slopes.flatMap((one, at) =>
    slopes.slice(at + 1).flatMap((other) => {
      const ax = one.b.x - one.a.x;
      const ay = one.b.y - one.a.y;
      const bx = other.b.x - other.a.x;
      const by = other.b.y - other.a.y;
      const across = ax * by - ay * bx;
      const sx = other.a.x - one.a.x;
      const sy = other.a.y - one.a.y;
      const part = (sx * by - sy * bx) / across;
      const otherPart = (sx * ay - sy * ax) / across;
      if (!(part > 0 && part < 1 && otherPart > 0 && otherPart < 1)) return [];
      return [{ x: one.a.x + part * ax, y: one.a.y + part * ay }];
    }),
  );
}
