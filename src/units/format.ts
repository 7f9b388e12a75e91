import { foot, inch } from "./factors.ts";
import { DISPLAY } from "./display.ts";
import type { System } from "./display.ts";
import type { Kind, SiUnit } from "./kinds.ts";
import { roundHalfAway } from "./rounding.ts";
import { findUnit } from "./unitSearch.ts";
import { fromSi, toSi } from "./unitTable.ts";
import type { UnitRow } from "./unitTable.ts";

export type { System } from "./display.ts";
export { roundChain } from "./rounding.ts";

/** How a quantity is written, where the usual way will not do. */
export interface FormatOptions {
  /** Significant digits, 1 to 15; digits before the point are never rounded away. 4 where not given. */
  readonly digits?: number;
  /** Any unit of the kind, as parseQuantity reads it. The system's own where not given. */
  readonly unit?: string;
}

/**
 * Writes an SI `value` of `kind` with its unit, in a form that parseQuantity reads back to within half of formatStep.
 * Lengths without options are whole millimetres, or feet, inches and sixteenths as a tape shows them; imperial thermal
 * resistances are written R-21.
 * Throws RangeError where the value is not finite or the unit is not one of the kind.
 */
export function formatQuantity(kind: Kind, value: number, system: System, options: FormatOptions = {}): string {
  if (isTapeLength(kind, options)) return formatLength(value, system);
  const { unit, x, decimals } = plan(kind, value, system, options);
  const number = writeNumber(x, decimals);
  if (kind === "thermalResistance" && system === "imperial" && options.unit === undefined && value >= 0) return `R-${number}`;
  if (unit.print === "") return number;
  return `${number}${unit.print === "°" ? "" : " "}${unit.print}`;
}

/** The SI size of the last place that formatQuantity writes for this value. */
export function formatStep(kind: Kind, value: number, system: System, options: FormatOptions = {}): number {
  if (isTapeLength(kind, options)) return lengthStep(system);
  const { unit, decimals } = plan(kind, value, system, options);
  return toSi(unit, 10 ** -decimals) - toSi(unit, 0);
}

/**
 * Writes a length: whole steps of a millimetre, or feet, inches and fractions (`7' 8-5/8"`, `3-1/2"`, `0"`).
 * `step` in m: any for metric, 1 mm where not given; an inch over a power of two for imperial, 1/16 in where not given.
 * Throws RangeError for a value that is not finite or for another step.
 */
export function formatLength(value: number, system: System, options: { readonly step?: number } = {}): string {
  requireFinite(value);
  const step = options.step ?? lengthStep(system);
  if (!(step > 0)) throw new RangeError(`formatLength: step must be above zero, got ${step}`);
  const steps = roundHalfAway(value / step);
  if (system === "metric") return `${trimZeros((steps * step * 1000).toFixed(6))} mm`;
  const parts = roundHalfAway((inch.times / inch.over) / step);
  const inParts = Math.abs((inch.times / inch.over) / step - parts) < 1e-9 && Number.isInteger(Math.log2(parts));
  if (!inParts) throw new RangeError(`formatLength: an imperial step must be an inch over a power of two, got ${step} m`);
  return writeFeetAndInches(steps, parts);
}

/**
 * Writes a value of a working with its unit in SI letters made pretty: `0.3521 W/(m²·K)`, `1.2×10⁻⁹ kg/(s·m²·Pa)`.
 * `digits` significant digits, 4 where not given; digits before the point are kept. Throws RangeError if not finite.
 */
export function formatSi(unit: SiUnit | (string & {}), value: number, digits: number = USUAL_DIGITS): string {
  requireFinite(value);
  const number = writeNumber(value, decimalsFor(value, digits));
  return unit === "1" || unit === "" ? number : `${number} ${prettyUnit(unit)}`;
}

/** "W/(m2 K)" as "W/(m²·K)", "degC" as "°C". */
export function prettyUnit(unit: string): string {
  return unit
    .replace("degC", "°C")
    .replace(/(?<=[A-Za-z])[2-9]/g, (digit) => SUPERSCRIPTS[Number(digit)] ?? digit)
    .replace(/(?<=[²³⁴-⁹])(?=[A-Za-z])/g, "·")
    .replace(/ /g, "·");
}

const USUAL_DIGITS = 4;
const SUPERSCRIPTS = ["⁰", "¹", "²", "³", "⁴", "⁵", "⁶", "⁷", "⁸", "⁹"];
const INCHES_PER_FOOT = (foot.times * inch.over) / (foot.over * inch.times);

