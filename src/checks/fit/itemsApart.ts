import { apply } from "../../working/formula.ts";
import { AXES, spanGap } from "../places.ts";
import { gapsBetween } from "./blocks.ts";
import { notNegative, type PlacedItem, type Rule } from "./context.ts";
import { blockGap } from "./formulas.ts";
import { pairsOf } from "./pairs.ts";

/** No two items take the same space. */
export const itemsApart: Rule = ({ items, make }) => {
  const cases = pairsOf(items).map(([a, b]) => ({ a, b, apart: Math.max(...AXES.map((axis) => spanGap(a.box[axis], b.box[axis]))) }));
  const least = cases.reduce<(typeof cases)[number] | undefined>(
    (best, one) => (best === undefined || one.apart < best.apart ? one : best),
    undefined,
  );
  const out = cases
    .filter(({ apart }) => apart < 0)
    .map(({ a, b }) => ({ one: a.item.id, other: b.item.id, comparison: roomBetween(a, b) }))
    .filter(({ comparison }) => !comparison.holds)
    .map(({ one, other, comparison }) =>
      make(
        "items overlap",
        { one, other, over: -comparison.margin },
        { verdict: "stop", at: `items-apart/${one}/${other}`, about: [one, other], comparison },
      ),
    );
  if (out.length > 0 || least === undefined) return out;
  const comparison = roomBetween(least.a, least.b);
  const facts = { one: least.a.item.id, other: least.b.item.id, apart: comparison.margin };
  return [make("items apart", facts, { verdict: "pass", at: "items-apart", about: [facts.one, facts.other], comparison })];
};

function roomBetween(a: PlacedItem, b: PlacedItem) {
  const g = gapsBetween(a.box, a.item.id, b.box, b.item.id);
  return notNegative(apply(blockGap, { g }, { means: `room between ${a.item.id} and ${b.item.id}` }));
}
