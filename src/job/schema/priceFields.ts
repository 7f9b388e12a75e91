import { z } from "zod";
import { catalogue } from "../../catalogue/catalogue.ts";
import { parseMoney } from "../../units/money.ts";
import { words } from "./fields.ts";

/** Money as text, in the book's currency; reads to whole cents, zero or above. */
export function money(example: string) {
  return z
    .string()
    .max(40)
    .transform((text, context): number => {
      const read = parseMoney(text);
      if (read.ok && read.currency === undefined && read.cents >= 0) return read.cents;
      const reason = read.ok ? (read.cents < 0 ? "may not be below zero" : "the book states its currency once") : read.reason;
      context.addIssue({ code: "custom", message: reason, params: { code: read.ok ? "range" : "unit", reason, example } });
      return z.NEVER;
    })
    .meta({ description: "money in the currency of the book, as text", examples: [example] });
}

/** What a supplier asks for one, and how many calendar days after the order it arrives. */
function supplied<const Per extends string>(per: Per) {
  return z.strictObject({
    per: z.literal(per),
    price: money("12.50"),
    leadDays: z.int().min(0).max(1000),
    supplierGroup: words,
  });
}

/** Prices of catalogue rows by id; every row of a table is sold by the same unit. */
function pricesOf<const Per extends string>(table: keyof typeof catalogue, per: Per) {
  return z.record(z.string().max(80), supplied(per)).superRefine((rows, context) => {
    for (const id of Object.keys(rows)) {
      if (catalogue[table].has(id)) continue;
      const reason = `is not in the catalogue of ${table}`;
      const example = catalogue[table].nearest(id)[0] ?? "";
      context.addIssue({ code: "custom", path: [id], message: reason, params: { code: "reference", reason, example } });
    }
  });
}

export const materialPrices = z.strictObject({
  sections: pricesOf("sections", "metre of whole bars"),
  boards: pricesOf("boards", "m2 of whole sheets"),
  foams: pricesOf("foams", "set"),
  batts: pricesOf("batts", "m2 of whole packs"),
  coatings: pricesOf("coatings", "litre"),
  fasteners: pricesOf("fasteners", "pack"),
  sealants: pricesOf("sealants", "piece"),
  articles: pricesOf("articles", "piece"),
  /** Fit-out items that no catalogue row describes, by the words that jobs call them. */
  items: z.record(words, supplied("piece")),
});

export const boxPrices = z.record(
  z.string().max(80),
  z.partialRecord(z.enum(["new", "one trip", "cargo worthy", "as is"]), supplied("piece")),
);
