import type { Interval } from "../../../geometry/interval.ts";
import { edgesOf, type Polygon } from "../../../geometry/polygon.ts";
import type { Rect } from "../../../geometry/rect.ts";
import type { Vec2 } from "../../../geometry/vector.ts";

/** The stretches in which a line square to the other axis at `at` runs through outlines in u and v. */
export function stretchesOf(outlines: readonly Polygon[], runs: "u" | "v", at: number): readonly Interval[] {
  return outlines.flatMap(({ outer, holes }) => {
    const crossings = [outer, ...holes]
      .flatMap((ring) => edgesOf(ring))
      .flatMap(([a, b]) => {
        const [ca, cb, ta, tb] = runs === "u" ? [a.y, b.y, a.x, b.x] : [a.x, b.x, a.y, b.y];
        return ca > at === cb > at ? [] : [ta + ((at - ca) / (cb - ca)) * (tb - ta)];
      })
      .sort((one, two) => one - two);
    return crossings.flatMap((from, index) => (index % 2 === 0 ? [{ from, to: crossings[index + 1] as number }] : []));
  });
}

/** The pieces of a line of straight segments that lie in a window, each with two points or more. */
export function lineInWindow(points: readonly Vec2[], window: Rect): readonly (readonly Vec2[])[] {
  const pieces: Vec2[][] = [];
  points.slice(1).forEach((b, index) => {
    const segment = segmentInWindow(points[index] as Vec2, b, window);
    if (segment === undefined) return;
    const [from, to] = segment;
    const last = pieces.at(-1);
    const end = last?.at(-1);
    if (last !== undefined && end !== undefined && Math.hypot(end.x - from.x, end.y - from.y) < 1e-9) last.push(to);
    else pieces.push([from, to]);
  });
  return pieces;
}

/** Cuts a segment to the window, side by side of the window; undefined where less than a hundredth of a millimetre is left. */
function segmentInWindow(a: Vec2, b: Vec2, { u0, u1, v0, v1 }: Rect): readonly [Vec2, Vec2] | undefined {
  let from = 0;
  let to = 1;
  const sides = [
    [b.x - a.x, u0 - a.x, u1 - a.x],
    [b.y - a.y, v0 - a.y, v1 - a.y],
  ] as const;
  for (const [run, least, most] of sides) {
    if (run === 0) {
      if (least > 0 || most < 0) return undefined;
      continue;
    }
    const ends = [least / run, most / run];
    from = Math.max(from, Math.min(...ends));
    to = Math.min(to, Math.max(...ends));
  }
  const at = (part: number): Vec2 => ({ x: a.x + part * (b.x - a.x), y: a.y + part * (b.y - a.y) });
  return (to - from) * Math.hypot(b.x - a.x, b.y - a.y) > 1e-5 ? [from === 0 ? a : at(from), to === 1 ? b : at(to)] : undefined;
}
