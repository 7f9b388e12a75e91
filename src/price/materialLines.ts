import type { PriceBook } from "../job/priceBook.ts";
import type { Build } from "../build/build.ts";
import type { Takeoff, TakeoffLine } from "../takeoff/takeoff.ts";
import { suppliedBy } from "../takeoff/supply.ts";
import { apply } from "../working/formula.ts";
import { given, type Given, type Quantity } from "../working/quantity.ts";
import { amountByPiece, boughtAmount } from "./formulas.ts";
import type { MissingPrice, QuoteLine } from "./quote.ts";

/** Lines for everything that is bought, and what the book has no price for. */
export function materialLines(
  build: Build,
  takeoff: Takeoff,
  book: PriceBook,
): { readonly lines: readonly QuoteLine[]; readonly missing: readonly MissingPrice[] } {
  const lines: QuoteLine[] = [];
  const missing: MissingPrice[] = [];
  for (const line of takeoff.lines) {
    const supply = suppliedBy(build, line, book);
    if (supply.entry === undefined) {
      missing.push({ id: line.id, what: line.what, wanted: `a price for ${supply.path} in price book ${book.id}` });
      continue;
    }
    const { per, price } = supply.entry;
    const count = soldAmount(line, per);
    const rate = given(price, "cents", "c_each", `price for one ${per}`, { kind: "priceBook", path: `${supply.path}.price` });
    lines.push({
      id: line.id,
      group: groupOf(line),
      what: line.what,
      count,
      per,
      rate,
      amount: apply(amountByPiece, { n: count, c_each: rate }, { means: `amount: ${line.what}` }),
    });
  }
  return { lines, missing };
}

const LITRES_IN_CUBIC_METRE = 1000;

/** Whole stock in the unit of the price: metres of whole bars, m2 of whole sheets, litres of whole packs, else pieces. */
function soldAmount({ buy, what }: TakeoffLine, per: string): Quantity<"1"> {
  if (per === "piece" || per === "pack" || per === "set") return buy.count;
  const { holds } = buy;
  if (holds === undefined) throw new RangeError(`${what} is priced by ${per}, but the takeoff does not say what one holds`);
  const one = per === "litre" ? holds.value * LITRES_IN_CUBIC_METRE : holds.value;
  const x_each = given(one, "1", "x_each", `${holds.means}, as ${per}`, fromOf(holds));
  return apply(boughtAmount, { n_buy: buy.count, x_each }, { means: `${per} of ${what}` });
}

function fromOf({ origin, means }: Quantity): Given {
  return origin.kind === "given" ? origin.from : { kind: "part", id: means, field: "stock" };
}

function groupOf({ group }: TakeoffLine): QuoteLine["group"] {
  if (group === "box") return "box";
  return group === "openings" || group === "items" ? "article" : "material";
}
