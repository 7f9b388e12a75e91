import { EXAMPLES, trapOf } from "./advice.ts";
import { kindInWords } from "./kinds.ts";
import type { Kind } from "./kinds.ts";
import { readFeetAndInches } from "./feetAndInches.ts";
import { readNumber } from "./number.ts";
import type { Reading } from "./number.ts";
import { normaliseText, unitKey } from "./text.ts";
import { findUnit, kindOfUnit } from "./unitSearch.ts";
import { toSi } from "./unitTable.ts";

/** The SI value that a text means, or why it means none, with a form that would do. */
export type Parsed =
  | { readonly ok: true; readonly value: number }
  | { readonly ok: false; readonly reason: string; readonly example: string };

/**
 * Reads a quantity of `kind` as people type it and gives its SI value (temperatures in °C). Never throws.
 *
 * A unit is asked for wherever the kind has one; a bare number is refused. Points start decimals, commas part thousands.
 * Feet and inches: the inches may lack their mark after feet (`7' 8`), and must then be below 12; a fraction must be
 * below one; feet with decimals take no inches. R-12 is read as ft²·h·°F/BTU, RSI 2.1 as m²·K/W.
 */
export function parseQuantity(kind: Kind, text: string): Parsed {
  const reading = text.length > LONGEST ? refuse("too long for a quantity") : read(kind, normaliseText(text));
  if (!reading.ok) return { ok: false, reason: reading.reason, example: EXAMPLES[kind] };
  return reading;
}

const LONGEST = 100;
const ABSOLUTE_ZERO = -273.15;

/** Forms that are more than a number and a unit; undefined where the text is not one of them. */
const SPECIAL_FORMS: Partial<Record<Kind, (text: string) => Reading | undefined>> = {
  length: readFeetAndInches,
  thermalResistance: readRValue,
  ratio: readProportion,
};

function read(kind: Kind, text: string): Reading {
  if (text === "") return refuse("nothing is written here");
  const special = SPECIAL_FORMS[kind]?.(text);
  if (special !== undefined) return special;
  const number = readNumber(text);
  if (!number.ok) return number;
  const unit = findUnit(kind, number.rest);
  if (typeof unit === "string") return refuse(whyNoUnit(kind, number.rest, unit));
  return checked(kind, toSi(unit, number.value));
}

function checked(kind: Kind, value: number): Reading {
  if (!Number.isFinite(value)) return refuse("the number is too large");
  if (kind === "temperature" && value < ABSOLUTE_ZERO - 1e-9) return refuse("this is below absolute zero");
  return { ok: true, value };
}

function whyNoUnit(kind: Kind, text: string, why: "case" | "unknown"): string {
  if (text === "") return `a unit of ${kindInWords(kind)} is needed after the number`;
  if (why === "case") return `capitals matter in "${text}"`;
  const trap = trapOf(kind, unitKey(text).toLowerCase());
  if (trap !== undefined) return trap;
  const other = kindOfUnit(text, kind);
  if (other !== undefined) return `"${text}" is a unit of ${kindInWords(other)}, not of ${kindInWords(kind)}`;
  return `"${text}" is not a known unit of ${kindInWords(kind)}`;
}

/** R-12, R 12, R12 (imperial) and RSI 2.1 (metric). The hyphen after R is never a minus. */
function readRValue(text: string): Reading | undefined {
  const found = /^(RSI|R)(?: ?- ?| )?([\d.].*)$/i.exec(text);
  if (found === null) return undefined;
  const [, letters = "", digits = ""] = found;
  const number = readNumber(digits);
  if (!number.ok) return number;
  if (number.rest !== "") return refuse(`"${number.rest}" may not follow ${letters.toUpperCase()} and its number`);
  const unit = findUnit("thermalResistance", letters.toUpperCase() === "RSI" ? "m2 K/W" : "ft2 h °F/BTU");
  return typeof unit === "string" ? undefined : checked("thermalResistance", toSi(unit, number.value));
}

/** 1:12 or 1/12. */
function readProportion(text: string): Reading | undefined {
  const found = /^([+-]?[\d.,]+) ?[:/] ?([\d.,]+)$/.exec(text);
  if (found === null) return undefined;
  const top = readNumber(found[1] ?? "");
  const bottom = readNumber(found[2] ?? "");
  if (!top.ok) return top;
  if (!bottom.ok) return bottom;
  if (bottom.value === 0) return refuse("a fraction over zero");
  return checked("ratio", top.value / bottom.value);
}

function refuse(reason: string): Reading {
  return { ok: false, reason };
}
