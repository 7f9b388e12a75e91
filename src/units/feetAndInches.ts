import { inch } from "./factors.ts";
import { readNumber } from "./number.ts";
import type { Reading } from "./number.ts";

/**
 * Reads a length that has a feet mark: 7', 7 ft, 7' 8-5/8", 7'-8 5/8", 7ft 8in, 7' 8. Undefined where there is none, so
 * that inches alone and metric lengths are read as any other quantity. Text must be normalised.
 */
export function readFeetAndInches(text: string): Reading | undefined {
  const found = /^([^'f]*)(?:'|ft\.?|feet|foot)(?![a-z])(.*)$/i.exec(text);
  if (found === null) return undefined;
  const [, feetText = "", after = ""] = found;
  const feet = readNumber(feetText.trim());
  if (!feet.ok) return feet;
  if (feet.rest !== "") return { ok: false, reason: `"${feet.rest}" may not stand before the feet mark` };
  if (after.trim() === "") return metres(feet.value * 12);
  const inches = readInches(after);
  if (!inches.ok) return inches;
  if (!Number.isInteger(feet.value)) return { ok: false, reason: "feet with a decimal or a fraction take no inches" };
  const back = feetText.trimStart().startsWith("-");
  return metres(Math.abs(feet.value) * 12 + inches.value, back ? -1 : 1);
}

/** What follows the feet mark: a hyphen or comma, a number from 0 to below 12, an inch mark or none. */
function readInches(text: string): Reading {
  const number = readNumber(text.replace(/^ ?[-,]? ?/, ""));
  if (!number.ok || !/^(?:"|in\.?|ins\.?|inch|inches)?$/i.test(number.rest)) {
    const why = number.ok ? "" : `: ${number.reason}`;
    return { ok: false, reason: `what follows the feet mark is not a number of inches${why}` };
  }
  if (number.value < 0) return { ok: false, reason: "inches after feet may not be negative" };
  if (number.value >= 12) return { ok: false, reason: "inches after feet must be below 12" };
  return number;
}

function metres(inches: number, sign = 1): Reading {
  const value = (inches * inch.times) / inch.over;
  return Number.isFinite(value) ? { ok: true, value: inches === 0 ? 0 : sign * value } : { ok: false, reason: "the number is too large" };
}
