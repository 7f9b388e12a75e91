import type { Vec2 } from "../../river/screen.ts";
import type { PictureGrid, SectionPicture } from "../../river/sections.ts";
import { lieOf } from "./frame.ts";
import { nearestActive } from "./gridPoint.ts";

/** A material or sheet of a section with the temperatures that it takes. */
export interface MaterialRow {
  /** Its number in the picture, from 1. */
  readonly number: number;
  readonly what: string;
  /** °C */
  readonly lowest: number;
  readonly highest: number;
  /** W/m2; undefined for a sheet. */
  readonly mostFlux: number | undefined;
  /** A point of it, as far right as it reaches. */
  readonly anchor: Vec2;
}

/** What a section holds: materials that are seen, then sheets, each name once. */
export function materialRows({ grid, outlines, axes }: SectionPicture): readonly MaterialRow[] {
  const { isTurned } = lieOf(axes);
  const sheets = [...new Set(outlines.filter(({ closed }) => !closed).map(({ what }) => what))];
  const found = [
    ...grid.what.flatMap((what, index) => materialOf(grid, what, index, isTurned) ?? []),
    ...sheets.flatMap((what) => sheetOf(grid, what, outlines.filter((one) => !one.closed && one.what === what).map(({ points }) => points), isTurned) ?? []),
  ];
  return found.map((row, index) => ({ number: index + 1, ...row }));
}

type Found = Omit<MaterialRow, "number">;

function materialOf(grid: PictureGrid, what: string, index: number, isTurned: boolean): Found | undefined {
  const { xs, whatAt, flux } = grid;
  const cells = [...whatAt.keys()].filter((cell) => whatAt[cell] === index);
  const nodes = cells.flatMap((cell) => {
    const i = cell % (xs.length - 1);
    const k = ((cell - i) / (xs.length - 1)) * xs.length + i;
    return [k, k + 1, k + xs.length, k + xs.length + 1];
  });
  const range = rangeOf(grid, nodes);
  if (range === undefined) return undefined;
  const mostFlux = cells.reduce((most, cell) => Math.max(most, Math.hypot(flux.x[cell] as number, flux.y[cell] as number)), 0);
  return { what, ...range, mostFlux, anchor: anchorOf(grid, cells, isTurned) };
}

/** The middle of the longest run in the last strip, rightmost on the screen, that holds one of the cells. */
function anchorOf({ xs, ys }: PictureGrid, cells: readonly number[], isTurned: boolean): Vec2 {
  const wide = xs.length - 1;
  const places = cells.map((cell) => {
    const i = cell % wide;
    const j = (cell - i) / wide;
    return isTurned ? { strip: j, along: i } : { strip: i, along: j };
  });
  const last = Math.max(...places.map(({ strip }) => strip));
  const runs = places
    .filter(({ strip }) => strip === last)
    .map(({ along }) => along)
    .reduce<number[][]>((all, along) => {
      const run = all.at(-1);
      if (run?.at(-1) === along - 1) run.push(along);
      else all.push([along]);
      return all;
    }, []);
  const lines = isTurned ? xs : ys;
  const spans = runs.map((run) => ({ from: lines[run[0] as number] as number, to: lines[(run.at(-1) as number) + 1] as number }));
  const { from, to } = spans.reduce((most, span) => (span.to - span.from > most.to - most.from ? span : most));
  const stripLines = isTurned ? ys : xs;
  const [across, along] = [((stripLines[last] as number) + (stripLines[last + 1] as number)) / 2, (from + to) / 2];
  return isTurned ? { x: along, y: across } : { x: across, y: along };
}

/** Steps in which a sheet is walked along, m: finer than the mesh where it matters. */
const STEP = 0.002;

function sheetOf(grid: PictureGrid, what: string, lines: readonly (readonly Vec2[])[], isTurned: boolean): Found | undefined {
  const points = lines.flatMap((line) => line.slice(1).flatMap((b, k) => between(line[k] as Vec2, b)));
  const range = rangeOf(grid, points.flatMap((point) => nearestActive(grid, point) ?? []));
  if (range === undefined) return undefined;
  return { what, ...range, mostFlux: undefined, anchor: points.reduce((right, point) => ((isTurned ? point.y > right.y : point.x > right.x) ? point : right)) };
}

function between(a: Vec2, b: Vec2): readonly Vec2[] {
  const count = Math.max(1, Math.ceil(Math.hypot(b.x - a.x, b.y - a.y) / STEP));
  return Array.from({ length: count + 1 }, (_, k) => ({ x: a.x + (k / count) * (b.x - a.x), y: a.y + (k / count) * (b.y - a.y) }));
}

function rangeOf({ active, temperature }: PictureGrid, nodes: readonly number[]): { readonly lowest: number; readonly highest: number } | undefined {
  let range: { lowest: number; highest: number } | undefined;
  for (const node of nodes) {
    const T = temperature[node] as number;
    if (active[node] !== 1) continue;
    range = { lowest: Math.min(range?.lowest ?? T, T), highest: Math.max(range?.highest ?? T, T) };
  }
  return range;
}
