import type { Polygon } from "../../geometry/polygon.ts";
import { SAME_LENGTH } from "../../geometry/tolerance.ts";
import type { Vec2 } from "../../geometry/vector.ts";
import { breaksOf, isSlope, nearest, type Segment, segmentsOf, sheetSegments, xOn, yOn } from "./breaks.ts";
import type { Section } from "./section.ts";
import type { NotSolved } from "./solution.ts";

/**
 * What fills the cells between the lines that a section asks for, before they are divided any further.
 *
 * Cell c = J * columns + I. A slope cuts its cell along a diagonal: 1 from the lower left, -1 from the upper left, 0 where
 * none does. The lower half holds the cell's lower edge, the upper half its upper edge; each is a region's index or NOTHING.
 * Sheets lie on edges along x (J * columns + I), edges along y (J * lines of x + I) and diagonals (c) with conductivity times
 * thickness, W/K; 0 where there is none.
 */
export interface Pattern {
  readonly ok: true;
  readonly xs: Float64Array;
  readonly ys: Float64Array;
  /** 1 for a line that passes through a vertex, 0 for one that is there to cross slopes alone. */
  readonly bendsX: Uint8Array;
  readonly bendsY: Uint8Array;
  readonly diagonal: Int8Array;
  readonly lower: Int32Array;
  readonly upper: Int32Array;
  readonly sheetsAlongX: Float64Array;
  readonly sheetsAlongY: Float64Array;
  readonly sheetsAcross: Float64Array;
}

/** Of no region: no heat passes. */
export const NOTHING = -1;

/** Lays the section out on its lines; not solved where slopes cannot be fitted to any. */
export function layOut(section: Section): Pattern | NotSolved {
  const breaks = breaksOf(section);
  if (!breaks.ok) return breaks;
  const xs = Float64Array.from(breaks.xs);
  const ys = Float64Array.from(breaks.ys);
  const bendsX = Uint8Array.from(xs, (x) => (breaks.bends.xs.has(x) ? 1 : 0));
  const bendsY = Uint8Array.from(ys, (y) => (breaks.bends.ys.has(y) ? 1 : 0));
  const columns = xs.length - 1;
  const cells = columns * (ys.length - 1);
  const diagonal = new Int8Array(cells);
  for (const slope of segmentsOf(section).filter(isSlope)) {
    const steps = stepsAlong(slope, xs, ys);
    if (steps === undefined) return notFitted(slope);
    for (const { cell, rises } of steps.diagonals) {
      if (diagonal[cell] !== 0 && diagonal[cell] !== rises) return notFitted(slope);
      diagonal[cell] = rises;
    }
  }

  const sheetsAlongX = new Float64Array(columns * ys.length);
  const sheetsAlongY = new Float64Array(xs.length * (ys.length - 1));
  const sheetsAcross = new Float64Array(cells);
  for (const { points, conductivity, thickness } of section.sheets) {
    for (const segment of sheetSegments(points)) {
      const steps = stepsAlong(segment, xs, ys);
      if (steps === undefined) return notFitted(segment);
      for (const edge of steps.alongX) sheetsAlongX[edge] = (sheetsAlongX[edge] as number) + conductivity * thickness;
      for (const edge of steps.alongY) sheetsAlongY[edge] = (sheetsAlongY[edge] as number) + conductivity * thickness;
      for (const { cell } of steps.diagonals) sheetsAcross[cell] = (sheetsAcross[cell] as number) + conductivity * thickness;
    }
  }

  const { lower, upper } = fillsOf(section, xs, ys, diagonal);
  return { ok: true, xs, ys, bendsX, bendsY, diagonal, lower, upper, sheetsAlongX, sheetsAlongY, sheetsAcross };
}

interface Steps {
  readonly alongX: readonly number[];
  readonly alongY: readonly number[];
  readonly diagonals: readonly { readonly cell: number; readonly rises: 1 | -1 }[];
}

