import { type Build, surfaceOf } from "../../../build/build.ts";
import type { Vec2 } from "../../../geometry/vector.ts";
import { worldOf } from "../cuts/cut.ts";
import type { Say } from "../../say.ts";
import type { ColdPoint } from "./coldest.ts";

/** Where a cold point lies: in which section, near which steel, and from the inside planes of the box. */
export interface Where {
  readonly section: string;
  /** The nearest bar, or "" where none is near. */
  readonly near: string;
  /** From the blind end, from the left wall, above the bare floor; m. */
  readonly along: number;
  readonly across: number;
  readonly up: number;
}

/** Steel further off is no reason for a cold point, m. */
const NEAR = 0.15;

/** The place of a cold point in words and numbers. */
export function whereIs(build: Build, { solved, at }: ColdPoint): Where {
  const { planned, section } = solved;
  const world = worldOf(planned.cut, at.x, at.y);
  const bars = section.sheets.filter(({ what }) => !what.endsWith(" sheet"));
  const near = bars
    .map(({ what, points }) => ({ what, away: Math.min(...points.slice(1).map((b, k) => distance(at, points[k] as Vec2, b))) }))
    .filter(({ away }) => away <= NEAR)
    .sort((a, b) => a.away - b.away)[0];
  return {
    section: planned.name,
    near: near?.what.replace(/,.*/, "") ?? "",
    along: world.x - surfaceOf(build, "blindEnd").origin.x,
    across: world.y - surfaceOf(build, "left").origin.y,
    up: world.z,
  };
}

/** The place in words, after the section's name: "beside the stud (3 m from the blind end, ...)". */
export function whereWords({ near, along, across, up }: Omit<Where, "section">, say: Say): string {
  const place = `(${say.length(along)} from the blind end, ${say.length(across)} from the left wall, ${say.length(up)} up)`;
  return near === "" ? place : `beside the ${near} ${place}`;
}

/** From a point to a segment. */
function distance(p: Vec2, a: Vec2, b: Vec2): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const length = dx * dx + dy * dy;
  const part = length === 0 ? 0 : Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / length));
  return Math.hypot(p.x - a.x - part * dx, p.y - a.y - part * dy);
}
