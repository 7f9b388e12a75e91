import { formatLength, formatQuantity, formatSi, type System } from "../units/format.ts";
import type { Kind } from "../units/kinds.ts";
import { CURRENCIES, type Currency, formatMoney } from "../units/money.ts";
import type { Moment } from "../plan/shopPlan.ts";
import type { Quantity } from "../working/quantity.ts";

/** A size that is marked on stock: whole millimetres, or feet, inches and sixteenths. */
export function sizeText(metres: number, system: System): string {
  return formatLength(metres, system);
}

/** A quantity for a list: in the job's units, bulk lengths in metres or feet. */
export function amountText({ value, unit }: Pick<Quantity, "value" | "unit">, system: System): string {
  const row = SHOWN[unit];
  if (unit === "1") return formatSi("1", value, 4);
  if (row === undefined) return formatSi(unit, value, 4);
  const { kind, digits, metric, imperial } = row;
  return formatQuantity(kind, value, system, { unit: system === "metric" ? metric : imperial, digits });
}

/** A volume of liquid, as it is sold. */
export function liquidText(cubicMetres: number, system: System): string {
  return formatQuantity("volume", cubicMetres, system, { unit: system === "metric" ? "L" : "US gal", digits: 3 });
}

/** A mass in whole kilograms or pounds. */
export function massText(kilograms: number, system: System): string {
  return formatQuantity("mass", kilograms, system, { unit: system === "metric" ? "kg" : "lb", digits: 1 });
}

/** A temperature to a tenth of a degree: "52.0 °F". */
export function temperatureText(celsius: number, system: System): string {
  const [number = "", unit = ""] = formatQuantity("temperature", celsius, system, { digits: 15 }).split(" ");
  // Adding zero turns -0 into 0.
  return `${(Number(Number(number).toFixed(1)) + 0).toFixed(1)} ${unit}`;
}

/** Money with its currency. Throws RangeError for a currency that money is not written in. */
export function moneyText(cents: number, currency: string): string {
  return formatMoney(cents, currencyOf(currency));
}

/** The currency of a code such as "USD". Throws RangeError for one that money is not written in. */
export function currencyOf(code: string): Currency {
  const known = CURRENCIES.find((currency) => currency === code);
  if (known === undefined) throw new RangeError(`money is not written in ${code}`);
  return known;
}

/** Money as a plain number with two decimals, for tables whose header names the currency. */
export function plainMoney(cents: number): string {
  const size = Math.abs(cents);
  return `${cents < 0 ? "-" : ""}${Math.floor(size / 100)}.${String(size % 100).padStart(2, "0")}`;
}

/** The same with commas between thousands, for print. */
export function groupedMoney(cents: number): string {
  return plainMoney(cents).replace(/\B(?=(\d{3})+\.)/g, ",");
}

/** "1 day", "12 days". */
export function counted(count: number, one: string, many: string): string {
  return `${count} ${count === 1 ? one : many}`;
}

/** "26 May 2027" for a day such as "2027-05-26", or without its year: "26 May". */
export function dayText(day: string, year: "with year" | "without year" = "with year"): string {
  const [y = "", m = "", d = ""] = day.split("-");
  const month = MONTHS[Number(m) - 1];
  if (month === undefined) throw new RangeError(`${day} is not a day`);
  return `${Number(d)} ${month}${year === "with year" ? ` ${y}` : ""}`;
}

const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "June", "July", "Aug", "Sep", "Oct", "Nov", "Dec"] as const;

/** "07:30". */
export function clockText({ minute }: Moment): string {
  return `${String(Math.floor(minute / 60)).padStart(2, "0")}:${String(minute % 60).padStart(2, "0")}`;
}

/** Hours with at most one decimal. */
export function hoursText(hours: number): string {
  return `${Number(hours.toFixed(1))} h`;
}

const SHOWN: Readonly<Record<string, { kind: Kind; digits: number; metric: string; imperial: string }>> = {
  m: { kind: "length", digits: 4, metric: "m", imperial: "ft" },
  m2: { kind: "area", digits: 4, metric: "m²", imperial: "ft²" },
  m3: { kind: "volume", digits: 4, metric: "m³", imperial: "ft³" },
  kg: { kind: "mass", digits: 4, metric: "kg", imperial: "lb" },
};
