import { isInRings, isRect, polygonBounds } from "../../../geometry/polygon.ts";
import type { Field, Section } from "../../../physics/conduction.ts";

/** What fills the cells of a field, both halves of each: index into `names`, or NOTHING. */
export interface Fills {
  /** Materials, then the environments of the airs. */
  readonly names: readonly string[];
  /** So many of them are materials. */
  readonly materials: number;
  readonly lower: Int16Array;
  readonly upper: Int16Array;
}

export const NOTHING = -1;

/** What fills a section on the cells of its solution: regions in their order, the last on top. */
export function fillsOf({ regions, airs }: Section, { xs, ys, slope }: Field): Fills {
  const materials = [...new Set(regions.flatMap(({ fill, what }) => (fill.kind === "solid" ? [what] : [])))];
  const environments = [...new Set(airs.map(({ environment }) => environment))];
  const indexOf = ({ fill, what }: Section["regions"][number]): number =>
    fill.kind === "solid" ? materials.indexOf(what) : materials.length + environments.indexOf(airs.find(({ id }) => id === fill.air)?.environment ?? "");
  const [wide, tall] = [xs.length - 1, ys.length - 1];
  const lower = new Int16Array(wide * tall).fill(NOTHING);
  const upper = new Int16Array(wide * tall).fill(NOTHING);
  for (const region of regions) {
    const index = indexOf(region);
    const { u0, u1, v0, v1 } = polygonBounds(region.outline);
    const isFull = isRect(region.outline);
    const rings = [region.outline.outer, ...region.outline.holes];
    const covers = (i: number, j: number, across: number, up: number): boolean => isFull || isInRings(rings, { x: within(xs, i, across), y: within(ys, j, up) });
    for (let j = 0; j < tall; j += 1) {
      if (!isBetween(within(ys, j, 0.5), v0, v1)) continue;
      for (let i = 0; i < wide; i += 1) {
        if (!isBetween(within(xs, i, 0.5), u0, u1)) continue;
        const cell = j * wide + i;
        const rises = slope[cell] as number;
        if (rises === 0) {
          if (covers(i, j, 0.5, 0.5)) lower[cell] = upper[cell] = index;
          continue;
        }
        if (covers(i, j, rises > 0 ? 2 / 3 : 1 / 3, 1 / 3)) lower[cell] = index;
        if (covers(i, j, rises > 0 ? 1 / 3 : 2 / 3, 2 / 3)) upper[cell] = index;
      }
    }
  }
  return { names: [...materials, ...environments], materials: materials.length, lower, upper };
}

/** The place at a share of the way through an interval of lines. */
function within(lines: Float64Array, at: number, share: number): number {
  return (lines[at] as number) * (1 - share) + (lines[at + 1] as number) * share;
}

function isBetween(value: number, from: number, to: number): boolean {
  return value > from && value < to;
}