function isTapeLength(kind: Kind, options: FormatOptions): boolean {
  return kind === "length" && options.unit === undefined && options.digits === undefined;
}

function lengthStep(system: System): number {
  return system === "metric" ? 0.001 : inch.times / inch.over / 16;
}

interface Plan {
  readonly unit: UnitRow;
  readonly x: number;
  readonly decimals: number;
}

/** Which unit, how many of it, and how many decimals. */
function plan(kind: Kind, value: number, system: System, options: FormatOptions): Plan {
  requireFinite(value);
  const unit = options.unit === undefined ? usualUnit(kind, value, system) : unitNamed(kind, options.unit);
  const x = fromSi(unit, value);
  const usual = kind === "temperature" && options.digits === undefined;
  return { unit, x, decimals: usual ? 1 : decimalsFor(x, options.digits ?? USUAL_DIGITS) };
}

/** The largest of the system's units that the value reaches one of; the smallest where it reaches none. */
function usualUnit(kind: Kind, value: number, system: System): UnitRow {
  const [first, ...larger] = DISPLAY[kind][system].map((name) => unitNamed(kind, name));
  if (first === undefined) throw new RangeError(`no unit to write ${kind} in`);
  return larger.reduce((chosen, unit) => (Math.abs(fromSi(unit, value)) >= 1 ? unit : chosen), first);
}

function unitNamed(kind: Kind, name: string): UnitRow {
  const unit = findUnit(kind, name);
  if (typeof unit === "string") throw new RangeError(`"${name}" is not a unit of ${kind}`);
  return unit;
}

/** Decimals that show `digits` significant digits of `x`, never fewer than none. */
function decimalsFor(x: number, digits: number): number {
  if (!(Number.isInteger(digits) && digits >= 1 && digits <= 15)) throw new RangeError(`digits must be 1 to 15, got ${digits}`);
  if (x === 0) return 0;
  return Math.max(0, digits - 1 - Math.floor(Math.log10(Math.abs(x))));
}

/** Plain digits with commas between thousands from 1e-4 up; powers of ten below that and from 1e15 on. */
function writeNumber(x: number, decimals: number): string {
  const size = Math.abs(x);
  const scale = 10 ** decimals;
  const small = size !== 0 && size < 1e-4 && decimals > 4;
  if (small || size >= 1e15) {
    const power = Math.floor(Math.log10(size));
    const [mantissa = "", exponent = ""] = x.toExponential(Math.min(15, Math.max(0, decimals + power))).split("e");
    return `${trimZeros(mantissa)}×10${superscript(Number(exponent))}`;
  }
  const steps = size * scale < 2 ** 52 ? roundHalfAway(x * scale) : x * scale;
  const [whole = "", fraction = ""] = (Math.abs(steps) / scale).toFixed(Math.min(100, decimals)).split(".");
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ",");
  const digits = trimZeros(fraction === "" ? grouped : `${grouped}.${fraction}`);
  return steps < 0 && digits !== "0" ? `-${digits}` : digits;
}

function superscript(exponent: number): string {
  const digits = String(Math.abs(exponent)).replace(/\d/g, (digit) => SUPERSCRIPTS[Number(digit)] ?? digit);
  return exponent < 0 ? `⁻${digits}` : digits;
}

function trimZeros(number: string): string {
  return number.includes(".") ? number.replace(/\.?0+$/, "") : number;
}

function writeFeetAndInches(steps: number, partsPerInch: number): string {
  const size = Math.abs(steps);
  const parts = size % partsPerInch;
  const wholeInches = (size - parts) / partsPerInch;
  const inches = wholeInches % INCHES_PER_FOOT;
  const feet = (wholeInches - inches) / INCHES_PER_FOOT;
  const divisor = parts === 0 ? 1 : 2 ** trailingZeros(parts);
  const fraction = parts === 0 ? "" : `${parts / divisor}/${partsPerInch / divisor}`;
  const inchText = fraction === "" ? String(inches) : inches === 0 && feet === 0 ? fraction : `${inches}-${fraction}`;
  return `${steps < 0 ? "-" : ""}${feet === 0 ? "" : `${feet}' `}${inchText}"`;
}

function trailingZeros(parts: number): number {
  return parts % 2 === 0 ? 1 + trailingZeros(parts / 2) : 0;
}

function requireFinite(value: number): void {
  if (!Number.isFinite(value)) throw new RangeError(`a quantity to be written must be finite, got ${value}`);
}
