import type { Build } from "../../../build/build.ts";
import type { Part } from "../../../build/part.ts";
import type { Span, Surface } from "../../../build/surface.ts";
import { wavePoints } from "../../../geometry/trapezoid.ts";
import { barsAcross, best, endBeyond, type Ground, groundOf, groundWith, LEAST_ROOM, placesBetween, ROOM_ENOUGH, roomBeside } from "./places.ts";
import { plan, planeAcross, type Planned, throughFace } from "./planned.ts";

/** Bars of a face that bridge it alike, with the section that tells what one of them does. */
export interface BarKind {
  readonly id: string;
  /** In words: "studs on inner flats". */
  readonly name: string;
  readonly planned: Planned;
  readonly bars: readonly Part[];
  /** Length of all of them, m. */
  readonly length: number;
}

/** A face: its field, undisturbed, and the bars that cross it again and again. */
export interface FacePlan {
  readonly surface: Surface;
  readonly field: Planned;
  readonly kinds: readonly BarKind[];
}

/** Width of the section of a field without a profile, m. */
const FLAT_FIELD = 0.1;
/** How far the edge of a bar's section may lie from its middle, m. */
const HALF_BAY = { least: 0.08, most: 0.32 };

/** Bars that a face counts by their length; beside openings too, where the sections of edges leave them out again. */
const REPEATED: ReadonlySet<Part["role"]> = new Set<Part["role"]>(["stud", "jamb stud", "cripple stud", "cross-member"]);

/** The sections of a face; undefined where openings leave no place to cut it. */
export function facePlan(build: Build, surface: Surface): FacePlan | undefined {
  const ground = groundOf(build, surface);
  const field = surface.id === "floor" ? floorField(build, ground) : wallField(ground);
  if (field === undefined) return undefined;
  const repeated = ground.bars.filter(({ role }) => REPEATED.has(role));
  return { surface, field, kinds: kindsOf(ground, repeated) };
}

/** Half a pitch of the profile, between the middles of neighbouring flats: all bars left out. */
function wallField({ surface, taken }: Ground): Planned | undefined {
  const { profile, inside } = surface;
  const bare = groundWith(surface, [], taken);
  const width = profile === undefined ? FLAT_FIELD : profile.pitch / 2;
  const starts = placesBetween(surface, "u", inside.u0 + 0.3, inside.u1 - 0.3 - width).filter((_, k) => profile === undefined || k % 2 === 0);
  const middle = (inside.u0 + inside.u1) / 2;
  const scored = starts.flatMap((from) => {
    const line = quietLine(bare, { from, to: from + width });
    return line === undefined ? [] : [{ from, at: line.at, score: line.room - 0.05 * Math.abs(from - middle) }];
  });
  const place = best(scored);
  if (place === undefined) return undefined;
  return plan({
    id: `${surface.id}/field`,
    name: `field of the ${surface.name}`,
    about: [surface.id],
    cut: planeAcross(surface, "u", place.at),
    window: throughFace(surface, place.from, place.from + width),
    without: ({ shape }) => shape.kind === "bar",
  });
}

/** Midway between two cross-members. */
function floorField(build: Build, ground: Ground): Planned | undefined {
  const { surface } = ground;
  const { pitch, flange } = build.box.crossMembers;
  const middles = ground.bars.filter(({ role }) => role === "cross-member").map(({ rect }) => (rect.u0 + rect.u1) / 2);
  const half = Math.min(FLAT_FIELD, (pitch - flange) / 2) / 2;
  const scored = middles.slice(0, -1).flatMap((u) => {
    const from = u + pitch / 2 - half;
    const line = quietLine(ground, { from, to: from + 2 * half });
    return line === undefined ? [] : [{ from, at: line.at, score: line.room }];
  });
  const place = best(scored);
  if (place === undefined) return undefined;
  return plan({
    id: `${surface.id}/field`,
    name: `field of the ${surface.name} between cross-members`,
    about: [surface.id],
    cut: planeAcross(surface, "u", place.at),
    window: throughFace(surface, place.from, place.from + 2 * half),
  });
}

/** Bars by where they stand on the profile: on an inner flat, which touches the inside plane, or over an outer one. */
function kindsOf(ground: Ground, bars: readonly Part[]): readonly BarKind[] {
  const { surface } = ground;
  const { profile } = surface;
  if (profile === undefined) {
    const kind = surface.id === "floor" ? CROSS_MEMBERS : STUDS;
    return kindOf(ground, kind, bars, (part) => -Math.abs(middleOf(part) - (surface.inside.u0 + surface.inside.u1) / 2));
  }
  const onInner = bars.filter((part) => leastDepth(surface, part) < profile.depth / 2);
  const overOuter = bars.filter((part) => !onInner.includes(part));
  return [
    ...kindOf(ground, ON_INNER, onInner, (part) => -meanDepth(surface, part)),
    ...kindOf(ground, OVER_OUTER, overOuter, (part) => meanDepth(surface, part)),
  ];
}

