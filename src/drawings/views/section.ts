import type { Build, PlacedOpening } from "../../build/build.ts";
import type { Surface } from "../../build/surface.ts";
import { toWorld } from "../../build/surface.ts";
import type { Vec2, Vec3 } from "../../geometry/vector.ts";
import type { DrawnShape, View } from "../drawing.ts";
import { TEXT } from "../style.ts";
import { chain } from "./chains.ts";
import { cutParts } from "./cut.ts";
import type { Project } from "./cut.ts";
import { openingLabel } from "./elevation.ts";
import { box, ring, stroke, viewOf, words } from "./shapes.ts";

const fromDoors: Project = (p: Vec3): Vec2 => ({ x: p.y, y: p.z });
const fromBlind: Project = (p: Vec3): Vec2 => ({ x: -p.y, y: p.z });
const fromLeft: Project = (p: Vec3): Vec2 => ({ x: p.x, y: p.z });
const fromRight: Project = (p: Vec3): Vec2 => ({ x: -p.x, y: p.z });

/** More than the thickness of an end with its lining, metres. */
const WALL = 0.4;

/** How far beside the middle the cut along lies, so that it meets a leaf of the cargo doors and not the seam between them, metres. */
const BESIDE_SEAM = 0.25;

/** Where the sections are cut: across through an opening of a side wall where there is one, along beside the middle. */
export function sectionPlaces(build: Build): { readonly across: number; readonly along: number } {
  const sides = build.openings.filter(({ surface }) => surface.id === "left" || surface.id === "right");
  const doors = sides.filter(({ opening }) => opening.kind === "personnel door");
  const chosen = doors[0] ?? sides[0];
  const across = chosen === undefined ? build.box.outside.length / 2 : middleOf(chosen);
  return { across, along: build.box.outside.width / 2 + BESIDE_SEAM };
}

/** A cut across the box, looking to the blind end or to the door end, as far as the room's end. */
export function crossSection(build: Build, at: number, name: string, toward: "blind" | "door"): View {
  const { width } = build.box.outside;
  const room = build.rooms.find(({ x }) => at >= x.from && at <= x.to) ?? build.rooms[0];
  if (room === undefined) throw new RangeError("a build has a room");
  const project = toward === "blind" ? fromDoors : fromBlind;
  const y = (across: number): number => project({ x: 0, y: across, z: 0 }).x;
  const [near, far] = toward === "blind" ? [room.x.from, at] : [at, room.x.to];
  const beyond = build.openings.filter(
    ({ surface: { origin, inward } }) => Math.abs(inward.x) > 0.5 && origin.x > near - WALL && origin.x < far + WALL && (toward === "blind" ? origin.x < at : origin.x > at),
  );
  const away = (p: Vec3): number => (p.x <= room.x.from || p.x >= room.x.to ? Number.NEGATIVE_INFINITY : toward === "blind" ? at - p.x : p.x - at);
  const { units } = build.job;
  const [bottom, top] = heights(build);
  const shapes = [
    ...beyond.flatMap((placed) => openingBeyond(placed, project)),
    ...itemsBeyond(build, project, away),
    ...cutParts(build.parts, surfacesOf(build), "x", at, project),
    roomLabel(room.name, y((room.y.from + room.y.to) / 2), bottom),
    groundLine(y(0), y(width), bottom),
  ];
  return viewOf(`section-across-${toward}`, `Section ${name}–${name}, across the box, looking to the ${toward} end`, shapes, [
    chain({ direction: "across", side: "below", row: 1, label: "finished" }, [0, room.y.from, room.y.to, width], units, y),
    chain({ direction: "across", side: "below", row: 2, label: "outside" }, [0, width], units, y),
    chain({ direction: "up", side: "left", row: 1, label: "finished" }, [bottom, 0, room.z.from, room.z.to, top], units),
    chain({ direction: "up", side: "left", row: 2, label: "outside" }, [bottom, top], units),
  ]);
}

