import { parseQuantity } from "../../units/parse.ts";
import type { Build, PlacedOpening, Rect, Screen, Surface, SurfaceId } from "../../river/screen.ts";
import { typedFile, type TypedFile } from "../state/typedFile.ts";
import type { JobFile } from "../../job/file.ts";

export type ThingKind = "opening" | "item" | "partition";

/** Something that can be moved on a face: where the file has it now, which may be ahead of the last answer. */
export interface Thing {
  readonly kind: ThingKind;
  readonly id: string;
  /** In words: "personnel door", "shelving". */
  readonly what: string;
  readonly surface: SurfaceId;
  /** What the file's place and size describe: the clear opening, the item's outline, the partition's middle line and its faces. */
  readonly rect: Rect;
  /** The hole in the skin around an opening's clear size; the same as rect for the rest. */
  readonly around: Rect;
  /** What `at` of a partition means: the middle of its studs along u. The middle of the outline for the rest. */
  readonly middle: number;
  /** An item's own place and size, which the face shows two axes of. */
  readonly block?: Block;
  /** Edges that may be pulled. */
  readonly pulls: { readonly u: boolean; readonly v: boolean };
  /** Directions in which it may move. */
  readonly moves: { readonly u: boolean; readonly v: boolean };
}

/** Place and size of an item as the file has them, metres. */
export interface Block {
  readonly along: number;
  readonly across: number;
  readonly up: number;
  readonly length: number;
  readonly width: number;
  readonly height: number;
}

/** Everything that can be moved, in the order of the file. An item on a wall is there twice: on the floor and on its wall. */
export function thingsOf(file: JobFile, screen: Screen): readonly Thing[] {
  const typed = typedFile(file);
  return [...openingThings(typed, screen.build), ...itemThings(typed, screen.build), ...partitionThings(typed, screen.build)];
}

/** A length as typed in the file; undefined where it cannot be read. */
export function lengthAt(text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  const read = parseQuantity("length", text);
  return read.ok ? read.value : undefined;
}

function openingThings(file: TypedFile, build: Build): readonly Thing[] {
  return (file.openings ?? []).flatMap((opening): readonly Thing[] => {
    const placed = build.openings.find((one) => one.opening.id === opening.id);
    const surface = build.surfaces.find(({ id }) => id === opening.face);
    const along = lengthAt(opening.at.along) ?? placed?.clear.u0;
    const up = lengthAt(opening.at.up) ?? placed?.clear.v0;
    const width = lengthAt(opening.size?.width) ?? widthOf(placed?.clear);
    const height = lengthAt(opening.size?.height) ?? heightOf(placed?.clear);
    if (surface === undefined || along === undefined || up === undefined || width === undefined || height === undefined) return [];
    const rect = { u0: along, u1: along + width, v0: up, v1: up + height };
    const free = opening.article === undefined || opening.size !== undefined;
    return [
      {
        kind: "opening",
        id: opening.id,
        what: opening.what ?? opening.kind,
        surface: surface.id,
        rect,
        around: aroundOpening(rect, placed),
        middle: along + width / 2,
        pulls: { u: free, v: free },
        moves: { u: true, v: true },
      },
    ];
  });
}

/** The hole keeps its distance from the clear opening as the last answer had it. */
function aroundOpening(rect: Rect, placed: PlacedOpening | undefined): Rect {
  if (placed === undefined) return rect;
  const { hole, clear } = placed;
  return {
    u0: rect.u0 + hole.u0 - clear.u0,
    u1: rect.u1 + hole.u1 - clear.u1,
    v0: rect.v0 + hole.v0 - clear.v0,
    v1: rect.v1 + hole.v1 - clear.v1,
  };
}

