import type { PlacedOpening } from "../../build/build.ts";
import { catalogue } from "../../catalogue/catalogue.ts";
import { rectHeight, rectWidth } from "../../geometry/rect.ts";
import { apply } from "../../working/formula.ts";
import { given, type Quantity } from "../../working/quantity.ts";
import type { Finding } from "../check.ts";
import { tightest } from "../finding.ts";
import { type Fit, line, notNegative, type PlacedItem, type Rule } from "./context.ts";
import { smallerSpare } from "./formulas.ts";
import { isOutside, roomOf } from "./itemsInRooms.ts";
import { worldBox } from "../places.ts";

/** Every item goes through the doorways and hatches on the way to its room, its longest size first. */
export const bringIn: Rule = (fit) => {
  const ways = waysOf(fit);
  const out: Finding[] = [];
  const through: (Passed & { readonly item: string })[] = [];
  const roomCount = fit.build.rooms.length;
  let looked = 0;
  for (const placed of fit.items) {
    const room = fit.build.rooms.findIndex((one) => one === roomOf(fit, placed.box));
    if (room < 0 || isOutside(fit, placed)) continue;
    looked += 1;
    const passed = ways.map((way) => ({ way, ...spare(placed, way) })).filter(({ comparison }) => comparison.holds);
    const path = widestPath(room, roomCount, passed);
    const { id } = placed.item;
    if (path === undefined) {
      const [small, middle] = sizesOf(placed) as [number, number, number];
      out.push(fit.make("item cannot be brought in", { item: id, small, middle }, { verdict: "watch", at: `bring-in/${id}`, about: [id] }));
      continue;
    }
    through.push({ ...path, item: id });
  }
  const least = tightest(through);
  if (out.length > 0 || least === undefined) return out;
  const facts = { count: looked, item: least.item, opening: least.way.name, spare: least.comparison.margin };
  return [
    fit.make("items can be brought in", facts, {
      verdict: "pass",
      at: "bring-in",
      about: [least.item, least.way.id],
      comparison: least.comparison,
    }),
  ];
};

/** A way through: between two rooms, or from the outside (-1) into one. */
interface Way {
  readonly id: string;
  readonly name: string;
  readonly joins: readonly [number, number];
  readonly width: number;
  readonly height: number;
}

interface Passed {
  readonly way: Way;
  readonly comparison: ReturnType<typeof notNegative>;
}

const OUTSIDE = -1;

function waysOf({ build }: Fit): readonly Way[] {
  const { rooms } = build;
  const ways = build.openings
    .filter(({ opening }) => opening.kind === "personnel door" || opening.kind === "hatch")
    .map((placed): Way => ({
      id: placed.opening.id,
      name: placed.opening.id,
      joins: joinsOf(
        rooms.map(({ x }) => x),
        placed,
      ),
      ...passageOf(placed),
    }));
  const { doorEnd } = build.job.faces;
  if (doorEnd.cargoDoors === "fixed shut" || doorEnd.buildUp !== undefined || rooms.length === 0) return ways;
  const { width, height } = build.box.doorOpening;
  return [...ways, { id: "doorEnd", name: "the cargo doors", joins: [OUTSIDE, rooms.length - 1], width, height }];
}

/** What an open door leaves free: its leaf, for the door's own frame fills the rest; else the clear opening. */
function passageOf({ opening, clear }: PlacedOpening): { readonly width: number; readonly height: number } {
  const { leaves, freeArea } = opening.article === undefined ? {} : catalogue.articles.get(opening.article);
  if (leaves === undefined || freeArea === undefined) return { width: rectWidth(clear), height: rectHeight(clear) };
  const width = leaves.count * leaves.width;
  return { width, height: freeArea / width };
}

function joinsOf(
  rooms: readonly { readonly from: number; readonly to: number }[],
  { surface, clear }: PlacedOpening,
): readonly [number, number] {
  const { x } = worldBox(surface, clear, { from: 0, to: 0 });
  const middle = (x.from + x.to) / 2;
  if (surface.kind === "partition") {
    const before = rooms.filter((room) => (room.from + room.to) / 2 < middle).length;
    return [before - 1, before];
  }
  const nearest = rooms
    .map((room, index) => ({ index, off: Math.max(room.from - middle, middle - room.to) }))
    .sort((a, b) => a.off - b.off)[0];
  return [OUTSIDE, nearest?.index ?? OUTSIDE];
}

/** The tightest way of the path with the most room from outside into a room; undefined where none leads there. */
function widestPath(room: number, roomCount: number, passed: readonly Passed[]): Passed | undefined {
  const sorted = [...passed].sort((a, b) => b.comparison.margin - a.comparison.margin);
  const group = Array.from({ length: roomCount + 1 }, (_, index) => index - 1);
  const groupOf = (place: number): number | undefined => group[place + 1];
  for (const one of sorted) {
    const [a, b] = one.way.joins.map(groupOf);
    group.forEach((value, index) => {
      if (value === a && b !== undefined) group[index] = b;
    });
    if (groupOf(room) === groupOf(OUTSIDE)) return one;
  }
  return undefined;
}

/** The smaller of what is left in the opening's two sizes, the item's smallest size through the opening's smaller. */
function spare(placed: PlacedItem, way: Way): { readonly comparison: ReturnType<typeof notNegative> } {
  const [small, middle] = sizesOf(placed) as [number, number, number];
  const [less, more] = [Math.min(way.width, way.height), Math.max(way.width, way.height)];
  const { id } = placed.item;
  const size = (value: number, symbol: string, means: string): Quantity<"m"> =>
    given(value, "m", symbol, `${means} of ${id}`, { kind: "part", id, field: "size" });
  return {
    comparison: notNegative(
      apply(
        smallerSpare,
        {
          w_1: line(less, way.name, "smaller clear size"),
          w_2: line(more, way.name, "larger clear size"),
          b_1: size(small, "b_1", "smallest size"),
          b_2: size(middle, "b_2", "middle size"),
        },
        { means: `room left around ${id} in ${way.name}` },
      ),
    ),
  };
}

function sizesOf({ item }: PlacedItem): readonly number[] {
  return [item.size.length, item.size.width, item.size.height].sort((a, b) => a - b);
}
