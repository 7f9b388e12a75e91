import type { Build, PlacedRoom } from "../../../build/build.ts";
import type { Span, Surface } from "../../../build/surface.ts";
import type { Rect } from "../../../geometry/rect.ts";
import type { Air, Region } from "../../../physics/conduction.ts";
import { resistanceForSurfaceFactor } from "../../../physics/moisture.ts";
import { type HeatFlow, insideSurfaceResistance, outsideSurfaceResistance } from "../../../physics/plainLayers.ts";
import { type Cut, normalOf, ontoCut, overlapOf, ringInCut, type SurfaceInCut, worldOf } from "./cut.ts";
import { gapConductivity } from "./gaps.ts";
import { behindTo, slab } from "./layers.ts";

/** The air that every section has outside. */
export const OUTSIDE = "outside";

/**
 * Which surface resistances hold inside: by the direction of heat flow for what a face loses, or those of ISO 13788 for the
 * risk of mould in corners and behind furniture.
 */
export type Films = "heat flow" | "mould";

/** Height of the air below a ceiling and above a floor that takes their resistance, m. */
const LEVEL_AIR = 0.01;

/** The environment of a room: its id, or its name where the job gives none. */
export function environmentOf({ room, name }: PlacedRoom): string {
  return room?.id ?? name;
}

/** Outside air over the whole window. */
export function outsideAir({ u0, u1, v0, v1 }: Rect): Region {
  const outline = ringInCut([{ x: u0, y: v0 }, { x: u1, y: v0 }, { x: u1, y: v1 }, { x: u0, y: v1 }]);
  return { what: "outside air", outline, fill: { kind: "air", air: OUTSIDE } };
}

/** The air of each room between its finished faces, in three bands of height. */
export function roomAirs({ rooms }: Build, cut: Cut, window: Rect): readonly Region[] {
  const normal = normalOf(cut);
  return rooms.flatMap((room) => {
    const { from, to } = room.z;
    const bands = [
      { z: { from, to: from + LEVEL_AIR }, flow: "down" as const },
      { z: { from: from + LEVEL_AIR, to: to - LEVEL_AIR }, flow: "horizontal" as const },
      { z: { from: to - LEVEL_AIR, to }, flow: "up" as const },
    ];
    return bands.flatMap(({ z, flow }): readonly Region[] => {
      const block = { x: room.x, y: room.y, z };
      const at = cut.origin[normal];
      if (at < block[normal].from || at > block[normal].to) return [];
      const a = ontoCut(cut, { x: block.x.from, y: block.y.from, z: z.from });
      const b = ontoCut(cut, { x: block.x.to, y: block.y.to, z: z.to });
      const across = overlapOf({ from: Math.min(a.x, b.x), to: Math.max(a.x, b.x) }, { from: window.u0, to: window.u1 });
      const up = overlapOf({ from: Math.min(a.y, b.y), to: Math.max(a.y, b.y) }, { from: window.v0, to: window.v1 });
      if (across === undefined || up === undefined) return [];
      const corners = [
        { x: across.from, y: up.from },
        { x: across.to, y: up.from },
        { x: across.to, y: up.to },
        { x: across.from, y: up.to },
      ];
      return [{ what: room.name, outline: ringInCut(corners), fill: { kind: "air", air: roomAir(room, flow) } }];
    });
  });
}

/**
 * What stands between the skin and the lining of a face: an enclosed gap where the face is lined with boards, else the air of
 * the room. Everything else is painted over it.
 */
export function behindLining({ rooms }: Build, inCut: SurfaceInCut, cut: Cut): { readonly open: readonly Region[]; readonly gaps: readonly Region[] } {
  const { surface } = inCut;
  const stretch = faceStretch(inCut);
  if (surface.kind === "partition") return { open: [], gaps: stretch === undefined ? [] : cavityOf(inCut, stretch) };
  const first = surface.stack.boards[0];
  if (surface.id === "floor" || stretch === undefined) return { open: [], gaps: [] };
  if (first !== undefined) {
    const outline = behindTo(inCut, stretch, first.from);
    const conductivity = gapConductivity(gapOf(surface, first.from), flowThrough(surface));
    return { open: [], gaps: outline === undefined ? [] : [{ what: `air behind the boards, ${surface.name}`, outline, fill: { kind: "solid", conductivity } }] };
  }
  const open = rooms.flatMap((room, index) => {
    const bay = overlapOf(stretch, alongRoom(rooms, index, inCut, cut));
    const outline = bay === undefined ? undefined : behindTo(inCut, bay, Math.max(surface.stack.finished, 0));
    return outline === undefined ? [] : [{ what: room.name, outline, fill: { kind: "air" as const, air: roomAir(room, flowThrough(surface)) } }];
  });
  return { open, gaps: [] };
}