/** What bars of a kind are called: all of them, and the one in the section. */
interface KindName {
  readonly id: string;
  readonly all: string;
  readonly one: string;
}

const CROSS_MEMBERS: KindName = { id: "cross-member", all: "cross-members", one: "a cross-member" };
const STUDS: KindName = { id: "stud", all: "studs", one: "a stud" };
const ON_INNER: KindName = { id: "stud/on-inner-flat", all: "studs on inner flats", one: "a stud on an inner flat" };
const OVER_OUTER: KindName = { id: "stud/over-outer-flat", all: "studs over outer flats", one: "a stud over an outer flat" };

/** The section at the bar that scores highest of those with room on both sides. */
function kindOf(ground: Ground, kind: KindName, bars: readonly Part[], score: (part: Part) => number): readonly BarKind[] {
  const { surface } = ground;
  const tried = bars
    .filter(({ role }) => role === "stud" || role === "cross-member")
    .flatMap((part) => {
      const bay = bayOf(ground, part);
      return bay === undefined ? [] : [{ part, ...bay, score: score(part) }];
    });
  const chosen = best(tried);
  if (chosen === undefined) return [];
  const planned = plan({
    id: `${surface.id}/${kind.id}`,
    name: `${surface.name} at ${kind.one}`,
    about: [surface.id, chosen.part.id],
    cut: planeAcross(surface, "u", chosen.at),
    window: throughFace(surface, chosen.bay.from, chosen.bay.to),
  });
  const length = bars.reduce((sum, { shape }) => sum + (shape.kind === "bar" ? shape.length : 0), 0);
  return [{ id: `${surface.id}/${kind.id}`, name: kind.all, planned, bars, length }];
}

/** A window around a bar and a line that cuts it alone. */
function bayOf(ground: Ground, part: Part): { readonly bay: Span; readonly at: number } | undefined {
  const middle = middleOf(part);
  const rough = { from: middle - HALF_BAY.most, to: middle + HALF_BAY.most };
  const line = quietLine(ground, rough, { from: part.rect.v0, to: part.rect.v1 });
  if (line === undefined) return undefined;
  const to = endBeyond(ground, "u", line.at, { from: middle, way: 1, ...HALF_BAY });
  const from = endBeyond(ground, "u", line.at, { from: middle, way: -1, ...HALF_BAY });
  if (from === undefined || to === undefined) return undefined;
  const alone = barsAcross(ground, "u", line.at).filter(({ t }) => t.from < to && t.to > from).length === 1;
  return alone ? { bay: { from, to }, at: line.at } : undefined;
}

/** The line along u with the most room, near the middle of the face; undefined where every line meets something. */
function quietLine(ground: Ground, stretch: Span, within?: Span): { readonly at: number; readonly room: number } | undefined {
  const { inside } = ground.surface;
  const { from, to } = within ?? { from: inside.v0, to: inside.v1 };
  const middle = (from + to) / 2;
  const scored = Array.from({ length: 31 }, (_, k) => from + ((k + 0.5) / 31) * (to - from)).flatMap((at) => {
    const room = Math.min(ROOM_ENOUGH, roomBeside(ground, "u", at, stretch));
    return room < LEAST_ROOM ? [] : [{ at, room, score: room - 0.02 * Math.abs(at - middle) }];
  });
  return best(scored);
}

function middleOf({ rect }: Part): number {
  return (rect.u0 + rect.u1) / 2;
}

function leastDepth({ profile, panel }: Surface, { rect }: Part): number {
  return profile === undefined ? 0 : Math.min(...wavePoints(profile, rect.u0 - panel.u0, rect.u1 - panel.u0).map(({ y }) => y));
}

function meanDepth({ profile, panel }: Surface, { rect }: Part): number {
  if (profile === undefined) return 0;
  const points = wavePoints(profile, rect.u0 - panel.u0, rect.u1 - panel.u0);
  const area = points.slice(1).reduce((sum, b, k) => {
    const a = points[k] as typeof b;
    return sum + ((a.y + b.y) / 2) * (b.x - a.x);
  }, 0);
  return area / (rect.u1 - rect.u0);
}
