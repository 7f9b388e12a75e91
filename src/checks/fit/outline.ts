import type { Part } from "../../build/part.ts";
import { edgesOf, type Polygon } from "../../geometry/polygon.ts";
import type { Rect } from "../../geometry/rect.ts";

/** The rectangles that a part covers on its surface and that share no area: a panel's true outline, else its extent. */
export function coveredBy({ rect, shape }: Part): readonly Rect[] {
  return shape.kind === "panel" ? rectsOf(shape.outline) : [rect];
}

/**
 * An outline cut into rectangles. Exact for edges along the axes, as boards have them: between two neighbouring values
 * of u its inside is always the same set of stretches in v.
 */
export function rectsOf(outline: readonly Polygon[]): readonly Rect[] {
  const lines = [...new Set(outline.flatMap(({ outer, holes }) => [outer, ...holes].flat().map(({ x }) => x)))].sort((a, b) => a - b);
  return lines.slice(1).flatMap((u1, index) => {
    const u0 = lines[index] as number;
    return stretchesAt(outline, (u0 + u1) / 2).map(([v0, v1]): Rect => ({ u0, u1, v0, v1 }));
  });
}

/** The stretches of v that lie inside the outlines at this u. */
function stretchesAt(outline: readonly Polygon[], u: number): readonly (readonly [number, number])[] {
  return outline.flatMap(({ outer, holes }) => {
    const cuts = [outer, ...holes]
      .flatMap((ring) => edgesOf(ring))
      .filter(([p, q]) => Math.min(p.x, q.x) < u && u < Math.max(p.x, q.x))
      .map(([p, q]) => p.y + ((q.y - p.y) * (u - p.x)) / (q.x - p.x))
      .sort((x, y) => x - y);
    return cuts.flatMap((start, index): readonly (readonly [number, number])[] =>
      index % 2 === 0 ? [[start, cuts[index + 1] ?? start]] : [],
    );
  });
}
