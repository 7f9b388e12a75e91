import { roundHalfAway } from "./rounding.ts";
import { normaliseText } from "./text.ts";

/** Currencies that money is read and written in: all have a hundredth, so that whole cents hold every price. */
export const CURRENCIES = ["USD", "CAD", "EUR", "GBP", "AUD", "NZD", "CHF", "SEK", "NOK", "DKK", "MXN"] as const;

export type Currency = (typeof CURRENCIES)[number];

/** Whole cents, with a currency where the text names one. A lone $ names none: it serves six of these countries. */
export type ParsedMoney =
  | { readonly ok: true; readonly cents: number; readonly currency?: Currency }
  | { readonly ok: false; readonly reason: string; readonly example: string };

/**
 * Reads money: 12.50, 1,234.50 USD, USD 1,234.50, $12.50, -€3, US$ 12. At most two decimals; commas part thousands. A book
 * of prices states its currency once, so none is needed here. Never throws.
 */
export function parseMoney(text: string): ParsedMoney {
  const found = MONEY.exec(normaliseText(text));
  if (found === null) return refuse(whyNotMoney(text));
  const [, sign = "", before = "", innerSign = "", whole = "", decimals = "", after = ""] = found;
  if (sign !== "" && innerSign !== "") return refuse("two signs");
  if (before !== "" && after !== "") return refuse("the currency is written twice");
  const mark = (before + after).toUpperCase();
  const currency = mark === "" || mark === "$" ? undefined : currencyOf(mark);
  if (currency === "unknown") return refuse(`"${before}${after}" is not a currency that is read here`);
  const cents = Number(whole.replaceAll(",", "")) * 100 + Number(decimals.padEnd(2, "0"));
  if (!Number.isSafeInteger(cents)) return refuse("the amount is too large");
  const signed = `${sign}${innerSign}` === "-" && cents !== 0 ? -cents : cents;
  return currency === undefined ? { ok: true, cents: signed } : { ok: true, cents: signed, currency };
}

/** "1,234.50 USD", or "-0.05 EUR". `cents` must be a whole number that is safe to count with; throws RangeError otherwise. */
export function formatMoney(cents: number, currency: Currency): string {
  requireCents("formatMoney: cents", cents);
  const size = Math.abs(cents);
  const whole = String(Math.floor(size / 100)).replace(/\B(?=(\d{3})+$)/g, ",");
  return `${cents < 0 ? "-" : ""}${whole}.${String(size % 100).padStart(2, "0")} ${currency}`;
}

/** Whole cents from an amount in cents that has a fraction: half a cent goes away from zero. Throws RangeError if not finite or unsafe. */
export function roundCents(x: number): number {
  const cents = roundHalfAway(x);
  requireCents("roundCents: x", cents);
  return cents;
}

/**
 * Splits `total` cents by `weights` so that the parts add up to it to the cent: rounded running totals, as roundChain does
 * for lengths. A part is within one cent of its exact share, and a weight of zero gets nothing.
 * Weights zero or above with a sum above zero; throws RangeError otherwise.
 */
export function allocateCents(total: number, weights: readonly number[]): number[] {
  requireCents("allocateCents: total", total);
  if (weights.some((weight) => !(weight >= 0))) throw new RangeError("allocateCents: weights must be zero or above");
  const sum = weights.reduce((running, weight) => running + weight, 0);
  if (!(sum > 0 && Number.isFinite(sum))) throw new RangeError("allocateCents: weights must have a finite sum above zero");
  let running = 0;
  let given = 0;
  return weights.map((weight) => {
    running += weight;
    const mark = roundHalfAway(total * (running / sum));
    const part = mark - given;
    given = mark;
    return part;
  });
}

const MONEY = /^([+-]?) ?((?:[A-Za-z]{1,3}\$?|\$|€|£)?) ?([+-]?) ?(\d{1,3}(?:,\d{3})+|\d+)(?:\.(\d{1,2}))? ?((?:[A-Za-z]{3}|\$|€|£)?)$/;

const SIGNS: Readonly<Record<string, Currency>> = { "€": "EUR", "£": "GBP", US$: "USD", C$: "CAD", CA$: "CAD", A$: "AUD", AU$: "AUD", NZ$: "NZD" };

function currencyOf(mark: string): Currency | "unknown" {
  return CURRENCIES.find((code) => code === mark) ?? (Object.hasOwn(SIGNS, mark) ? SIGNS[mark] : undefined) ?? "unknown";
}

function whyNotMoney(text: string): string {
  if (text.trim() === "") return "nothing is written here";
  if (/\.\d{3,}/.test(text)) return "money has at most two decimals; price small things by the hundred";
  if (/\d,\d{1,2}(?!\d)/.test(text)) return "a point starts the cents; a comma parts thousands in threes";
  return "this is not an amount of money";
}

function refuse(reason: string): ParsedMoney {
  return { ok: false, reason, example: "1,234.50 USD" };
}

function requireCents(name: string, cents: number): void {
  if (!Number.isSafeInteger(cents)) throw new RangeError(`${name} must be whole cents, got ${cents}`);
}
