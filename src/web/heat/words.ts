import type { Hour, SectionRow } from "../../river/sections.ts";
import { formatQuantity, type System } from "../../units/format.ts";

/** A temperature to tenths, with a true minus. */
export function degrees(temperature: number, system: System): string {
  return trueMinus(formatQuantity("temperature", temperature, system)).replace(/(?<!\.\d*)(?= )/, ".0");
}

/** The number of a temperature for labels, without its unit; tenths only where there are some. */
export function level(temperature: number, system: System): string {
  return degrees(temperature, system).replace(/(\.0)? .*$/, "");
}

/** The unit of temperatures: "°C". */
export function degreeUnit(system: System): string {
  return unitIn(degrees(0, system));
}

/** The number of a quantity's text, with a true minus. */
export function numberIn(text: string): string {
  return trueMinus(text.replace(/ .*$/, ""));
}

/** The unit of a quantity's text. */
export function unitIn(text: string): string {
  return text.replace(/^\S+ /, "");
}

/** A flux to three digits. */
export function fluxText(flux: number, system: System): string {
  return formatQuantity("heatFlux", flux, system, { digits: 3 });
}

/** The text of a number with a minus as long as its plus would be. */
function trueMinus(text: string): string {
  return text.replace("-", "−");
}

export const MONTH_NAMES = ["January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"] as const;

/** "at the winter design hour", "in January". */
export function atHour(hour: Hour): string {
  return hour === "design" ? "at the winter design hour" : `in ${MONTH_NAMES[hour] ?? ""}`;
}

/** Kinds of sections as headings, in the order of the list. */
export const KINDS: readonly { readonly kind: SectionRow["kind"]; readonly name: string }[] = [
  { kind: "face", name: "Faces" },
  { kind: "junction", name: "Edges of the box" },
  { kind: "opening", name: "Openings" },
  { kind: "partition", name: "Partitions" },
];

/** The text with a capital first letter. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
