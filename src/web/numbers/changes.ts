import type { Headline, ScreenHeadline } from "../../river/screen.ts";
import { formatQuantity, type System } from "../../units/format.ts";
import { formatMoney } from "../../units/money.ts";

/** One of the numbers that decide a job, with what changed since the last save; `change` is "" where nothing did. */
export interface Number4 {
  readonly id: "stops" | "mass" | "price" | "day";
  readonly name: string;
  readonly value: string;
  /** What has to be said with the number. */
  readonly note: string;
  readonly change: string;
  /** Whether the change is for the worse: more stops, more mass, a higher price, a later day. */
  readonly worse: boolean;
}

/**
 * The four numbers as texts. `saved` is undefined while the saved file is not worked out: then no change is shown. `isShort`
 * while the slow checks have not answered yet, whose stops are not counted then.
 */
export function fourNumbers(now: ScreenHeadline, saved: ScreenHeadline | undefined, system: System, isShort = false): readonly Number4[] {
  const change = <T>(of: (headline: ScreenHeadline) => T, text: (from: T, to: T) => string): string => {
    if (saved === undefined || Object.is(of(saved), of(now))) return "";
    return text(of(saved), of(now));
  };
  const mass = (kilograms: number): string => formatQuantity("mass", kilograms, system);
  const before = saved === undefined || "unpriced" in saved ? undefined : saved;
  return [
    {
      id: "stops",
      name: "Stops",
      value: String(now.stops),
      note: `and ${now.watches === 1 ? "1 watch" : `${now.watches} watches`}${isShort ? " so far, without heat" : ""}`,
      change: change(({ stops }) => stops, (from, to) => signed(to - from, String)),
      worse: saved !== undefined && now.stops > saved.stops,
    },
    {
      id: "mass",
      name: "Mass",
      value: mass(now.mass),
      note: "finished box",
      change: change((one) => one.mass, (from, to) => (Math.abs(to - from) < LEAST_MASS ? "" : signed(to - from, (size) => formatQuantity("mass", size, system, { digits: 3 })))),
      worse: saved !== undefined && now.mass > saved.mass,
    },
    ...("unpriced" in now ? unpricedNumbers(now.unpriced) : pricedNumbers(now, before)),
  ];
}

/** Price and day, which one price book gives. */
function pricedNumbers(now: Headline, saved: Headline | undefined): readonly Number4[] {
  const later = saved === undefined ? SAME : daysBetween(saved.deliveryDay, now.deliveryDay);
  return [
    {
      ...PRICE,
      value: formatMoney(now.priceCents, now.currency),
      note: now.missingPrices === 0 ? "with tax" : now.missingPrices === 1 ? "not complete: 1 price is missing" : `not complete: ${now.missingPrices} prices are missing`,
      change: moneyChange(now, saved),
      worse: saved !== undefined && now.priceCents > saved.priceCents,
    },
    {
      ...DAY,
      value: now.deliveryDay,
      note: spareText(now.daysToSpare),
      change: later === SAME ? "" : `${Math.abs(later)} ${Math.abs(later) === 1 ? "day" : "days"} ${later > 0 ? "later" : "earlier"}`,
      worse: later > 0,
    },
  ];
}

function unpricedNumbers(why: string): readonly Number4[] {
  const none = { value: "none", change: "", worse: false };
  return [
    { ...PRICE, ...none, note: why },
    { ...DAY, ...none, note: "lead times are in the price book" },
  ];
}

const PRICE = { id: "price", name: "Price" } as const;
const DAY = { id: "day", name: "Delivery" } as const;

const SAME = 0;
/** Less than any scale in a shop shows, kg. */
const LEAST_MASS = 0.005;
const DAY_MS = 86_400_000;

/** Calendar days from one day to another, both year-month-day; below zero where the second is earlier. */
export function daysBetween(from: string, to: string): number {
  return Math.round((Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / DAY_MS);
}

function moneyChange(now: Headline, saved: Headline | undefined): string {
  if (saved === undefined) return "";
  if (saved.currency !== now.currency) return `was ${formatMoney(saved.priceCents, saved.currency)}`;
  const cents = now.priceCents - saved.priceCents;
  return cents === SAME ? "" : signed(cents, (one) => formatMoney(one, now.currency));
}

function signed(difference: number, text: (size: number) => string): string {
  return `${difference < SAME ? "−" : "+"}${text(Math.abs(difference))}`;
}

function spareText(days: number | undefined): string {
  if (days === undefined) return "no due day is set";
  if (days === SAME) return "on the due day";
  const count = `${Math.abs(days)} ${Math.abs(days) === 1 ? "day" : "days"}`;
  return days > 0 ? `${count} before it is due` : `${count} late`;
}
