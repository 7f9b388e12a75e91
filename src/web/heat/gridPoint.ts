import type { Vec2 } from "../../river/screen.ts";
import type { PictureGrid, SectionPicture } from "../../river/sections.ts";
import { distanceToPiece } from "./distance.ts";

/** What a point of a section holds. */
export interface GridPoint {
  readonly what: string;
  /** °C */
  readonly temperature: number;
  /** W/m2; undefined on a sheet, whose heat runs along its line. */
  readonly flux: number | undefined;
}

/** A point so near to a surface lies on it, m. */
const ON_SURFACE = 1e-6;

/** Material or sheet at a point, m; undefined in air and outside the window. A sheet is hit within `near`. */
export function gridPoint(picture: SectionPicture, at: Vec2, near: number): GridPoint | undefined {
  const { grid, outlines } = picture;
  const sheet = outlines.findLast(({ closed, points }) => !closed && distanceTo(points, at) <= near);
  const node = sheet === undefined ? undefined : nearestActive(grid, at);
  if (sheet !== undefined && node !== undefined) return { what: sheet.what, temperature: grid.temperature[node] as number, flux: undefined };
  // A point on a surface belongs to the solid beside it.
  const around = [{ x: 0, y: 0 }, { x: 0, y: -ON_SURFACE }, { x: 0, y: ON_SURFACE }, { x: -ON_SURFACE, y: 0 }, { x: ON_SURFACE, y: 0 }];
  return around.map(({ x, y }) => solidAt(grid, { x: at.x + x, y: at.y + y })).find((found) => found !== undefined);
}

function solidAt(grid: PictureGrid, at: Vec2): GridPoint | undefined {
  const i = stripAt(grid.xs, at.x);
  const j = stripAt(grid.ys, at.y);
  if (i === undefined || j === undefined) return undefined;
  const cell = j * (grid.xs.length - 1) + i;
  const what = grid.what[grid.whatAt[cell] as number];
  const temperature = cellTemperature(grid, i, j, shareIn(grid.xs, i, at.x), shareIn(grid.ys, j, at.y));
  if (what === undefined || temperature === undefined) return undefined;
  return { what, temperature, flux: Math.hypot(grid.flux.x[cell] as number, grid.flux.y[cell] as number) };
}

/**
 * Temperature in a cell at the shares `fx` and `fy` of its width and height, °C; undefined where no solid lies there. A cell
 * that a slope cuts is two triangles.
 */
export function cellTemperature({ xs, temperature, slope, halves }: PictureGrid, i: number, j: number, fx: number, fy: number): number | undefined {
  const cell = j * (xs.length - 1) + i;
  const rises = slope[cell] as number;
  const isUpper = rises > 0 ? fy > fx : fx + fy > 1;
  if (((halves[cell] as number) & (rises === 0 ? BOTH : isUpper ? UPPER : LOWER)) === 0) return undefined;
  const k = j * xs.length + i;
  const [a, b, c, d] = [k, k + 1, k + xs.length, k + xs.length + 1].map((node) => temperature[node] as number) as [number, number, number, number];
  if (rises === 0) return (1 - fy) * ((1 - fx) * a + fx * b) + fy * ((1 - fx) * c + fx * d);
  if (rises > 0) return isUpper ? a + fy * (c - a) + fx * (d - c) : a + fx * (b - a) + fy * (d - b);
  return isUpper ? d + (1 - fx) * (c - d) + (1 - fy) * (b - d) : a + fx * (b - a) + fy * (c - a);
}

/** Which halves of a cell hold material. */
const [LOWER, UPPER, BOTH] = [1, 2, 3];

/** The strip between two lines that holds a place; undefined beyond the first and last line. */
export function stripAt(lines: Float64Array, at: number): number | undefined {
  const last = lines.length - 1;
  if (!(at >= (lines[0] as number) && at <= (lines[last] as number))) return undefined;
  let [low, high] = [0, last - 1];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if ((lines[middle] as number) <= at) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** How much of a strip lies before a place. */
export function shareIn(lines: Float64Array, strip: number, at: number): number {
  const from = lines[strip] as number;
  return (at - from) / ((lines[strip + 1] as number) - from);
}

/** The active node nearest to a point; undefined where none is active. */
export function nearestActive({ xs, ys, active }: PictureGrid, { x, y }: Vec2): number | undefined {
  let nearest: { readonly node: number; readonly away: number } | undefined;
  ys.forEach((yOf, j) => {
    if (nearest !== undefined && Math.abs(yOf - y) >= nearest.away) return;
    xs.forEach((xOf, i) => {
      const node = j * xs.length + i;
      const away = Math.hypot(xOf - x, yOf - y);
      if (active[node] === 1 && (nearest === undefined || away < nearest.away)) nearest = { node, away };
    });
  });
  return nearest?.node;
}

/** From an open line to a point. */
function distanceTo(points: readonly Vec2[], at: Vec2): number {
  return Math.min(...points.slice(1).map((b, k) => distanceToPiece(points[k] as Vec2, b, at)));
}
