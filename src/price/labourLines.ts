import type { PriceBook } from "../job/priceBook.ts";
import type { LabourWork } from "../takeoff/labour.ts";
import { hoursTogether } from "../takeoff/labourFormulas.ts";
import { apply } from "../working/formula.ts";
import { given } from "../working/quantity.ts";
import { amountByHours } from "./formulas.ts";
import type { QuoteLine } from "./quote.ts";

/** One line a task: its hours in all places, at the rate of its trade. The book's reader has seen to it that every trade has a rate. */
export function labourLines(work: readonly LabourWork[], book: PriceBook): readonly QuoteLine[] {
  const byTask = new Map<string, LabourWork[]>();
  for (const one of work) {
    const same = byTask.get(one.task);
    if (same === undefined) byTask.set(one.task, [one]);
    else same.push(one);
  }
  return [...byTask].map(([task, places]) => {
    const trade = places[0]?.trade ?? "";
    const pay = book.labour.rates[trade];
    if (pay === undefined) throw new RangeError(`price book ${book.id} has no rate for the trade "${trade}"`);
    const count = apply(hoursTogether, { H_lab: places.map(({ hours }) => hours) }, { means: `person-hours: ${task}` });
    const path = `labour.rates["${trade}"]`;
    const rate = given(pay, "cents", "c_each", `one hour of the trade ${trade}`, { kind: "priceBook", path });
    const amount = apply(amountByHours, { H_sum: count, c_each: rate }, { means: `amount: ${task}` });
    return { id: `labour/${task}`, group: "labour", what: `${task} (${trade})`, count, per: "hour", rate, amount };
  });
}
