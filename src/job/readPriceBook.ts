import { isObject } from "./file.ts";
import type { JsonValue } from "./file.ts";
import type { JobIssue } from "./issue.ts";
import { foundText } from "./issue.ts";
import { priceBookSchema } from "./priceBook.ts";
import type { PriceBook } from "./priceBook.ts";
import { inFileOrder, nearestHolder } from "./reading/fileOrder.ts";
import { fieldIssues } from "./reading/fieldIssues.ts";
import { readJson } from "./reading/json.ts";
import { TEXT_LIMIT, overLimit } from "./reading/limits.ts";

export type PriceBookReading =
  | { readonly ok: true; readonly book: PriceBook }
  | { readonly ok: false; readonly issues: readonly JobIssue[] };

/** Reads the text of a price book: money in whole cents and hours in seconds, or every issue at once with its line. Never throws. */
export function readPriceBook(text: string): PriceBookReading {
  if (text.length > TEXT_LIMIT) {
    const wants = `a price book of at most ${TEXT_LIMIT} characters; this one has ${text.length}`;
    return { ok: false, issues: [{ code: "limit", path: "", found: "", wants, example: "" }] };
  }
  const json = readJson(text);
  if (!json.ok) return { ok: false, issues: [json.issue] };
  const read = readPriceBookValue(json.value);
  if (read.ok && json.repeated.length === 0) return read;
  const issues = inFileOrder(json.value, [...json.repeated, ...(read.ok ? [] : read.issues)]);
  return {
    ok: false,
    issues: issues.map((issue) => {
      const line = nearestHolder(issue.path, json.lineOf);
      return line === undefined ? issue : { ...issue, line };
    }),
  };
}

/** Reads a price book from JSON that is already parsed. Never throws on what JSON can hold. */
export function readPriceBookValue(value: unknown): PriceBookReading {
  const limit = overLimit(value);
  if (limit !== undefined) return { ok: false, issues: [limit] };
  const raw = value as JsonValue;
  if (!isObject(raw)) {
    const example = '{ "format": "cornerpost-price-book", … }';
    const wants = "a price book, which is one object in { }";
    return { ok: false, issues: [{ code: "type", path: "", found: foundText(value), wants, example }] };
  }
  const parsed = priceBookSchema.safeParse(raw);
  return parsed.success ? { ok: true, book: parsed.data } : { ok: false, issues: fieldIssues(raw, parsed.error.issues, priceBookSchema) };
}
