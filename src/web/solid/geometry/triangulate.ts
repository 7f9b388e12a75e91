import { ShapeUtils, Vector2 } from "three";
import type { Polygon, Vec2 } from "../../../river/screen.ts";

/** Triangles that cover a polygon, each counter-clockwise. */
export function triangulate({ outer, holes }: Polygon): readonly (readonly [Vec2, Vec2, Vec2])[] {
  const points = [outer, ...holes].flat();
  const faces = ShapeUtils.triangulateShape(vectors(outer), holes.map(vectors));
  return faces.flatMap(([i, j, k]) => {
    const a = points[i ?? -1];
    const b = points[j ?? -1];
    const c = points[k ?? -1];
    if (a === undefined || b === undefined || c === undefined) return [];
    return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x) < 0 ? [[a, c, b] as const] : [[a, b, c] as const];
  });
}

function vectors(ring: readonly Vec2[]): Vector2[] {
  return ring.map(({ x, y }) => new Vector2(x, y));
}
