import type { PlacedRoom } from "../../build/build.ts";
import type { Comparison } from "../../working/comparison.ts";
import type { Finding } from "../check.ts";
import { tightest } from "../finding.ts";
import { AXES, type Axis, spanGap, type WorldBox } from "../places.ts";
import { distance, type Fit, line, notNegative, type PlacedItem, type Rule } from "./context.ts";
import { faceName, TOWARD } from "./sides.ts";

/** Every item stands within one room: between finished walls and partitions, under the ceiling. */
export const itemsInRooms: Rule = (fit) => {
  const out: Finding[] = [];
  const inside: (Margin & { readonly item: string })[] = [];
  for (const placed of fit.items) {
    const { id } = placed.item;
    const room = roomOf(fit, placed.box);
    if (room === undefined || isOutside(fit, placed)) {
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
export function isOutside({ build }: Fit, { box }: PlacedItem): boolean {
  const { outside, insets } = build.box;
  const shell: WorldBox = {
    x: { from: 0, to: outside.length },
    y: { from: 0, to: outside.width },
    z: { from: -insets.floor, to: outside.height - insets.floor },
  };
  return AXES.some((axis) => spanGap(shell[axis], box[axis]) >= 0);
}
