import type { Part } from "../build/part.ts";

/** Where coats go that follow on one another: the outside walls, the roof, the underside, the inside. */
export type CoatZone = "outside" | "roof" | "underside" | "inside";

/** True for a coat on the outside of the box: it lies on the far side of the inside plane. */
export function isOutside(part: Part): boolean {
  return (part.depth.from + part.depth.to) / 2 < 0 && isBoxFace(part.surface);
}

/** The zone of a coat. */
export function zoneOf(part: Part): CoatZone {
  if (!isOutside(part)) return "inside";
  if (part.surface === "roof") return "roof";
  return part.surface === "floor" ? "underside" : "outside";
}

function isBoxFace(surface: string): boolean {
  return ["left", "right", "blindEnd", "doorEnd", "roof", "floor"].includes(surface);
}
