import type { Surface } from "../../build/surface.ts";
import type { Axis } from "../places.ts";

/** The four sides of a surface in words: toward u0, u1, v0 and v1. Walls are named as seen from outside. */
export function sidesOf(surface: Surface): readonly [string, string, string, string] {
  const isLevel = surface.id === "roof" || surface.id === "floor";
  return isLevel
    ? ["toward the blind end", "toward the door end", "toward the left wall", "toward the right wall"]
    : ["on the left", "on the right", "below", "above"];
}

/** The two directions along an axis of the world in words. */
export const TOWARD: Readonly<Record<Axis, { readonly from: string; readonly to: string }>> = {
  x: { from: "toward the blind end", to: "toward the door end" },
  y: { from: "toward the left wall", to: "toward the right wall" },
  z: { from: "toward the floor", to: "toward the ceiling" },
};

/** A finished face of a room in words. */
export function faceName(room: string, axis: Axis, end: "from" | "to"): string {
  if (axis === "x") return `the wall of ${room} ${TOWARD.x[end]}`;
  if (axis === "y") return end === "from" ? "the left wall" : "the right wall";
  return end === "from" ? `the floor of ${room}` : `the ceiling of ${room}`;
}
