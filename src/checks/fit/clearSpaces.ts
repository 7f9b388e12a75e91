import type { Item } from "../../job/job.ts";
import { pathText } from "../../job/path.ts";
import { SAME_LENGTH } from "../../geometry/tolerance.ts";
import type { Comparison } from "../../working/comparison.ts";
import { given, type Quantity } from "../../working/quantity.ts";
import type { Finding } from "../check.ts";
import { tightest } from "../finding.ts";
import { AXES, type Axis, spanGap, type WorldBox } from "../places.ts";
import { atLeast, distance, type Fit, line, type PlacedItem, type Rule } from "./context.ts";
import { isOutside, roomOf } from "./itemsInRooms.ts";
import { faceName, TOWARD } from "./sides.ts";

/** The clear space that an item asks for is free of other items and lies within its room; outside the box nothing is known of. */
export const clearSpaces: Rule = (fit) => {
  const cases = fit.items
    .filter((placed) => !isOutside(fit, placed))
    .flatMap((placed) => spacesOf(placed.item).map((space) => freeSpace(fit, placed, space)));
  const out = cases
    .filter(({ comparison }) => !comparison.holds)
    .map(({ item, words, blocker, about, comparison }): Finding => {
      const facts = { item, side: words, needs: comparison.right.value, has: comparison.left.value, blocker };
      const at = `clear-spaces/${item}/${words.replaceAll(" ", "-")}`;
      return fit.make("clear space short", facts, { verdict: "stop", at, about, comparison });
    });
  const least = tightest(cases);
  if (out.length > 0 || least === undefined) return out;
  const facts = { count: cases.length, item: least.item, side: least.words, spare: least.comparison.margin };
  return [fit.make("clear spaces kept", facts, { verdict: "pass", at: "clear-spaces", about: [least.item], comparison: least.comparison })];
};

/** A clear space: beyond which end of which axis, how deep, and the job's field that asks for it. */
interface Space {
  readonly axis: Axis;
  readonly end: "from" | "to";
  readonly needs: number;
  readonly field: string;
  readonly words: string;
}

interface FreeSpace {
  readonly item: string;
  readonly words: string;
  readonly blocker: string;
  readonly about: readonly string[];
  readonly comparison: Comparison<"m">;
}

const FRONTS: Readonly<Record<Item["front"], { readonly axis: "x" | "y"; readonly end: "from" | "to" }>> = {
  blindEnd: { axis: "x", end: "from" },
  doorEnd: { axis: "x", end: "to" },
  left: { axis: "y", end: "from" },
  right: { axis: "y", end: "to" },
};

function spacesOf({ front, clear }: Item): readonly Space[] {
  const { axis, end } = FRONTS[front];
  const other = end === "from" ? "to" : "from";
  const across = axis === "x" ? "y" : "x";
  const spaces: readonly Space[] = [
    { axis, end, needs: clear.front, field: "front", words: "in front" },
    { axis, end: other, needs: clear.back, field: "back", words: "behind" },
    { axis: across, end: "from", needs: clear.sides, field: "sides", words: `beside ${TOWARD[across].from}` },
    { axis: across, end: "to", needs: clear.sides, field: "sides", words: `beside ${TOWARD[across].to}` },
    { axis: "z", end: "to", needs: clear.above, field: "above", words: "above" },
  ];
  return spaces.filter(({ needs }) => needs > 0);
}

/** How far it is free from the item's face to the first thing in the way, or to the room's finished face. */
function freeSpace(fit: Fit, { item, box }: PlacedItem, { axis, end, needs, field, words }: Space): FreeSpace {
  const sign = end === "to" ? 1 : -1;
  const face = line(box[axis][end], item.id, `face ${TOWARD[axis][end]}`);
  const ahead = fit.items
    .filter((other) => other.item !== item && isAhead(box, other.box, axis, sign))
    .map((other) => ({ name: other.item.id, about: [other.item.id], at: other.box[axis][end === "to" ? "from" : "to"] }));
  const room = roomOf(fit, box);
  const wall = room === undefined ? [] : [{ name: faceName(room.name, axis, end), about: [], at: room[axis][end] }];
  const first = [...ahead, ...wall].sort((a, b) => sign * (a.at - b.at))[0];
  if (first === undefined) throw new RangeError("a build without rooms has no clear spaces");
  const stop = line(first.at, first.name, `face toward ${item.id}`);
  const means = `free ${words} of ${item.id}`;
  const free = sign > 0 ? distance(face, stop, means) : distance(stop, face, means);
  return {
    item: item.id,
    words,
    blocker: first.name,
    about: [item.id, ...first.about],
    comparison: atLeast(free, wanted(fit, item, needs, field, words)),
  };
}

/** True where `other` lies before that face of `box`, within its width and height. */
function isAhead(box: WorldBox, other: WorldBox, axis: Axis, sign: number): boolean {
  const beside = AXES.filter((one) => one !== axis).some((one) => spanGap(box[one], other[one]) > -SAME_LENGTH);
  const middle = (one: WorldBox): number => (one[axis].from + one[axis].to) / 2;
  return !beside && sign * (middle(other) - middle(box)) > 0;
}

function wanted({ build }: Fit, item: Item, needs: number, field: string, words: string): Quantity<"m"> {
  const path = pathText(["items", build.job.items.indexOf(item), "clear", field]);
  return given(needs, "m", "c_need", `clear space that ${item.id} asks for ${words}`, { kind: "job", path });
}
