import { z } from "zod";
import { LABOUR_TASK_IDS } from "./labourTasks.ts";
import { day, ownId, quantity, words } from "./schema/fields.ts";
import { boxPrices, materialPrices, money } from "./schema/priceFields.ts";
import { CURRENCIES } from "../units/money.ts";

export const PRICE_BOOK_FORMAT = "cornerpost-price-book";
const PRICE_BOOK_VERSION = 1;

const share = (example: string, greatest = 1) => quantity("ratio", example, { least: 0, greatest });

const task = z.strictObject({
  trade: words,
  /** Person-hours for one unit of the task. */
  hours: quantity("duration", "0.25 h", { above: 0, greatest: 3_600_000 }),
});

/** Price book: what things cost, how long they take to come, and how many hours a shop spends on each task. */
export const priceBookSchema = z
  .strictObject({
    $schema: z.string().optional(),
    format: z.literal(PRICE_BOOK_FORMAT),
    version: z.literal(PRICE_BOOK_VERSION),
    id: ownId,
    what: words,
    currency: z.enum(CURRENCIES),
    date: day,
    boxes: boxPrices,
    materials: materialPrices,
    labour: z.strictObject({
      /** Pay of one person for one hour, by trade, with all that the shop pays on top. */
      rates: z.record(words, money("68.00")),
      tasks: z.record(z.enum(LABOUR_TASK_IDS), task),
    }),
    delivery: z.array(z.strictObject({ what: words, price: money("950.00") })).max(12),
    /** Shares: overhead of direct cost, contingency of direct cost, margin of the price, tax of the price. */
    overhead: share("12 %"),
    contingency: share("5 %"),
    margin: share("18 %", 0.9),
    tax: share("8 %"),
  })
  .superRefine(({ labour }, context) => {
    for (const [id, { trade }] of Object.entries(labour.tasks)) {
      if (Object.hasOwn(labour.rates, trade)) continue;
      const reason = "has no rate in labour.rates";
      const example = Object.keys(labour.rates)[0] ?? "";
      const path = ["labour", "tasks", id, "trade"];
      context.addIssue({ code: "custom", path, message: reason, params: { code: "reference", reason, example } });
    }
  })
  .meta({ title: "Cornerpost price book" });

/** A price book as read: money in whole cents, hours of labour in seconds. */
export type PriceBook = z.output<typeof priceBookSchema>;
