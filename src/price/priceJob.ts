import type { Build } from "../build/build.ts";
import type { PriceBook } from "../job/priceBook.ts";
import { labourOf } from "../takeoff/labour.ts";
import { hoursTogether } from "../takeoff/labourFormulas.ts";
import type { Takeoff } from "../takeoff/takeoff.ts";
import { apply } from "../working/formula.ts";
import { given, type Quantity } from "../working/quantity.ts";
import { amountByPiece, centsTogether, marginOfPrice, shareOfCents } from "./formulas.ts";
import { labourLines } from "./labourLines.ts";
import { materialLines } from "./materialLines.ts";
import type { Quote, QuoteLine } from "./quote.ts";

const LEAVES_OUT =
  "wires, pipes and ducts (their rough-in hours are); anchors of items; paint of the repair coat; discounts; work on site beyond delivery";

/**
 * Prices a job from a price book: material, articles, labour and delivery by line, then overhead and contingency on the
 * direct cost, margin as a share of the price, tax on the price. The job's own shares go before the book's. All in whole
 * cents: every total is the sum of its lines. What the book has no price for is listed as missing and counts for nothing.
 */
export function priceJob(build: Build, takeoff: Takeoff, book: PriceBook): Quote {
  const material = materialLines(build, takeoff, book);
  const work = labourOf(build, book);
  const lines = [...material.lines, ...labourLines(work, book), ...deliveryLines(book)];
  const share = (name: ShareName): Quantity<"1"> => shareOf(build, book, name);

  const direct = sum(lines.map(({ amount }) => amount), "direct cost: all lines together");
  const overhead = apply(shareOfCents, { C_base: direct, r: share("overhead") }, { means: "overhead on the direct cost" });
  const contingency = apply(shareOfCents, { C_base: direct, r: share("contingency") }, { means: "contingency on the direct cost" });
  const cost = sum([direct, overhead, contingency], "cost");
  const margin = apply(marginOfPrice, { C_cost: cost, r_margin: share("margin") });
  const price = sum([cost, margin], "price before tax");
  const tax = apply(shareOfCents, { C_base: price, r: share("tax") }, { means: "tax on the price" });
  return {
    currency: book.currency,
    book: book.id,
    lines,
    missing: material.missing,
    leavesOut: LEAVES_OUT,
    labourHours: apply(hoursTogether, { H_lab: work.map(({ hours }) => hours) }, { means: "person-hours of the job" }),
    direct,
    overhead,
    contingency,
    cost,
    margin,
    price,
    tax,
    total: sum([price, tax], "price with tax"),
  };
}

type ShareName = "overhead" | "contingency" | "margin" | "tax";

function shareOf(build: Build, book: PriceBook, name: ShareName): Quantity<"1"> {
  const own = build.job.prices[name];
  const from = own === undefined ? ({ kind: "priceBook", path: name } as const) : ({ kind: "job", path: `prices.${name}` } as const);
  return given(own ?? book[name], "1", name === "margin" ? "r_margin" : "r", `share for ${name}`, from);
}

function deliveryLines(book: PriceBook): readonly QuoteLine[] {
  return book.delivery.map(({ what, price }, at) => {
    const path = `delivery[${at}]`;
    const count = given(1, "1", "n", what, { kind: "priceBook", path });
    const rate = given(price, "cents", "c_each", what, { kind: "priceBook", path: `${path}.price` });
    const amount = apply(amountByPiece, { n: count, c_each: rate }, { means: `amount: ${what}` });
    return { id: `delivery/${at + 1}`, group: "delivery", what, count, per: "piece", rate, amount };
  });
}

function sum(amounts: readonly Quantity<"cents">[], means: string): Quantity<"cents"> {
  return apply(centsTogether, { C_line: amounts }, { means });
}
