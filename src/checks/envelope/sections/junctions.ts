import { type Build, surfaceOf } from "../../../build/build.ts";
import type { Part } from "../../../build/part.ts";
import type { Span, Surface, SurfaceId } from "../../../build/surface.ts";
import { depthAt } from "../../../geometry/trapezoid.ts";
import { type Cut, dot, minus, surfaceInCut } from "../cuts/cut.ts";
import type { FacePlan } from "./fields.ts";
import { barsAcross, best, endBeyond, type Ground, groundOf, LEAST_ROOM, ROOM_ENOUGH, roomBeside } from "./places.ts";
import { type Flank, type Junction, OUTSIDE_SHOWN, plan, type Planned, ROOM_SHOWN } from "./planned.ts";

/** Pairs of faces that meet, and the axis of the world along which they do. */
export const PAIRS: readonly (readonly [SurfaceId, SurfaceId, "x" | "y" | "z"])[] = [
  ["left", "blindEnd", "z"],
  ["left", "doorEnd", "z"],
  ["right", "blindEnd", "z"],
  ["right", "doorEnd", "z"],
  ["left", "roof", "x"],
  ["right", "roof", "x"],
  ["blindEnd", "roof", "y"],
  ["doorEnd", "roof", "y"],
  ["left", "floor", "x"],
  ["right", "floor", "x"],
  ["blindEnd", "floor", "y"],
  ["doorEnd", "floor", "y"],
];

/** Least reach of a window beyond the other face's finished plane, and how much further its edge is looked for, m. */
export const REACH = { least: 0.3, more: 0.35 };
/** Where along the line two faces may be cut: this far from its ends, in these steps, m. */
const FROM_ENDS = 0.35;
const STEP = 0.06;
/** Width of the strip that shows the plain face at a window's edge, m. */
export const STRIP = 0.03;

/** The edges of the box: where two faces meet, cut where studs, openings and partitions leave room. */
export function edgeJunctions(build: Build, faces: readonly FacePlan[]): readonly Junction[] {
  const grounds = new Map(build.surfaces.filter(({ kind }) => kind === "face").map((one) => [one.id, groundOf(build, one)]));
  return PAIRS.flatMap(([first, second, normal]) => {
    const a = grounds.get(first) as Ground;
    const b = grounds.get(second) as Ground;
    const place = best(placesAlong(build, normal).flatMap((at) => pairAt(a, b, normal, at)));
    return place === undefined ? [] : [edgeOf(build, a.surface, b.surface, normal, place, faces)];
  });
}

interface PairPlace {
  readonly cut: Cut;
  readonly sides: readonly [PairSide, PairSide];
  readonly score: number;
}

/** One of two faces: where it is cut, and how far from the corner the window shows it. */
interface PairSide {
  readonly ground: Ground;
  readonly runs: "u" | "v";
  readonly at: number;
  readonly corner: number;
  readonly end: number;
}

/** Both faces cut at one place of their common line; none where a window finds no edges or meets something. */
function pairAt(a: Ground, b: Ground, normal: "x" | "y" | "z", at: number): readonly PairPlace[] {
  const cut = cornerCut(a.surface, b.surface, normal, at);
  const one = sideOf(a, b.surface, cut);
  const two = one === undefined ? undefined : sideOf(b, a.surface, cut);
  if (one === undefined || two === undefined) return [];
  const room = Math.min(ROOM_ENOUGH, roomOf(one), roomOf(two));
  if (room < LEAST_ROOM) return [];
  return [{ cut, sides: [one, two], score: room - thinness(one) - thinness(two) - 0.02 * Math.abs(at - middleOf(a.surface, b.surface, normal)) }];
}

/** x runs along the first face from the corner, y along the second; both inward. */
function cornerCut(a: Surface, b: Surface, normal: "x" | "y" | "z", at: number): Cut {
  const of = (axis: "x" | "y" | "z"): number => (axis === normal ? at : Math.abs(a.inward[axis]) > 0.5 ? a.origin[axis] : b.origin[axis]);
  return { origin: { x: of("x"), y: of("y"), z: of("z") }, x: b.inward, y: a.inward };
}

