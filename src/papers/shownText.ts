import type { JsonValue } from "../job/file.ts";

/**
 * Text as a paper shows it: control characters become spaces, marks that turn the direction of writing are left out, so
 * that a name or a note cannot rearrange the line that it stands in.
 */
export function shownText(text: string): string {
  return text
    .replace(/[\u202A-\u202E\u2066-\u2069\u200E\u200F\u061C]/gu, "")
    .replace(/[\p{Cc}\p{Cs}\s\uFEFF]+/gu, " ")
    .trim();
}

/** The same for every text in a value. */
export function shownValue(value: JsonValue): JsonValue {
  if (typeof value === "string") return shownText(value);
  if (typeof value !== "object" || value === null) return value;
  if (Array.isArray(value)) return (value as readonly JsonValue[]).map(shownValue);
  return Object.fromEntries(Object.entries(value).map(([key, field]) => [key, shownValue(field)]));
}
