import type { JsonValue } from "../../job/file.ts";
import type { Quote, QuoteLine } from "../../price/quote.ts";
import { formatSi } from "../../units/format.ts";
import type { Quantity } from "../../working/quantity.ts";
import { csv } from "../csv.ts";
import type { Paper } from "../paper.ts";
import type { Results } from "../results.ts";
import { shownText } from "../shownText.ts";
import { groupedMoney, hoursText, plainMoney } from "../write.ts";

/** Price by line, what is added to it, and what the price book does not know. */
export const price: Paper = {
  id: "price",
  title: "Price",
  make: (results) => ({
    section: { template: TEMPLATE, data: dataOf(results) },
    files: [{ path: "price.csv", text: table(results.quote) }],
  }),
};

const GROUPS: Readonly<Record<QuoteLine["group"], string>> = {
  box: "Box",
  material: "Material",
  article: "Openings, equipment and fit-out",
  labour: "Labour",
  delivery: "Delivery",
};

/** From direct cost to what the customer pays; the strong ones are sums of those above them. */
const TOTALS: readonly { readonly of: (quote: Quote) => Quantity<"cents">; readonly title: string; readonly strong: boolean }[] = [
  { of: ({ direct }) => direct, title: "Direct cost", strong: true },
  { of: ({ overhead }) => overhead, title: "Overhead", strong: false },
  { of: ({ contingency }) => contingency, title: "Contingency", strong: false },
  { of: ({ cost }) => cost, title: "Cost", strong: true },
  { of: ({ margin }) => margin, title: "Margin, a share of the price", strong: false },
  { of: (quote) => quote.price, title: "Price", strong: true },
  { of: ({ tax }) => tax, title: "Tax", strong: false },
  { of: ({ total }) => total, title: "Total", strong: true },
];

/** Enough for a reader to multiply again. */
const COUNT_DIGITS = 6;

function dataOf({ quote }: Results): JsonValue {
  return {
    book: quote.book,
    currency: quote.currency,
    hours: hoursText(quote.labourHours.value),
    missing: quote.missing.map(({ what, wanted }) => ({ what, wanted })),
    leavesOut: quote.leavesOut,
    groups: Object.entries(GROUPS)
      .map(([group, title]) => ({ title, lines: quote.lines.filter((line) => line.group === group) }))
      .filter(({ lines }) => lines.length > 0)
      .map(({ title, lines }) => ({
        title,
        rows: lines.map(({ what, count, per, rate, amount }) => [
          what, formatSi(count.unit, count.value, COUNT_DIGITS), per.replace(/\bm2\b/, "m²"), groupedMoney(rate.value), groupedMoney(amount.value),
        ]),
        sum: groupedMoney(lines.reduce((sum, { amount }) => sum + amount.value, 0)),
      })),
    totals: TOTALS.map(({ of, title, strong }) => ({ title, strong, amount: groupedMoney(of(quote).value) })),
  };
}

/** Counts unrounded in SI; money with two decimals in the currency of the last column. */
function table(quote: Quote): string {
  const header = ["id", "group", "what", "count", "count unit", "per", "rate", "amount", "currency"];
  const lines = quote.lines.map(({ id, group, what, count, per, rate, amount }) => [
    id, group, shownText(what), count.value, count.unit, per, plainMoney(rate.value), plainMoney(amount.value), quote.currency,
  ]);
  const missing = quote.missing.map(({ id, what, wanted }) => [
    id, "missing", `${shownText(what)}: ${wanted}`, undefined, undefined, undefined, undefined, undefined, quote.currency,
  ]);
  const totals = TOTALS.map(({ of, title }) => [
    title.toLowerCase(), "total", title, undefined, undefined, undefined, undefined, plainMoney(of(quote).value), quote.currency,
  ]);
  return csv(header, [...lines, ...missing, ...totals]);
}

const TEMPLATE = String.raw`
#import "style.typ": *

#let body(data) = {
  [Prices from the book _#(data.book)_; amounts in #(data.currency). #data.hours of labour. A price is an offer only when a person signs it. Not counted: #(data.leavesOut).]
  if data.missing.len() > 0 {
    framed({
      text(weight: 600)[Not complete: the price book does not know these.]
      list(..data.missing.map(m => [#m.what: #m.wanted]))
    })
  }
  block(breakable: false, above: 18pt, {
    heading(level: 2, outlined: false)[From cost to price]
    block(width: 60%, listing((1fr, auto), (left, right), ([], [#data.currency]),
      data.totals.map(t => if t.strong { (text(weight: 600, t.title), text(weight: 600, t.amount)) } else { (t.title, t.amount) })))
  })
  heading(level: 2, outlined: false)[Every line]
  grouped-listing((1fr, auto, auto, auto, auto), (left, right, left, right, right), ("What", "Count", "Per", "Rate", "Amount"), data.groups, size: 8.1pt)
}
`;
