import type { PlacedOpening } from "../../build/build.ts";
import { overlaps } from "../../geometry/rect.ts";
import type { Comparison } from "../../working/comparison.ts";
import type { Quantity } from "../../working/quantity.ts";
import { tightest } from "../finding.ts";
import { FREE_BEFORE_AIR, FREE_BEFORE_DOOR } from "../limits.ts";
import { ontoSurface } from "../places.ts";
import { atLeast, distance, line, type PlacedItem, type Rule } from "./context.ts";

/** Nothing stands close before doors, hatches, ways of escape, fans and intakes. */
export const beforeOpenings: Rule = ({ build, items, make }) => {
  const watched = build.openings.flatMap((placed) => {
    const limit = freeDepth(placed);
    return limit === undefined ? [] : [{ placed, limit }];
  });
  const cases = watched.flatMap(({ placed, limit }) =>
    items.flatMap((item) => {
      const room = roomBefore(placed, item);
      return room === undefined ? [] : [{ item: item.item.id, opening: placed.opening.id, comparison: atLeast(room, limit) }];
    }),
  );
  const out = cases
    .filter(({ comparison }) => !comparison.holds)
    .map(({ item, opening, comparison }) =>
      make(
        "item before opening",
        { item, opening, has: comparison.left.value, least: comparison.right.value },
        {
          verdict: "watch",
          at: `before-openings/${opening}/${item}`,
          about: [item, opening],
          comparison,
        },
      ),
    );
  if (out.length > 0 || watched.length === 0) return out;
  const about = watched.map(({ placed }) => placed.opening.id);
  const least = tightest<{ item: string; opening: string; comparison: Comparison<"m"> }>(cases);
  if (least === undefined) {
    const depth = Math.max(...watched.map(({ limit }) => limit.value));
    return [make("openings free", { count: watched.length, least: depth }, { verdict: "pass", at: "before-openings", about })];
  }
  const facts = { item: least.item, opening: least.opening, has: least.comparison.left.value };
  return [make("openings free beyond", facts, { verdict: "pass", at: "before-openings", about, comparison: least.comparison })];
};

function freeDepth({ opening }: PlacedOpening): Quantity<"m"> | undefined {
  if (opening.kind === "fan" || opening.kind === "intake") return FREE_BEFORE_AIR;
  return opening.kind === "personnel door" || opening.kind === "hatch" || opening.escape ? FREE_BEFORE_DOOR : undefined;
}

/** From the finished face to an item that covers some of the opening; undefined where it covers none, or stands outside. */
function roomBefore({ opening, surface, clear }: PlacedOpening, { item, box }: PlacedItem): Quantity<"m"> | undefined {
  const { rect, depth } = ontoSurface(surface, box);
  if (!overlaps(rect, clear)) return undefined;
  const means = `free before ${opening.id}`;
  const near = surface.stack.finished;
  if (surface.kind === "face") {
    if (depth.to <= 0) return undefined;
    return distance(line(near, surface.id, "finished face"), line(depth.from, item.id, `side toward ${opening.id}`), means);
  }
  const far = surface.farStack?.finished ?? near;
  return depth.from >= near && depth.from >= 0
    ? distance(line(far, surface.id, "finished face toward the blind end"), line(depth.from, item.id, `side toward ${opening.id}`), means)
    : distance(line(depth.to, item.id, `side toward ${opening.id}`), line(near, surface.id, "finished face toward the door end"), means);
}
