import type { Part } from "../build/part.ts";
import { toWorld, type Span, type Surface } from "../build/surface.ts";
import type { Rect } from "../geometry/rect.ts";
import type { Vec3 } from "../geometry/vector.ts";

/** A block along the world's axes. */
export interface WorldBox {
  readonly x: Span;
  readonly y: Span;
  readonly z: Span;
}

export type Axis = "x" | "y" | "z";
export const AXES: readonly Axis[] = ["x", "y", "z"];

/** The block that a stretch of a surface takes in the world. */
export function worldBox(surface: Surface, rect: Rect, depth: Span): WorldBox {
  const a = toWorld(surface, rect.u0, rect.v0, depth.from);
  const b = toWorld(surface, rect.u1, rect.v1, depth.to);
  return { x: span(a.x, b.x), y: span(a.y, b.y), z: span(a.z, b.z) };
}

/** The block that a part takes in the world. */
export function partBox(surface: Surface, part: Part): WorldBox {
  return worldBox(surface, part.rect, part.depth);
}

/** A world block seen on a surface: its rectangle in u and v and its stretch inward. */
export function ontoSurface(surface: Surface, box: WorldBox): { readonly rect: Rect; readonly depth: Span } {
  const a = seen(surface, { x: box.x.from, y: box.y.from, z: box.z.from });
  const b = seen(surface, { x: box.x.to, y: box.y.to, z: box.z.to });
  const u = span(a.u, b.u);
  const v = span(a.v, b.v);
  return { rect: { u0: u.from, u1: u.to, v0: v.from, v1: v.to }, depth: span(a.w, b.w) };
}

/** The axis that a surface's inward direction runs along. */
export function normalAxis(surface: Surface): Axis {
  return axisOf(surface.inward);
}

/** The axis that a unit vector along an axis runs on. */
export function axisOf(direction: Vec3): Axis {
  if (Math.abs(direction.x) > 0.5) return "x";
  return Math.abs(direction.y) > 0.5 ? "y" : "z";
}

/** Room between two stretches; negative by how much they overlap. */
export function spanGap(a: Span, b: Span): number {
  return Math.max(a.from - b.to, b.from - a.to);
}

/** The smallest block around all of them. Throws RangeError for none. */
export function around(boxes: readonly WorldBox[]): WorldBox {
  if (boxes.length === 0) throw new RangeError("nothing to go around");
  const whole = (axis: Axis): Span => ({
    from: Math.min(...boxes.map((box) => box[axis].from)),
    to: Math.max(...boxes.map((box) => box[axis].to)),
  });
  return { x: whole("x"), y: whole("y"), z: whole("z") };
}

function seen({ origin, along, up, inward }: Surface, at: Vec3): { readonly u: number; readonly v: number; readonly w: number } {
  const from = { x: at.x - origin.x, y: at.y - origin.y, z: at.z - origin.z };
  return { u: dot(from, along), v: dot(from, up), w: dot(from, inward) };
}

function dot(a: Vec3, b: Vec3): number {
  return a.x * b.x + a.y * b.y + a.z * b.z;
}

function span(a: number, b: number): Span {
  return a < b ? { from: a, to: b } : { from: b, to: a };
}
