import type { PlacedOpening } from "../../build/build.ts";
import type { Comparison } from "../../working/comparison.ts";
import { apply } from "../../working/formula.ts";
import { tightest } from "../finding.ts";
import { LEAST_BETWEEN_HOLES } from "../limits.ts";
import { atLeast, gapBetween, notNegative, type Rule } from "./context.ts";
import { blockGap, rectangleDistance } from "./formulas.ts";
import { pairsOf } from "./pairs.ts";

/** Holes of one face keep apart. */
export const openingsApart: Rule = ({ build, make }) => {
  const cases = pairsOf(build.openings)
    .filter(([a, b]) => a.surface.id === b.surface.id)
    .map(([a, b]) => ({ a, b, ...between(a, b) }));
  const out = cases.flatMap(({ a, b, overlap, comparison }) => {
    const [one, other] = [a.opening.id, b.opening.id];
    const at = `openings-apart/${one}/${other}`;
    const about = [one, other];
    if (!overlap.holds)
      return [make("holes overlap", { one, other, over: -overlap.margin }, { verdict: "stop", at, about, comparison: overlap })];
    if (comparison.holds) return [];
    const facts = { one, other, apart: comparison.left.value, least: LEAST_BETWEEN_HOLES.value };
    return [make("holes too near", facts, { verdict: "watch", at, about, comparison })];
  });
  const least = tightest(cases);
  if (out.length > 0 || least === undefined) return out;
  const facts = { one: least.a.opening.id, other: least.b.opening.id, apart: least.comparison.left.value };
  return [
    make("holes apart", facts, { verdict: "pass", at: "openings-apart", about: [facts.one, facts.other], comparison: least.comparison }),
  ];
};

function between(a: PlacedOpening, b: PlacedOpening): { overlap: Comparison<"m">; comparison: Comparison<"m"> } {
  const along = (one: PlacedOpening) => ({ from: one.hole.u0, to: one.hole.u1 });
  const up = (one: PlacedOpening) => ({ from: one.hole.v0, to: one.hole.v1 });
  const [aOn, bOn] = [`hole ${a.opening.id}`, `hole ${b.opening.id}`];
  const g_x = gapBetween(along(a), aOn, along(b), bOn, "along");
  const g_y = gapBetween(up(a), aOn, up(b), bOn, "up");
  const means = `sheet between ${aOn} and ${bOn}`;
  return {
    overlap: notNegative(apply(blockGap, { g: [g_x, g_y] }, { means })),
    comparison: atLeast(apply(rectangleDistance, { g_x, g_y }, { means }), LEAST_BETWEEN_HOLES),
  };
}
