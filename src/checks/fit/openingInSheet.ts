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
  const inSteel = cases.filter(({ placed }) => placed.surface.kind === "face");
  const out = cases.flatMap(({ placed, margins }) => {
    const { id } = placed.opening;
    const surface = placed.surface.name;
    const worst = tightest(margins.map((one) => ({ ...one, comparison: notNegative(one.margin) })));
    if (worst !== undefined && !worst.comparison.holds) {
      const past = placed.surface.kind === "face" ? "sheet" : "partition";
      const facts = { opening: id, surface, past, side: worst.side, over: -worst.margin.value };
      const working = margins.map(({ margin }) => margin);
      return [
        make("hole outside sheet", facts, {
          verdict: "stop",
          at: `opening-in-sheet/${id}`,
          about: [id],
          working,
          comparison: worst.comparison,
        }),
      ];
    }
    const thin = tightest(stripsOf(placed, margins).filter(({ comparison }) => !comparison.holds));
    if (thin === undefined) return [];
    const facts = { opening: id, surface, side: thin.side, strip: thin.margin.value, least: LEAST_STRIP.value };
    return [make("thin strip", facts, { verdict: "watch", at: `opening-in-sheet/${id}`, about: [id], comparison: thin.comparison })];
  });
  if (out.length > 0) return out;
  const least = tightest(
    inSteel.flatMap(({ placed, margins }) =>
      margins.map((one) => ({ ...one, id: placed.opening.id, comparison: notNegative(one.margin) })),
    ),
  );
  if (least === undefined) return [];
  const facts = { count: inSteel.length, opening: least.id, side: least.side, margin: least.margin.value };
  const working = inSteel.flatMap(({ margins }) => margins.map(({ margin }) => margin));
  return [
    make("holes in sheet", facts, {
      verdict: "pass",
      at: "opening-in-sheet",
      about: inSteel.map(({ placed }) => placed.opening.id),
      working,
      comparison: least.comparison,
    }),
  ];
};

/** True where the hole of a face runs past its sheet, into the box's frame. */
export function leavesSheet(placed: PlacedOpening): boolean {
  return placed.surface.kind === "face" && marginsOf(placed).some(({ margin }) => !notNegative(margin).holds);
}

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

/**
 * Strips of sheet that are there at all: none where the frame stands on the box's frame, nor below a door frame that has
 * no lower bar, whose sheet is cut away down to the rail. A partition has no sheet.
 */
function stripsOf(
  { opening, surface, hole, clear }: PlacedOpening,
  margins: readonly Margin[],
): readonly (Margin & { readonly comparison: Comparison<"m"> })[] {
  if (surface.kind === "partition") return [];
  const standsOnRail = opening.frame !== undefined && hole.v0 === clear.v0;
  const strips = standsOnRail ? margins.filter((_, side) => side !== BELOW) : margins;
  return strips
    .filter(({ margin }) => margin.value > SEAM_TOLERANCE.value)
    .map((one) => ({ ...one, comparison: atLeast(one.margin, LEAST_STRIP) }));
}

/** Place of v0 in the four margins. */
const BELOW = 2;
