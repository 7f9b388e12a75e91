import type { Build, PlacedRoom } from "../../build/build.ts";
import { SAME_LENGTH } from "../../geometry/tolerance.ts";
import type { Comparison } from "../../working/comparison.ts";
import type { Finding } from "../check.ts";
import { tightest } from "../finding.ts";
import { AXES, type Axis, spanGap, type WorldBox } from "../places.ts";
import { distance, type Fit, line, notNegative, type PlacedItem, type Rule } from "./context.ts";
import { faceName, TOWARD } from "./sides.ts";

/**
 * Every item stands within one room: between finished walls and partitions, under the ceiling. One that stands outside
 * because it belongs there is told of; any other that is off the floor is stopped like one in a wall.
 */
export const itemsInRooms: Rule = (fit) => {
  const out: Finding[] = [];
  const inside: (Margin & { readonly item: string })[] = [];
  for (const placed of fit.items) {
    const { id } = placed.item;
    const room = roomOf(fit, placed.box);
    if (room === undefined || belongsOutside(fit, placed)) {
      out.push(fit.make("item on the outside", { item: id }, { verdict: "note", at: `items-in-rooms/${id}`, about: [id] }));
      continue;
    }
    const margins = marginsOf(placed, room);
    const worst = tightest(margins);
    if (worst !== undefined && !worst.comparison.holds) {
      const facts = { item: id, room: room.name, over: -worst.comparison.margin, face: worst.face };
      out.push(
        fit.make("item outside room", facts, { verdict: "stop", at: `items-in-rooms/${id}`, about: [id], comparison: worst.comparison }),
      );
      continue;
    }
    // An item stands on the floor; that side says nothing.
    inside.push(...margins.slice(0, -1).map((margin) => ({ ...margin, item: id })));
  }
  const least = tightest(inside);
  if (out.some(({ verdict }) => verdict === "stop") || least === undefined) return out;
  const facts = {
    count: new Set(inside.map(({ item }) => item)).size,
    item: least.item,
    margin: least.comparison.margin,
    face: least.face,
  };
  return [
    ...out,
    fit.make("items in rooms", facts, { verdict: "pass", at: "items-in-rooms", about: [least.item], comparison: least.comparison }),
  ];
};

/** The room that most of a block's length lies in; undefined where the build has no rooms. */
export function roomOf({ build }: Pick<Fit, "build">, box: WorldBox): PlacedRoom | undefined {
  return [...build.rooms].sort((a, b) => spanGap(a.x, box.x) - spanGap(b.x, box.x))[0];
}

interface Margin {
  readonly face: string;
  readonly comparison: Comparison<"m">;
}

/** Room left on each side, the floor last. */
function marginsOf({ item, box }: PlacedItem, room: PlacedRoom): readonly Margin[] {
  const end = (axis: Axis, side: "from" | "to"): Margin => {
    const words = TOWARD[axis][side];
    const finished = line(room[axis][side], room.name, `finished face ${words}`);
    const edge = line(box[axis][side], item.id, `side ${words}`);
    const means = `room between ${item.id} and the finished face ${words}`;
    const margin = side === "from" ? distance(finished, edge, means) : distance(edge, finished, means);
    return { face: faceName(room.name, axis, side), comparison: notNegative(margin) };
  };
  return [...(["x", "y"] as const).flatMap((axis) => [end(axis, "from"), end(axis, "to")]), end("z", "to"), end("z", "from")];
}

/** True where no part of the item lies within the outside faces of the box. */
export function isOutside({ build }: Pick<Fit, "build">, { box }: PlacedItem): boolean {
  const shell = shellOf(build);
  return AXES.some((axis) => spanGap(shell[axis], box[axis]) >= 0);
}

/** How far off the outside of a wall its brackets may hold a thing, metres; common practice. */
const BRACKET = 0.15;

/** True where the file says that the item stands outside: on the roof or under the floor, or held by a wall from outside. */
function belongsOutside({ build }: Fit, { item, box }: PlacedItem): boolean {
  const shell = shellOf(build);
  const off = Math.max(spanGap(shell.x, box.x), spanGap(shell.y, box.y));
  const isOverOrUnder = spanGap(shell.z, box.z) >= -SAME_LENGTH && off < 0;
  const isOnWall = item.fixedTo === "wall" && off >= -SAME_LENGTH && off <= BRACKET;
  return isOverOrUnder || isOnWall;
}

/** The block between the outside faces of the box. */
function shellOf({ box: { outside, insets } }: Build): WorldBox {
  return {
    x: { from: 0, to: outside.length },
    y: { from: 0, to: outside.width },
    z: { from: -insets.floor, to: outside.height - insets.floor },
  };
}
