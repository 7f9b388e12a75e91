import { defineFormula } from "../working/formula.ts";
import { source } from "../working/source.ts";

const money = source("whole cents, half a cent up", "derived");
const total = (list: readonly number[]): number => list.reduce((sum, one) => sum + one, 0);

export const amountByPiece = defineFormula({
  id: "price-amount-by-piece",
  symbol: "C_line",
  means: "amount of a line",
  unit: "cents",
  text: "round(n * c_each)",
  takes: { n: "1", c_each: "cents" },
  source: money,
  compute: ({ n, c_each }) => Math.round(n * c_each),
});

export const amountByHours = defineFormula({
  id: "price-amount-by-hours",
  symbol: "C_line",
  means: "amount of a line",
  unit: "cents",
  text: "round(H_sum * c_each)",
  takes: { H_sum: "h", c_each: "cents" },
  source: money,
  compute: ({ H_sum, c_each }) => Math.round(H_sum * c_each),
});

export const boughtAmount = defineFormula({
  id: "price-bought-amount",
  symbol: "n_sold",
  means: "what is bought, in the unit that it is priced by",
  unit: "1",
  text: "n_buy * x_each",
  takes: { n_buy: "1", x_each: "1" },
  source: source("whole stock times what one holds", "derived"),
  compute: ({ n_buy, x_each }) => n_buy * x_each,
});

export const centsTogether = defineFormula({
  id: "price-cents-together",
  symbol: "C_sum",
  means: "amounts together",
  unit: "cents",
  text: "sum(C_line)",
  takes: { C_line: "cents[]" },
  source: source("sum of whole cents", "derived"),
  compute: ({ C_line }) => total(C_line),
});

export const shareOfCents = defineFormula({
  id: "price-share",
  symbol: "C_share",
  means: "share of an amount",
  unit: "cents",
  text: "round(C_base * r)",
  takes: { C_base: "cents", r: "1" },
  source: money,
  compute: ({ C_base, r }) => Math.round(C_base * r),
});

/** Domain: r_margin below 1; RangeError otherwise. */
export const marginOfPrice = defineFormula({
  id: "price-margin",
  symbol: "C_margin",
  means: "margin as a share of the price",
  unit: "cents",
  text: "round(C_cost * r_margin / (1 - r_margin))",
  takes: { C_cost: "cents", r_margin: "1" },
  source: source("price = cost / (1 - margin), margin = price less cost, in whole cents", "derived"),
  compute: ({ C_cost, r_margin }) => {
    if (!(r_margin < 1)) throw new RangeError(`price-margin: r_margin has to be below 1, got ${r_margin}`);
    return Math.round((C_cost * r_margin) / (1 - r_margin));
  },
});
