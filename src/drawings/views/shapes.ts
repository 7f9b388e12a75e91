import type { Polygon } from "../../geometry/polygon.ts";
import type { Rect } from "../../geometry/rect.ts";
import type { Vec2 } from "../../geometry/vector.ts";
import type { DimensionChain, DrawnShape, Layer, View } from "../drawing.ts";
import { arcReach } from "../sheet/arc.ts";
import { TEXT } from "../style.ts";

/** How u and v of a surface come to lie in a view. */
export type Map2 = (u: number, v: number) => Vec2;

/** As seen from the side that u and v are named from. */
export const direct: Map2 = (u, v) => ({ x: u, y: v });

/** As seen from behind: what was left is right. */
export const mirrored: Map2 = (u, v) => ({ x: -u, y: v });

interface Look {
  readonly filled?: boolean;
  readonly dashed?: boolean;
}

export function ring(layer: Layer, points: readonly Vec2[], look: Look = {}): DrawnShape {
  return { kind: "polyline", layer, points, closed: true, ...look };
}

export function path(layer: Layer, points: readonly Vec2[], look: Look = {}): DrawnShape {
  return { kind: "polyline", layer, points, closed: false, ...look };
}

export function stroke(layer: Layer, from: Vec2, to: Vec2, dashed = false): DrawnShape {
  return dashed ? { kind: "line", layer, from, to, dashed } : { kind: "line", layer, from, to };
}

export function box(layer: Layer, r: Rect, map: Map2 = direct, look: Look = {}): DrawnShape {
  return ring(layer, [map(r.u0, r.v0), map(r.u1, r.v0), map(r.u1, r.v1), map(r.u0, r.v1)], look);
}

/** Outline and holes of a polygon. */
export function rings(layer: Layer, polygon: Polygon, map: Map2, look: Look = {}): readonly DrawnShape[] {
  return [polygon.outer, ...polygon.holes].map((points) => ring(layer, points.map(({ x, y }) => map(x, y)), look));
}

export function words(layer: Layer, at: Vec2, text: string, height: number = TEXT.usual, turned = false): DrawnShape {
  return { kind: "text", layer, at, text, height, align: "middle", ...(turned ? { turned } : {}) };
}

/** A view around all of its shapes. Throws RangeError where there are none. */
export function viewOf(id: string, title: string, shapes: readonly DrawnShape[], dimensions: readonly DimensionChain[] = []): View {
  let [x0, x1, y0, y1] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const shape of shapes) {
    for (const { x, y } of cornersOf(shape)) {
      x0 = Math.min(x0, x);
      x1 = Math.max(x1, x);
      y0 = Math.min(y0, y);
      y1 = Math.max(y1, y);
    }
  }
  if (!Number.isFinite(x1 - x0) || !Number.isFinite(y1 - y0)) throw new RangeError(`view ${id} has nothing to show`);
  return { id, title, extent: { min: { x: x0, y: y0 }, max: { x: x1, y: y1 } }, shapes, dimensions };
}

function cornersOf(shape: DrawnShape): readonly Vec2[] {
  switch (shape.kind) {
    case "line":
      return [shape.from, shape.to];
    case "polyline":
      return shape.points;
    case "circle":
      return [
        { x: shape.centre.x - shape.radius, y: shape.centre.y - shape.radius },
        { x: shape.centre.x + shape.radius, y: shape.centre.y + shape.radius },
      ];
    case "arc":
      return arcReach(shape);
    case "text":
      return [];
  }
}
