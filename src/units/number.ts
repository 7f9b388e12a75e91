/** A value, or why there is none. */
export type Reading = { readonly ok: true; readonly value: number } | Refusal;

/** What readNumber found at the head of a text: a number and what follows it, or why there is none. */
export type NumberAtHead = { readonly ok: true; readonly value: number; readonly rest: string } | Refusal;

interface Refusal {
  readonly ok: false;
  readonly reason: string;
}

/**
 * Reads the number at the head of normalised text: 2352, 2,352, 2 352, -0.5, .5, 1.5e3, 2×10^-9, 5/8, 8-5/8, 8 5/8.
 * A comma parts thousands and nothing else. A fraction must be below one: 85/8 is more often a lost space than meant.
 */
export function readNumber(text: string): NumberAtHead {
  const sign = /^[+-]? ?/.exec(text)?.[0] ?? "";
  const body = text.slice(sign.length);
  const fraction = FRACTION.exec(body);
  const found = fraction ?? DECIMAL.exec(body);
  if (found === null) return { ok: false, reason: "no number at the start" };
  const rest = body.slice(found[0].length);
  if (/^(?:[\d.,]|\/ ?\d)/.test(rest)) {
    return { ok: false, reason: "the number is not clear: a point starts decimals, a comma parts thousands in threes" };
  }
  const size = fraction === null ? readDecimal(found) : readFraction(found);
  if (typeof size === "string") return { ok: false, reason: size };
  if (!Number.isFinite(size)) return { ok: false, reason: "the number is too large" };
  return { ok: true, value: sign.startsWith("-") && size !== 0 ? -size : size, rest: rest.trim() };
}

const WHOLE = String.raw`\d{1,3}(?:,\d{3})+(?!\d)|\d{1,3}(?: \d{3})+(?![\d/])|\d+`;
const FRACTION = new RegExp(String.raw`^(?:(${WHOLE})(?: ?- ?| ))?(\d+) ?/ ?(\d+)`);
const DECIMAL = new RegExp(String.raw`^(?=\.?\d)(${WHOLE})?(\.\d*)?(?:[eE]([+-]?\d+)| ?[x×] ?10\^([+-]?\d+))?`);

function readDecimal(found: RegExpExecArray): number {
  const [, whole = "0", decimals = "", e, power] = found;
  const exponent = e ?? power;
  return Number(`${whole.replace(/[ ,]/g, "")}${decimals}${exponent === undefined ? "" : `e${exponent}`}`);
}

function readFraction(found: RegExpExecArray): number | string {
  const [, whole = "0", top = "", bottom = ""] = found;
  const over = Number(bottom);
  if (over === 0) return "a fraction over zero";
  if (Number(top) >= over) return "the fraction is not below one; is a space or a hyphen missing before it?";
  return Number(whole.replace(/[ ,]/g, "")) + Number(top) / over;
}
