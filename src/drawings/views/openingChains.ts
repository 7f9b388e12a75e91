import type { PlacedOpening } from "../../build/build.ts";
import type { Surface } from "../../build/surface.ts";
import type { Rect } from "../../geometry/rect.ts";
import type { System } from "../../units/display.ts";
import type { DimensionChain } from "../drawing.ts";
import { chain, runningFrom } from "./chains.ts";
import { datumsOf } from "./faceNames.ts";
import type { Map2 } from "./shapes.ts";

interface Rows {
  /** The first row that is free on each side. */
  readonly below: number;
  readonly above: number;
  readonly left: number;
  readonly right: number;
}

interface Edges {
  /** The clear opening where not given, or the hole that the welder cuts. */
  readonly rectOf?: (opening: PlacedOpening) => Rect;
  /** Further stops of the stretches, beyond the posts. */
  readonly beyond?: readonly number[];
  /** Where one stands to measure; inside where not given. */
  readonly work?: "inside" | "outside";
}

/**
 * Where the openings of a surface are: the stretches from post to post, and running distances from both origins, along
 * and up.
 */
export function openingChains(
  surface: Surface,
  openings: readonly PlacedOpening[],
  system: System,
  map: Map2,
  rows: Rows,
  { rectOf = ({ clear }) => clear, beyond = [], work = "inside" }: Edges = {},
): readonly DimensionChain[] {
  const { u: [u0, u1], v: [v0, v1] } = datumsOf(surface, work);
  const rects = openings.map(rectOf);
  const x = (u: number): number => map(u, 0).x;
  const y = (v: number): number => map(0, v).y;
  const groups = apart(rects);
  const across = groups.map((group, index) =>
    chain(
      { direction: "across", side: "below", row: rows.below + index },
      ascending([u0.at, ...group.flatMap((r) => [r.u0, r.u1]), u1.at, ...beyond]),
      system,
      x,
    ),
  );
  if (rects.length === 0) return across;
  const us = rects.flatMap((r) => [r.u0, r.u1]);
  const vs = rects.flatMap((r) => [r.v0, r.v1]);
  return [
    ...across,
    runningFrom(
      { direction: "across", side: "below", row: rows.below + groups.length, label: u0.from }, u0.at, [...us, u1.at], system, x,
    ),
    runningFrom({ direction: "across", side: "above", row: rows.above, label: u1.from }, u1.at, [...us, u0.at], system, x),
    runningFrom({ direction: "up", side: "left", row: rows.left, label: v0.from }, v0.at, [...vs, v1.at], system, y),
    runningFrom({ direction: "up", side: "right", row: rows.right, label: v1.from }, v1.at, [...vs, v0.at], system, y),
  ];
}

/** Groups in which no two rectangles overlap along u; one empty group where there are none. */
function apart(rects: readonly Rect[]): readonly (readonly Rect[])[] {
  const groups: Rect[][] = [[]];
  for (const rect of [...rects].sort((a, b) => a.u0 - b.u0)) {
    const free = groups.find((group) => (group.at(-1)?.u1 ?? Number.NEGATIVE_INFINITY) <= rect.u0);
    if (free === undefined) groups.push([rect]);
    else free.push(rect);
  }
  return groups;
}

function ascending(at: readonly number[]): readonly number[] {
  return [...at].sort((a, b) => a - b);
}
