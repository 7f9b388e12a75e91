import { formatLength, formatQuantity, formatSi, prettyUnit, type System } from "../units/format.ts";
import type { Kind } from "../units/kinds.ts";

/** How values of a working are written. */
export interface ValueStyle {
  /** The job's system: lengths stand in it beside the SI unit, in imperial the other common kinds too. */
  readonly system: System;
  /** Significant digits, 4 where not given. */
  readonly digits?: number;
}

/** Significant digits where no other count is asked for. */
export const USUAL_DIGITS = 4;

/** A value with its SI unit and, in brackets, in the job's system where that says more: `0.1016 m (4")`. */
export function valueText(value: number, unit: string, style: ValueStyle): string {
  const beside = besideText(value, unit, style, isTapeSize(value));
  return withBeside(formatSi(unit, value, style.digits ?? USUAL_DIGITS), beside);
}

/**
 * Two values in one unit, written so that they look different, where `mustDiffer`: with more digits until they do, and
 * without the job's system where that cannot tell them apart. Rounding keeps order, so they never seem to be swapped.
 */
export function pairText(
  left: number,
  right: number,
  unit: string,
  style: ValueStyle,
  mustDiffer: boolean,
): readonly [string, string] {
  const usual = style.digits ?? USUAL_DIGITS;
  const inDigits = (digits: number): [string, string] => [formatSi(unit, left, digits), formatSi(unit, right, digits)];
  let digits = usual;
  while (mustDiffer && digits < MOST_DIGITS && same(inDigits(digits))) digits += 1;
  const si = inDigits(digits);
  if (mustDiffer && same(si)) return [wholeText(left, unit), wholeText(right, unit)];
  const tape = isTapeSize(left) && isTapeSize(right);
  const besideLeft = besideText(left, unit, { ...style, digits }, tape);
  const besideRight = besideText(right, unit, { ...style, digits }, tape);
  if (mustDiffer && besideLeft === besideRight) return si;
  return [withBeside(si[0], besideLeft), withBeside(si[1], besideRight)];
}

/** The unit of a difference between two values in `unit`. */
export function differenceUnit(unit: string): string {
  return unit === "degC" ? "K" : unit;
}

/** The most that formatSi writes; two numbers closer than this are written whole. */
const MOST_DIGITS = 15;

const ONE_INCH = 0.0254;

/** Kinds with a unit of their own, in which people who work in feet and pounds read them. */
const KIND_OF: Readonly<Record<string, Kind>> = {
  m2: "area",
  m3: "volume",
  kg: "mass",
  N: "force",
  Pa: "pressure",
  degC: "temperature",
  K: "temperatureDifference",
  W: "power",
  "m3/s": "airFlow",
  "m2K/W": "thermalResistance",
  "W/(m2 K)": "thermalTransmittance",
};

function besideText(value: number, unit: string, style: ValueStyle, tape: boolean): string | undefined {
  const digits = style.digits ?? USUAL_DIGITS;
  if (unit === "m") {
    if (style.system === "metric") return formatQuantity("length", value, "metric", { unit: "mm", digits });
    return tape ? formatLength(value, "imperial") : formatQuantity("length", value, "imperial", { unit: "in", digits });
  }
  const kind = style.system === "imperial" ? KIND_OF[unit] : undefined;
  return kind === undefined ? undefined : formatQuantity(kind, value, "imperial");
}

/** Below an inch a tape's sixteenths hide too much of a length. */
function isTapeSize(value: number): boolean {
  return value === 0 || Math.abs(value) >= ONE_INCH;
}

function same([a, b]: readonly [string, string]): boolean {
  return a === b;
}

/** Every digit that tells a number from its neighbours. */
function wholeText(value: number, unit: string): string {
  return unit === "1" ? String(value) : `${value} ${prettyUnit(unit)}`;
}

function withBeside(text: string, beside: string | undefined): string {
  return beside === undefined || beside === text ? text : `${text} (${beside})`;
}
