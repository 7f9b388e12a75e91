import type { Sweep } from "../../build/build.ts";
import type { Span } from "../../build/surface.ts";
import { edgesOf } from "../../geometry/polygon.ts";
import { SAME_LENGTH } from "../../geometry/tolerance.ts";
import type { Vec2 } from "../../geometry/vector.ts";

/** A rectangle in plan. */
export interface PlanRect {
  readonly x: Span;
  readonly y: Span;
}

/**
 * Distance in plan from the hinge to the nearest point of a convex shape that lies between the leaf's closed and open
 * position; undefined where no area of the shape lies there. Exact but for SAME_LENGTH. Domain: a sweep above 0 and up
 * to a half turn.
 */
export function nearestInSweep(sweep: Sweep, shape: readonly Vec2[]): number | undefined {
  const { hinge, from, to } = sweep;
  const start = { x: Math.cos(from), y: Math.sin(from) };
  const end = { x: Math.cos(to), y: Math.sin(to) };
  const moved = shape.map((point) => ({ x: point.x - hinge.x, y: point.y - hinge.y }));
  const between = keep(keep(moved, { x: -start.y, y: start.x }), { x: end.y, y: -end.x });
  return between.length < 3 || areaOf(between) < SAME_LENGTH ** 2 ? undefined : distanceFromOrigin(between);
}

/** The corners of a rectangle, counter-clockwise. */
export function cornersOf({ x, y }: PlanRect): readonly Vec2[] {
  return [
    { x: x.from, y: y.from },
    { x: x.to, y: y.from },
    { x: x.to, y: y.to },
    { x: x.from, y: y.to },
  ];
}

/** The swept sector as a convex outline around it: the arc is replaced by tangents that leave it nowhere by 0.1 mm for a metre. */
export function outlineOf({ hinge, radius, from, to }: Sweep): readonly Vec2[] {
  const step = (to - from) / ARC_STEPS;
  const tangent = radius / Math.cos(step / 2);
  const at = (angle: number, r: number): Vec2 => ({ x: hinge.x + r * Math.cos(angle), y: hinge.y + r * Math.sin(angle) });
  const middles = Array.from({ length: ARC_STEPS }, (_, index) => at(from + (index + 0.5) * step, tangent));
  return [{ x: hinge.x, y: hinge.y }, at(from, radius), ...middles, at(to, radius)];
}

const ARC_STEPS = 64;

/** The part of a convex shape on the side that `inner` points to, seen from the origin (Sutherland and Hodgman 1974). */
function keep(shape: readonly Vec2[], inner: Vec2): readonly Vec2[] {
  const side = (p: Vec2): number => p.x * inner.x + p.y * inner.y;
  return edgesOf(shape).flatMap(([a, b]) => {
    const [sa, sb] = [side(a), side(b)];
    const crossing = (): Vec2 => ({ x: a.x + ((b.x - a.x) * sa) / (sa - sb), y: a.y + ((b.y - a.y) * sa) / (sa - sb) });
    if (sa >= 0) return sb >= 0 ? [a] : [a, crossing()];
    return sb > 0 ? [crossing()] : [];
  });
}

function areaOf(shape: readonly Vec2[]): number {
  return Math.abs(edgesOf(shape).reduce((sum, [a, b]) => sum + (a.x * b.y - b.x * a.y) / 2, 0));
}

/** 0 where the origin lies inside the counter-clockwise shape. */
function distanceFromOrigin(shape: readonly Vec2[]): number {
  const edges = edgesOf(shape);
  if (edges.every(([a, b]) => a.x * b.y - b.x * a.y >= 0)) return 0;
  return Math.min(...edges.map(([a, b]) => distanceToEdge(a, b)));
}

function distanceToEdge(a: Vec2, b: Vec2): number {
  const edge = { x: b.x - a.x, y: b.y - a.y };
  const squared = edge.x ** 2 + edge.y ** 2;
  const along = squared === 0 ? 0 : Math.min(1, Math.max(0, -(a.x * edge.x + a.y * edge.y) / squared));
  return Math.hypot(a.x + along * edge.x, a.y + along * edge.y);
}