function sideOf(ground: Ground, other: Surface, cut: Cut): PairSide | undefined {
  const { surface } = ground;
  const seen = surfaceInCut(surface, cut, { u0: 0, u1: 1, v0: 0, v1: 1 });
  if (seen === undefined) return undefined;
  const axis = seen.runs === "u" ? surface.along : surface.up;
  const corner = dot(minus(cut.origin, surface.origin), axis);
  const way = dot(axis, other.inward) > 0 ? 1 : -1;
  const least = other.stack.finished + REACH.least;
  if (roomBeside(ground, seen.runs, seen.at, spanOf(corner, corner + way * least)) < LEAST_ROOM) return undefined;
  const end = endBeyond(ground, seen.runs, seen.at, { from: corner, way, least, most: least + REACH.more });
  return end === undefined ? undefined : { ground, runs: seen.runs, at: seen.at, corner, end };
}

function roomOf({ ground, runs, at, corner, end }: PairSide): number {
  return roomBeside(ground, runs, at, spanOf(corner, end));
}

/** A sheet cut along its ribs counts by its depth: an inner flat, with the least foam, is preferred. */
function thinness({ ground, runs, at }: PairSide): number {
  const { profile, panel } = ground.surface;
  return runs === "u" || profile === undefined ? 0 : 2 * depthAt(profile, at - panel.u0);
}

function placesAlong(build: Build, normal: "x" | "y" | "z"): readonly number[] {
  const { from, to } = stretchAlong(build, normal);
  return Array.from({ length: Math.max(0, Math.floor((to - from - 2 * FROM_ENDS) / STEP)) + 1 }, (_, k) => from + FROM_ENDS + k * STEP);
}

/** The box inside, along an axis of the world. */
export function stretchAlong(build: Build, normal: "x" | "y" | "z"): Span {
  const [start, end] = ({ x: ["blindEnd", "doorEnd"], y: ["left", "right"], z: ["floor", "roof"] } as const)[normal];
  return { from: surfaceOf(build, start).origin[normal], to: surfaceOf(build, end).origin[normal] };
}

function middleOf(a: Surface, b: Surface, normal: "x" | "y" | "z"): number {
  const of = (surface: Surface): number => {
    const { inside, origin, along, up } = surface;
    const [u, v] = [(inside.u0 + inside.u1) / 2, (inside.v0 + inside.v1) / 2];
    return origin[normal] + along[normal] * u + up[normal] * v;
  };
  return (of(a) + of(b)) / 2;
}

function edgeOf(build: Build, a: Surface, b: Surface, normal: "x" | "y" | "z", { cut, sides }: PairPlace, faces: readonly FacePlan[]): Junction {
  const id = `${a.id}-${b.id}`;
  const name = `edge of ${a.name} and ${b.name}`;
  const about = [a.id, b.id];
  const [la, lb] = [Math.abs(sides[0].end - sides[0].corner), Math.abs(sides[1].end - sides[1].corner)];
  const outer = { a: -a.skinDepth - OUTSIDE_SHOWN, b: -b.skinDepth - OUTSIDE_SHOWN };
  const strip = (side: "a" | "b"): Planned => {
    const surface = side === "a" ? a : b;
    const window =
      side === "a"
        ? { u0: la - STRIP, u1: la, v0: outer.a, v1: a.stack.finished + ROOM_SHOWN }
        : { u0: outer.b, u1: b.stack.finished + ROOM_SHOWN, v0: lb - STRIP, v1: lb };
    return plan({ id: `${id}/plain/${surface.id}`, name: `plain ${surface.name} beside the ${name}`, about, cut, window, width: STRIP });
  };
  const { from, to } = stretchAlong(build, normal);
  return {
    id,
    name,
    main: plan({ id, name, about, cut, window: { u0: outer.b, u1: la, v0: outer.a, v1: lb } }),
    flanks: [flankOf(sides[0], la, faces, () => strip("a")), flankOf(sides[1], lb, faces, () => strip("b"))],
    length: to - from,
  };
}

/** Cut across its ribs, a face counts by its field and its bars; cut along them, by the plain strip at the window's edge. */
export function flankOf({ ground, runs, at, corner, end }: PairSide, length: number, faces: readonly FacePlan[], strip: () => Planned): Flank {
  const { id, name } = ground.surface;
  const face = faces.find(({ surface }) => surface.id === id);
  if (runs === "v" || face === undefined) return { surface: id, name, length, field: strip(), bars: [] };
  const counted = new Set<Part>(face.kinds.flatMap(({ bars }) => bars));
  const within = spanOf(corner, end);
  const bars = barsAcross(ground, runs, at).flatMap(({ part, t }) => {
    const middle = (t.from + t.to) / 2;
    return counted.has(part) && middle > within.from && middle < within.to ? [part] : [];
  });
  return { surface: id, name, length, field: face.field, bars };
}

export function spanOf(a: number, b: number): Span {
  return a < b ? { from: a, to: b } : { from: b, to: a };
}
