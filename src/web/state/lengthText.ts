import { formatLength, type System } from "../../units/format.ts";

/**
 * A length in metres as text for the job file, in the job's units, in a form that is read back: `1234 mm`, `4' 0-9/16"`.
 * Imperial lengths under a foot keep their mark: `9/16"`. Rounded to the millimetre or the sixteenth of an inch.
 */
export function lengthText(metres: number, units: System): string {
  return formatLength(metres, units);
}

/** The step by which an arrow key moves things, metres: 1 mm, or 1/16 in. */
export function nudgeStep(units: System): number {
  return units === "metric" ? 0.001 : SIXTEENTH;
}

/** A length for labels while dragging, in the units of the screen. */
export function shownLength(metres: number, units: System): string {
  return formatLength(metres, units);
}

/** 1/16 in: an inch is 25.4 mm exactly. */
const SIXTEENTH = 0.0254 / 16;