function itemThings(file: TypedFile, build: Build): readonly Thing[] {
  const floor = build.surfaces.find(({ id }) => id === "floor");
  if (floor === undefined) return [];
  return (file.items ?? []).flatMap((item): readonly Thing[] => {
    const along = lengthAt(item.at.along);
    const across = lengthAt(item.at.across);
    const up = lengthAt(item.at.up ?? "0 mm");
    const length = lengthAt(item.size.length);
    const width = lengthAt(item.size.width);
    const height = lengthAt(item.size.height);
    if (along === undefined || across === undefined || up === undefined) return [];
    if (length === undefined || width === undefined || height === undefined) return [];
    const rect = { u0: along, u1: along + length, v0: across, v1: across + width };
    const both = { u: true, v: true };
    const block: Block = { along, across, up, length, width, height };
    const middle = along + length / 2;
    const seen: Thing = { kind: "item", id: item.id, what: item.what, surface: "floor", rect, around: rect, middle, block, pulls: both, moves: both };
    const wall = item.fixedTo === "wall" ? wallBehind(build, rect) : undefined;
    if (wall === undefined) return [seen];
    const lift = floor.stack.finished + up;
    const onWall = seenOnWall(wall, floor, rect, { from: lift, to: lift + height });
    return [seen, { ...seen, surface: wall.id, rect: onWall, around: onWall, middle: (onWall.u0 + onWall.u1) / 2 }];
  });
}

/** How far a thing on a wall may stand off the finished wall to be drawn on it. */
const NEAR_WALL = 0.15;

/** The wall whose finished face an outline on the floor stands nearest to; undefined where none is near. */
function wallBehind(build: Build, rect: Rect): Surface | undefined {
  const floor = build.surfaces.find(({ id }) => id === "floor");
  if (floor === undefined) return undefined;
  const { lined } = floor;
  const off: readonly (readonly [SurfaceId, number])[] = [
    ["left", rect.v0 - lined.v0],
    ["right", lined.v1 - rect.v1],
    ["blindEnd", rect.u0 - lined.u0],
    ["doorEnd", lined.u1 - rect.u1],
  ];
  const [nearest] = off.filter(([, gap]) => gap < NEAR_WALL).sort((a, b) => a[1] - b[1]);
  return nearest === undefined ? undefined : build.surfaces.find(({ id }) => id === nearest[0]);
}

/** An outline on the floor, from one height to another, as it is seen on a wall. */
function seenOnWall(wall: Surface, floor: Surface, rect: Rect, height: { readonly from: number; readonly to: number }): Rect {
  const { along, origin } = wall;
  const at = (u: number, v: number): number =>
    (floor.origin.x + u - origin.x) * along.x + (floor.origin.y + v - origin.y) * along.y;
  const a = at(rect.u0, rect.v0);
  const b = at(rect.u1, rect.v1);
  return { u0: Math.min(a, b), u1: Math.max(a, b), v0: height.from - origin.z, v1: height.to - origin.z };
}

function partitionThings(file: TypedFile, build: Build): readonly Thing[] {
  const floor = build.surfaces.find(({ id }) => id === "floor");
  if (floor === undefined) return [];
  return (file.partitions ?? []).flatMap((partition): readonly Thing[] => {
    const at = lengthAt(partition.at);
    const surface = build.surfaces.find(({ id }) => id === partition.id);
    if (at === undefined) return [];
    const toDoor = surface === undefined ? HALF_UNKNOWN : -surface.stack.finished;
    const toBlind = surface?.farStack?.finished ?? HALF_UNKNOWN;
    const rect = { u0: at - toBlind, u1: at + toDoor, v0: floor.lined.v0, v1: floor.lined.v1 };
    return [
      {
        kind: "partition",
        id: partition.id,
        what: partition.what ?? "partition",
        surface: "floor",
        rect,
        around: rect,
        middle: at,
        pulls: { u: false, v: false },
        moves: { u: true, v: false },
      },
    ];
  });
}

/** Half of what a partition is drawn with until the build knows it. */
const HALF_UNKNOWN = 0.05;

function widthOf(rect: Rect | undefined): number | undefined {
  return rect === undefined ? undefined : rect.u1 - rect.u0;
}

function heightOf(rect: Rect | undefined): number | undefined {
  return rect === undefined ? undefined : rect.v1 - rect.v0;
}
