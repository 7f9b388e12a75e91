import type { Build, PlacedOpening } from "../../build/build.ts";
import type { Surface } from "../../build/surface.ts";
import { toWorld } from "../../build/surface.ts";
import type { Vec2, Vec3 } from "../../geometry/vector.ts";
import type { DrawnShape, View } from "../drawing.ts";
import { TEXT } from "../style.ts";
import { chain } from "./chains.ts";
import { cutParts } from "./cut.ts";
import type { Project } from "./cut.ts";
import { box, ring, stroke, viewOf, words } from "./shapes.ts";

const fromDoors: Project = (p: Vec3): Vec2 => ({ x: p.y, y: p.z });
const fromLeft: Project = (p: Vec3): Vec2 => ({ x: p.x, y: p.z });

/** Where the sections are cut: across through an opening of a side wall where there is one, along through the middle. */
export function sectionPlaces(build: Build): { readonly across: number; readonly along: number } {
  const sides = build.openings.filter(({ surface }) => surface.id === "left" || surface.id === "right");
  const doors = sides.filter(({ opening }) => opening.kind === "personnel door");
  const chosen = doors[0] ?? sides[0];
  const across = chosen === undefined ? build.box.outside.length / 2 : middleOf(chosen);
  return { across, along: build.box.outside.width / 2 };
}

/** A cut across the box, looking to the blind end. */
export function crossSection(build: Build, at: number, name: string): View {
  const { width } = build.box.outside;
  const room = build.rooms.find(({ x }) => at >= x.from && at <= x.to) ?? build.rooms[0];
  if (room === undefined) throw new RangeError("a build has a room");
  const beyond = build.openings.filter(
    ({ surface }) => surface.origin.x < at && surface.origin.x > room.x.from - 0.4 && Math.abs(surface.inward.x) > 0.5,
  );
  const { units } = build.job;
  const [bottom, top] = heights(build);
  const shapes = [
    ...itemsBeyond(build, fromDoors, (p) => p.x < at && p.x > room.x.from - 0.01),
    ...beyond.flatMap((placed) => openingBeyond(placed, fromDoors)),
    ...cutParts(build.parts, surfacesOf(build), "x", at, fromDoors),
    ...roomLabel(room.name, { x: (room.y.from + room.y.to) / 2, y: (room.z.from + room.z.to) / 2 }),
    ...groundLine(0, width, bottom),
  ];
  return viewOf("section-across", `Section ${name}–${name}, across the box, looking to the blind end`, shapes, [
    chain({ direction: "across", side: "below", row: 1, label: "finished" }, [0, room.y.from, room.y.to, width], units),
    chain({ direction: "across", side: "below", row: 2, label: "outside" }, [0, width], units),
    chain({ direction: "up", side: "left", row: 1, label: "finished" }, [bottom, 0, room.z.from, room.z.to, top], units),
    chain({ direction: "up", side: "left", row: 2, label: "outside" }, [bottom, top], units),
  ]);
}

/** A cut along the box, looking to the right wall, the blind end to the left. */
export function longSection(build: Build, at: number, name: string): View {
  const { length } = build.box.outside;
  const { units } = build.job;
  const [bottom, top] = heights(build);
  const [first] = build.rooms;
  if (first === undefined) throw new RangeError("a build has a room");
  const shapes = [
    ...itemsBeyond(build, fromLeft, (p) => p.y > at),
    ...build.openings.filter(({ surface }) => surface.id === "right").flatMap((placed) => openingBeyond(placed, fromLeft)),
    ...cutParts(build.parts, surfacesOf(build), "y", at, fromLeft),
    ...build.rooms.flatMap(({ name: label, x, z }) =>
      roomLabel(label, { x: (x.from + x.to) / 2, y: z.to - (z.to - z.from) * 0.12 }),
    ),
    ...groundLine(0, length, bottom),
  ];
  return viewOf("section-along", `Section ${name}–${name}, along the box, looking to the right wall`, shapes, [
    chain({ direction: "across", side: "below", row: 1, label: "finished" }, [0, ...build.rooms.flatMap(({ x }) => [x.from, x.to]), length], units),
    chain({ direction: "across", side: "below", row: 2, label: "outside" }, [0, length], units),
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

function openingBeyond({ surface, clear, opening }: PlacedOpening, project: Project): readonly DrawnShape[] {
  const at = (u: number, v: number): Vec2 => project(toWorld(surface, u, v, 0));
  const { u0, u1, v0, v1 } = clear;
  return [
    ring("articles", [at(u0, v0), at(u1, v0), at(u1, v1), at(u0, v1)]),
    words("openings", at((u0 + u1) / 2, (v0 + v1) / 2), opening.id),
  ];
}

function itemsBeyond(build: Build, project: Project, seen: (middle: Vec3) => boolean): readonly DrawnShape[] {
  const floor = build.surfaces.find(({ id }) => id === "floor");
  if (floor === undefined) throw new RangeError("a build has a floor");
  return build.parts
    .filter((part) => part.role === "item")
    .flatMap((part) => {
      const low = toWorld(floor, part.rect.u0, part.rect.v0, part.depth.from);
      const high = toWorld(floor, part.rect.u1, part.rect.v1, part.depth.to);
      if (!seen({ x: (low.x + high.x) / 2, y: (low.y + high.y) / 2, z: (low.z + high.z) / 2 })) return [];
      const [a, b] = [project(low), project(high)];
      const at = { u0: a.x, u1: b.x, v0: a.y, v1: b.y };
      return [box("articles", at), words("items", { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }, part.of ?? part.what)];
    });
}

function roomLabel(name: string, at: Vec2): readonly DrawnShape[] {
  return [words("text", at, name, TEXT.label)];
}

/** The underside of the box's frame, on which it stands. */
function groundLine(from: number, to: number, level: number): readonly DrawnShape[] {
  return [stroke("section-cut", { x: from - 0.15, y: level }, { x: to + 0.15, y: level })];
}
