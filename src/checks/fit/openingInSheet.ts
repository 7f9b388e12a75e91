import type { PlacedOpening } from "../../build/build.ts";
import type { Comparison } from "../../working/comparison.ts";
import type { Quantity } from "../../working/quantity.ts";
import { tightest } from "../finding.ts";
import { LEAST_STRIP, SEAM_TOLERANCE } from "../limits.ts";
import { atLeast, distance, line, notNegative, type Rule } from "./context.ts";
import { sidesOf } from "./sides.ts";

/** Holes lie in the sheet between posts and rails, and leave no strip too thin to weld or to keep straight. */
export const openingInSheet: Rule = ({ build, make }) => {
  const cases = build.openings.map((placed) => ({ placed, margins: marginsOf(placed) }));
  const out = cases.flatMap(({ placed, margins }) => {
    const { id } = placed.opening;
    const surface = placed.surface.name;
    const worst = tightest(margins.map((one) => ({ ...one, comparison: notNegative(one.margin) })));
    if (worst !== undefined && !worst.comparison.holds) {
      const facts = { opening: id, surface, side: worst.side, over: -worst.margin.value };
      const working = margins.map(({ margin }) => margin);
      return [make("hole outside sheet", facts, { verdict: "stop", at: `opening-in-sheet/${id}`, about: [id], working, comparison: worst.comparison })];
    }
    const thin = tightest(stripsOf(margins).filter(({ comparison }) => !comparison.holds));
    if (thin === undefined) return [];
    const facts = { opening: id, surface, side: thin.side, strip: thin.margin.value, least: LEAST_STRIP.value };
    return [make("thin strip", facts, { verdict: "watch", at: `opening-in-sheet/${id}`, about: [id], comparison: thin.comparison })];
  });
  if (out.length > 0) return out;
  const least = tightest(
    cases.flatMap(({ placed, margins }) =>
      margins.map((one) => ({ ...one, id: placed.opening.id, comparison: notNegative(one.margin) })),
    ),
  );
  if (least === undefined) return [];
  const facts = { count: cases.length, opening: least.id, side: least.side, margin: least.margin.value };
  const working = cases.flatMap(({ margins }) => margins.map(({ margin }) => margin));
  return [make("holes in sheet", facts, { verdict: "pass", at: "opening-in-sheet", about: cases.map(({ placed }) => placed.opening.id), working, comparison: least.comparison })];
};

interface Margin {
  readonly side: string;
  readonly margin: Quantity<"m">;
}

/** Sheet left on each side of the hole. */
function marginsOf({ opening, surface, hole }: PlacedOpening): readonly Margin[] {
  const { panel } = surface;
  const [u0, u1, v0, v1] = sidesOf(surface);
  const of = `hole ${opening.id}`;
  const sheet = (value: number, side: string) => line(value, surface.id, `sheet's edge ${side}`);
  const edge = (value: number, side: string) => line(value, opening.id, `hole's edge ${side}`);
  const margin = (side: string, from: Quantity<"m">, to: Quantity<"m">): Margin => ({
    side,
    margin: distance(from, to, `sheet left beside ${of} ${side}`),
  });
  return [
    margin(u0, sheet(panel.u0, u0), edge(hole.u0, u0)),
    margin(u1, edge(hole.u1, u1), sheet(panel.u1, u1)),
    margin(v0, sheet(panel.v0, v0), edge(hole.v0, v0)),
    margin(v1, edge(hole.v1, v1), sheet(panel.v1, v1)),
  ];
}

/** Strips that are there at all; a frame that stands on the box's frame leaves none. */
function stripsOf(margins: readonly Margin[]): readonly (Margin & { readonly comparison: Comparison<"m"> })[] {
  return margins
    .filter(({ margin }) => margin.value > SEAM_TOLERANCE.value)
    .map((one) => ({ ...one, comparison: atLeast(one.margin, LEAST_STRIP) }));
}
