import { apply } from "../working/formula.ts";
import type { Quantity } from "../working/quantity.ts";
import { centsTogether } from "./formulas.ts";
import type { Quote } from "./quote.ts";

/** What the lines of a group come to, whole cents; undefined where the quote has no line of that group. */
export function groupAmount({ lines }: Quote, group: string): Quantity<"cents"> | undefined {
  const amounts = lines.filter((line) => line.group === group).map(({ amount }) => amount);
  return amounts.length === 0 ? undefined : apply(centsTogether, { C_line: amounts }, { means: `${group}: all lines together` });
}
