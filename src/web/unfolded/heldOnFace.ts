import type { Rect, Surface } from "../../river/screen.ts";
import type { Thing } from "./things.ts";

/**
 * Where a thing may go by hand: a drag does not leave the face. An opening may run into posts and rails, which a finding
 * tells of. A thing that was beyond already, as typed, may stay as far out as it is.
 */
export function handReach({ kind, rect }: Thing, { inside, outside }: Surface): Rect {
  const face = kind === "opening" ? outside : inside;
  return { u0: Math.min(face.u0, rect.u0), u1: Math.max(face.u1, rect.u1), v0: Math.min(face.v0, rect.v0), v1: Math.max(face.v1, rect.v1) };
}

/** A rectangle moved back within bounds that have room for it, its size kept. */
export function movedWithin(rect: Rect, bounds: Rect): Rect {
  const du = backBy(rect.u0, rect.u1, bounds.u0, bounds.u1);
  const dv = backBy(rect.v0, rect.v1, bounds.v0, bounds.v1);
  return { u0: rect.u0 + du, u1: rect.u1 + du, v0: rect.v0 + dv, v1: rect.v1 + dv };
}

/** A rectangle whose edges are pulled back to the bounds. */
export function cutTo(rect: Rect, bounds: Rect): Rect {
  return {
    u0: Math.max(rect.u0, bounds.u0), u1: Math.min(rect.u1, bounds.u1), v0: Math.max(rect.v0, bounds.v0), v1: Math.min(rect.v1, bounds.v1),
  };
}

function backBy(low: number, high: number, least: number, greatest: number): number {
  return low < least ? least - low : high > greatest ? greatest - high : 0;
}
