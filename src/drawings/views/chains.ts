import type { System } from "../../units/display.ts";
import { formatLength, roundChain } from "../../units/format.ts";
import type { DimensionChain } from "../drawing.ts";

/** Steps that a shop reads off a tape: a millimetre, a sixteenth of an inch. */
const STEP: Readonly<Record<System, number>> = { metric: 0.001, imperial: 0.0254 / 16 };
/** Stops nearer to each other than this are one. */
const SAME_STOP = 0.0005;

type Place = Pick<DimensionChain, "direction" | "side" | "row"> & { readonly label?: string };

/** A length as drawings write it, not to be broken over lines: metric without its unit, which the title block names. */
export function lengthText(length: number, system: System): string {
  return formatLength(length, system).replace(/ mm$/, "").replaceAll(" ", "\u00A0");
}

/** Width by height, or length by width by height. */
export function sizeText(lengths: readonly number[], system: System): string {
  return lengths.map((length) => lengthText(length, system)).join(" × ");
}

/**
 * Stretches between positions `at` (along the surface, from the first one on). Each text is the difference of two rounded
 * distances from the first stop, so that the texts add up to the overall. `toView` puts a position into the view.
 */
export function chain(place: Place, at: readonly number[], system: System, toView: (at: number) => number = same): DimensionChain {
  const stops = distinct(at);
  const lengths = stops.slice(1).map((stop, index) => Math.abs(stop - (stops[index] as number)));
  const texts = roundChain(lengths, STEP[system]).map((length) => lengthText(length, system));
  return { ...place, stops: stops.map(toView), texts };
}

/** Distances from the first of the positions, the origin. */
export function runningFrom(place: Place, origin: number, at: readonly number[], system: System, toView: (at: number) => number = same): DimensionChain {
  const others = distinct([...at].sort((a, b) => a - b)).filter((stop) => Math.abs(stop - origin) > SAME_STOP);
  const ordered = others.every((stop) => stop < origin) ? [...others].reverse() : others;
  const back = ordered.length > 0 && ordered.every((stop) => stop < origin) ? -1 : 1;
  const texts = ordered.map((stop) => lengthText((stop - origin) * back, system));
  return { ...place, stops: [origin, ...ordered].map(toView), texts, running: true };
}

/** Positions without those that repeat the one before. */
function distinct(at: readonly number[]): readonly number[] {
  return at.filter((stop, index) => index === 0 || Math.abs(stop - (at[index - 1] as number)) > SAME_STOP);
}

function same(at: number): number {
  return at;
}