/** A cut along the box, looking to the right wall with the blind end to the left, or to the left wall. */
export function longSection(build: Build, at: number, name: string, toward: "left" | "right"): View {
  const { length } = build.box.outside;
  const { units } = build.job;
  const [bottom, top] = heights(build);
  const [first] = build.rooms;
  if (first === undefined) throw new RangeError("a build has a room");
  const project = toward === "right" ? fromLeft : fromRight;
  const x = (along: number): number => project({ x: along, y: 0, z: 0 }).x;
  const beyond = build.openings.filter(({ surface }) => surface.id === toward);
  const near = (p: Vec3): number => (toward === "right" ? p.y - at : at - p.y);
  const shapes = [
    ...beyond.flatMap((placed) => openingBeyond(placed, project)),
    ...itemsBeyond(build, project, near),
    ...cutParts(build.parts, surfacesOf(build), "y", at, project),
    ...build.rooms.map((room) => roomLabel(room.name, x((room.x.from + room.x.to) / 2), bottom)),
    groundLine(x(0), x(length), bottom),
  ];
  const rooms = [0, ...build.rooms.flatMap((room) => [room.x.from, room.x.to]), length];
  return viewOf(`section-along-${toward}`, `Section ${name}–${name}, along the box, looking to the ${toward} wall`, shapes, [
    chain({ direction: "across", side: "below", row: 1, label: "finished" }, rooms, units, x),
    chain({ direction: "across", side: "below", row: 2, label: "outside" }, [0, length], units, x),
    chain({ direction: "up", side: "left", row: 1, label: "finished" }, [bottom, 0, first.z.from, first.z.to, top], units),
    chain({ direction: "up", side: "left", row: 2, label: "outside" }, [bottom, top], units),
  ]);
}

function surfacesOf(build: Build): ReadonlyMap<string, Surface> {
  return new Map(build.surfaces.map((surface) => [surface.id, surface]));
}

function heights(build: Build): readonly [number, number] {
  const bottom = -build.box.insets.floor;
  return [bottom, bottom + build.box.outside.height];
}

function middleOf({ surface, clear }: PlacedOpening): number {
  return toWorld(surface, (clear.u0 + clear.u1) / 2, 0, 0).x;
}

function openingBeyond(placed: PlacedOpening, project: Project): readonly DrawnShape[] {
  const { surface, clear } = placed;
  const at = (u: number, v: number): Vec2 => project(toWorld(surface, u, v, 0));
  const { u0, u1, v0, v1 } = clear;
  return [
    ring("articles", [at(u0, v0), at(u1, v0), at(u1, v1), at(u0, v1)]),
    openingLabel(placed, at),
  ];
}

/** Items beyond the cut or cut by it, the nearest last so that they cover the others; an id only where the middle is seen. */
function itemsBeyond(build: Build, project: Project, distance: (place: Vec3) => number): readonly DrawnShape[] {
  const floor = build.surfaces.find(({ id }) => id === "floor");
  if (floor === undefined) throw new RangeError("a build has a floor");
  const seen = build.parts
    .filter((part) => part.role === "item")
    .map((part) => {
      const low = toWorld(floor, part.rect.u0, part.rect.v0, part.depth.from);
      const high = toWorld(floor, part.rect.u1, part.rect.v1, part.depth.to);
      const [a, b] = [project(low), project(high)];
      const rect = { u0: Math.min(a.x, b.x), u1: Math.max(a.x, b.x), v0: a.y, v1: b.y };
      const away = distance({ x: (low.x + high.x) / 2, y: (low.y + high.y) / 2, z: (low.z + high.z) / 2 });
      return { part, rect, away, farthest: Math.max(distance(low), distance(high)) };
    })
    .filter(({ farthest }) => farthest > 0)
    .sort((a, b) => b.away - a.away);
  return seen.flatMap(({ part, rect }, index) => {
    const middle = { x: (rect.u0 + rect.u1) / 2, y: (rect.v0 + rect.v1) / 2 };
    const hidden = seen.slice(index + 1).some(({ rect: r }) => middle.x > r.u0 && middle.x < r.u1 && middle.y > r.v0 && middle.y < r.v1);
    const label = hidden ? [] : [words("items", middle, part.of ?? part.what)];
    return [box("articles", rect, undefined, { filled: true }), ...label];
  });
}

/** The room's name under the box, where it hides nothing. */
function roomLabel(name: string, x: number, bottom: number): DrawnShape {
  return words("text", { x, y: bottom - 0.2 }, name, TEXT.label);
}

/** The underside of the box's frame, on which it stands. */
function groundLine(from: number, to: number, level: number): DrawnShape {
  const [left, right] = [Math.min(from, to), Math.max(from, to)];
  return stroke("section-cut", { x: left - 0.15, y: level }, { x: right + 0.15, y: level });
}
