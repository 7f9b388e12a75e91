import type { Part } from "../../build/part.ts";
import { edgesOf, type Polygon } from "../../geometry/polygon.ts";
import { overlaps } from "../../geometry/rect.ts";
import { SAME_LENGTH } from "../../geometry/tolerance.ts";
import type { Finding } from "../check.ts";
import type { Rule } from "./context.ts";
import { pairsOf } from "./pairs.ts";

/** No two boards of one layer lie on each other. */
export const boardOverlap: Rule = (fit) => {
  const { build, make } = fit;
  const out: Finding[] = [];
  let count = 0;
  for (const surface of build.surfaces) {
    for (const layer of layersOf(fit.parts(surface.id, "board", "floor board"))) {
      count += layer.length;
      for (const [a, b] of pairsOf(layer)) {
        if (!overlaps(a.rect, b.rect)) continue;
        const area = sharedArea(outlineOf(a), outlineOf(b));
        // A sliver as wide as the tolerance over the whole edge is no overlap.
        if (area <= SAME_LENGTH * (a.rect.v1 - a.rect.v0 + a.rect.u1 - a.rect.u0)) continue;
        const facts = { one: a.id, other: b.id, area };
        out.push(make("boards overlap", facts, { verdict: "stop", at: `board-overlap/${a.id}/${b.id}`, about: [a.id, b.id] }));
      }
    }
  }
  if (out.length > 0 || count === 0) return out;
  return [make("boards side by side", { count }, { verdict: "pass", at: "board-overlap", about: [] })];
};

/** Boards that share a plane. */
function layersOf(boards: readonly Part[]): readonly (readonly Part[])[] {
  const planes = new Map<string, Part[]>();
  for (const board of boards) {
    const key = `${board.layer ?? ""}/${board.depth.from.toFixed(5)}`;
    const alike = planes.get(key);
    if (alike === undefined) planes.set(key, [board]);
    else alike.push(board);
  }
  return [...planes.values()];
}

function outlineOf({ id, shape }: Part): readonly Polygon[] {
  if (shape.kind !== "panel") throw new RangeError(`board ${id} has no outline`);
  return shape.outline;
}

/**
 * Area that two outlines share, m2. Exact for edges along the axes, as boards have them: between two neighbouring
 * values of u the inside of either is the same set of stretches in v.
 */
export function sharedArea(a: readonly Polygon[], b: readonly Polygon[]): number {
  const lines = [...new Set([...a, ...b].flatMap(({ outer, holes }) => [outer, ...holes].flat().map(({ x }) => x)))].sort((x, y) => x - y);
  return lines.slice(1).reduce((area, to, index) => {
    const from = lines[index] as number;
    const middle = (from + to) / 2;
    return area + (to - from) * sharedLength(stretchesAt(a, middle), stretchesAt(b, middle));
  }, 0);
}

type Stretch = readonly [number, number];

/** The stretches of v that lie inside the outlines at this u. */
function stretchesAt(outline: readonly Polygon[], u: number): readonly Stretch[] {
  return outline.flatMap(({ outer, holes }) => {
    const cuts = [outer, ...holes]
      .flatMap((ring) => edgesOf(ring))
      .filter(([p, q]) => Math.min(p.x, q.x) < u && u < Math.max(p.x, q.x))
      .map(([p, q]) => p.y + ((q.y - p.y) * (u - p.x)) / (q.x - p.x))
      .sort((x, y) => x - y);
    return cuts.flatMap((start, index): readonly Stretch[] => (index % 2 === 0 ? [[start, cuts[index + 1] ?? start]] : []));
  });
}

function sharedLength(a: readonly Stretch[], b: readonly Stretch[]): number {
  return a.reduce(
    (sum, [a0, a1]) => sum + b.reduce((inner, [b0, b1]) => inner + Math.max(0, Math.min(a1, b1) - Math.max(a0, b0)), 0),
    0,
  );
}
