import type { Part } from "../../build/part.ts";
import { overlaps, type Rect } from "../../geometry/rect.ts";
import { SAME_LENGTH } from "../../geometry/tolerance.ts";
import type { Finding } from "../check.ts";
import type { Rule } from "./context.ts";
import { coveredBy } from "./outline.ts";
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
        const area = sharedArea(coveredBy(a), coveredBy(b));
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

/** Area that two sets of rectangles share, m2; within a set none share any. */
export function sharedArea(a: readonly Rect[], b: readonly Rect[]): number {
  const overlap = (p: number, q: number, r: number, s: number): number => Math.max(0, Math.min(q, s) - Math.max(p, r));
  return a.reduce(
    (sum, one) =>
      sum +
      b.reduce((inner, other) => inner + overlap(one.u0, one.u1, other.u0, other.u1) * overlap(one.v0, one.v1, other.v0, other.v1), 0),
    0,
  );
}
