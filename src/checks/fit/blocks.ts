import type { Quantity } from "../../working/quantity.ts";
import { AXES, type Axis, type WorldBox } from "../places.ts";
import { gapBetween } from "./context.ts";

/** Axes of the world in words. */
const ALONG: Readonly<Record<Axis, string>> = { x: "along the box", y: "across the box", z: "in height" };

/** Room between two blocks along each of these axes; they share space where it is negative along all three. */
export function gapsBetween(a: WorldBox, aOn: string, b: WorldBox, bOn: string, axes: readonly Axis[] = AXES): readonly Quantity<"m">[] {
  return axes.map((axis) => gapBetween(a[axis], aOn, b[axis], bOn, ALONG[axis]));
}