/** The edges and diagonals of cells that a segment runs along inside the window; undefined where it leaves them. */
function stepsAlong(segment: Segment, xs: Float64Array, ys: Float64Array): Steps | undefined {
  const alongX: number[] = [];
  const alongY: number[] = [];
  const diagonals: { cell: number; rises: 1 | -1 }[] = [];
  const columns = xs.length - 1;
  let last: { readonly i: number; readonly j: number } | undefined;
  for (const { x, y } of stationsOn(segment, xs, ys)) {
    const i = nearest(xs, x);
    const j = nearest(ys, y);
    if (last !== undefined) {
      const di = Math.abs(i - last.i);
      const dj = Math.abs(j - last.j);
      const i0 = Math.min(i, last.i);
      const j0 = Math.min(j, last.j);
      if (di > 1 || dj > 1) return undefined;
      if (di === 1 && dj === 1) diagonals.push({ cell: j0 * columns + i0, rises: (i - last.i) * (j - last.j) > 0 ? 1 : -1 });
      else if (di === 1) alongX.push(j * columns + i0);
      else if (dj === 1) alongY.push(j0 * xs.length + i);
    }
    last = { i, j };
  }
  return { alongX, alongY, diagonals };
}

/** Where a segment meets lines inside the window, from one end to the other. */
function stationsOn(segment: Segment, xs: Float64Array, ys: Float64Array): readonly Vec2[] {
  const { a, b } = segment;
  const along = (p: Vec2): number => (p.x - a.x) * (b.x - a.x) + (p.y - a.y) * (b.y - a.y);
  const stations = [a, b];
  const level = Math.abs(a.y - b.y) <= SAME_LENGTH;
  const upright = Math.abs(a.x - b.x) <= SAME_LENGTH;
  if (!upright) {
    for (const x of xs) {
      const y = yOn(segment, x);
      if (y !== undefined) stations.push({ x, y });
    }
  }
  if (!level) {
    for (const y of ys) {
      const x = xOn(segment, y);
      if (x !== undefined) stations.push({ x, y });
    }
  }
  return stations.filter((p) => within(xs, p.x) && within(ys, p.y)).sort((p, q) => along(p) - along(q));
}

function within(lines: Float64Array, at: number): boolean {
  return at >= (lines[0] as number) - SAME_LENGTH && at <= (lines[lines.length - 1] as number) + SAME_LENGTH;
}

function notFitted({ a, b }: Segment): NotSolved {
  return { ok: false, reason: `the slope from (${a.x}, ${a.y}) to (${b.x}, ${b.y}) m does not fit between the lines of the section` };
}

/** The last region over the centre of each half. */
function fillsOf(section: Section, xs: Float64Array, ys: Float64Array, diagonal: Int8Array): Pick<Pattern, "lower" | "upper"> {
  const columns = xs.length - 1;
  const lower = new Int32Array(diagonal.length).fill(NOTHING);
  const upper = new Int32Array(diagonal.length).fill(NOTHING);
  section.regions.forEach(({ outline }, region) => {
    const xsOuter = outline.outer.map(({ x }) => x);
    const ysOuter = outline.outer.map(({ y }) => y);
    const [left, right] = [Math.min(...xsOuter), Math.max(...xsOuter)];
    const [bottom, top] = [Math.min(...ysOuter), Math.max(...ysOuter)];
    for (let cell = 0; cell < diagonal.length; cell += 1) {
      const i = cell % columns;
      const j = (cell - i) / columns;
      const x0 = xs[i] as number;
      const x1 = xs[i + 1] as number;
      const y0 = ys[j] as number;
      const y1 = ys[j + 1] as number;
      if (x1 <= left || x0 >= right || y1 <= bottom || y0 >= top) continue;
      const rises = diagonal[cell] as number;
      if (rises === 0) {
        if (!covers(outline, (x0 + x1) / 2, (y0 + y1) / 2)) continue;
        lower[cell] = region;
        upper[cell] = region;
      } else {
        const toward = rises * ((x1 - x0) / 6);
        if (covers(outline, (x0 + x1) / 2 + toward, y0 + (y1 - y0) / 3)) lower[cell] = region;
        if (covers(outline, (x0 + x1) / 2 - toward, y1 - (y1 - y0) / 3)) upper[cell] = region;
      }
    }
  });
  return { lower, upper };
}

/** True where a point lies inside an outline and in none of its holes. */
function covers(outline: Polygon, x: number, y: number): boolean {
  let inside = winds(outline.outer, x, y);
  for (const hole of outline.holes) if (winds(hole, x, y)) inside = !inside;
  return inside;
}

function winds(ring: readonly Vec2[], x: number, y: number): boolean {
  let inside = false;
  let b = ring[ring.length - 1] as Vec2;
  for (const a of ring) {
    if (a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)) inside = !inside;
    b = a;
  }
  return inside;
}