/** The air between the two sides of a partition. */
function cavityOf(inCut: SurfaceInCut, stretch: Span): readonly Region[] {
  const { stack, farStack, name } = inCut.surface;
  const depth = { from: stack.boardPlane, to: farStack?.boardPlane ?? stack.boardPlane };
  const outline = slab(inCut, stretch, depth);
  if (outline === undefined) return [];
  return [{ what: `air in the ${name}`, outline, fill: { kind: "solid", conductivity: gapConductivity(depth.to - depth.from, "horizontal") } }];
}

/** The airs that a section's regions name, each once, in order. */
export function airsOf({ rooms }: Build, regions: readonly Region[], films: Films): readonly Air[] {
  const used = new Set(regions.flatMap(({ fill }) => (fill.kind === "air" ? [fill.air] : [])));
  const inside = rooms.flatMap((room): readonly Air[] => {
    const environment = environmentOf(room);
    const flows = (["down", "horizontal", "up"] as const).map((flow) => ({
      id: roomAir(room, flow),
      environment,
      resistance: films === "mould" ? resistanceForSurfaceFactor("opaque").value : insideSurfaceResistance(flow).value,
    }));
    return [...flows, { id: openingAir(room), environment, resistance: resistanceForSurfaceFactor("window or door").value }];
  });
  const outside: Air = { id: OUTSIDE, environment: OUTSIDE, resistance: outsideSurfaceResistance().value };
  return [outside, ...inside].filter(({ id }) => used.has(id));
}

/** The air of a room where heat leaves it in that direction. */
function roomAir(room: PlacedRoom, flow: HeatFlow): string {
  return `${environmentOf(room)} ${flow}`;
}

/** The air of a room that stands in an opening. */
export function openingAir(room: PlacedRoom): string {
  return `${environmentOf(room)}${IN_AN_OPENING}`;
}

/** True for the air of a room that stands in an opening. */
export function isInOpening(air: string): boolean {
  return air.endsWith(IN_AN_OPENING);
}

const IN_AN_OPENING = " in an opening";

/** Winter decides: heat leaves upward through the roof, downward through the floor. */
export function flowThrough({ inward }: Surface): HeatFlow {
  if (inward.z === 0) return "horizontal";
  return inward.z > 0 ? "down" : "up";
}

/** The room that a place along the box lies in or nearest to. */
export function roomAt({ rooms }: Build, x: number): PlacedRoom | undefined {
  return rooms.find((room, index) => index === rooms.length - 1 || x < middleBetween(room, rooms[index + 1] as PlacedRoom));
}

function middleBetween(room: PlacedRoom, next: PlacedRoom): number {
  return (room.x.to + next.x.from) / 2;
}

/** The stretch of t over which a room reaches, past the ends of the box for the first and last. */
function alongRoom(rooms: readonly PlacedRoom[], index: number, inCut: SurfaceInCut, cut: Cut): Span {
  const { surface, runs, t } = inCut;
  const room = rooms[index] as PlacedRoom;
  const [before, after] = [rooms[index - 1], rooms[index + 1]];
  const from = before === undefined ? Number.NEGATIVE_INFINITY : middleBetween(before, room);
  const to = after === undefined ? Number.POSITIVE_INFINITY : middleBetween(room, after);
  const axis = runs === "u" ? surface.along.x : surface.up.x;
  if (axis === 0) {
    const { x, y } = inCut.place(t.from, 0);
    const at = worldOf(cut, x, y).x;
    return at >= from && at < to ? t : { from: 0, to: 0 };
  }
  const ends = [(from - surface.origin.x) * axis, (to - surface.origin.x) * axis];
  return { from: Math.min(...ends), to: Math.max(...ends) };
}

/** What of a face the window shows, between its neighbours' inside planes or the ends of its sheet. */
function faceStretch({ surface, runs, t }: SurfaceInCut): Span | undefined {
  const { inside, panel } = surface;
  const whole =
    runs === "u"
      ? { from: Math.min(inside.u0, panel.u0), to: Math.max(inside.u1, panel.u1) }
      : { from: Math.min(inside.v0, panel.v0), to: Math.max(inside.v1, panel.v1) };
  return overlapOf(whole, t);
}

const INSIDE_PLANE = 0;

/** Thickness of the gap between the layers before the boards, m: inward of foam, outward of batts. */
function gapOf({ stack, leafStack }: Surface, boards: number): number {
  return (stack.batts?.from ?? boards) - (stack.foam?.to ?? leafStack?.finished ?? INSIDE_PLANE);
}
