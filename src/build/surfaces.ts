import { catalogue } from "../catalogue/catalogue.ts";
import type { BoxRow, ProfileRow } from "../catalogue/rows.ts";
import type { Rect } from "../geometry/rect.ts";
import type { BuildUp, FaceId, Job, Partition } from "../job/job.ts";
import { farStack, floorStack, nearStack, stackOf } from "./stack.ts";
import { findSurface, type Stack, type Surface } from "./surface.ts";

/** The planes of a box in the world: outside faces and inside planes. */
interface Planes {
  readonly outside: { readonly length: number; readonly width: number; readonly bottom: number; readonly top: number };
  readonly blind: number;
  readonly door: number;
  readonly left: number;
  readonly right: number;
  readonly roof: number;
}

type FaceStacks = Readonly<Record<FaceId, Stack>>;

/** The six faces, then the partitions from the blind end. */
export function surfacesOf(job: Job, box: BoxRow): readonly Surface[] {
  const planes = planesOf(box);
  const leafStack = job.faces.doorEnd.leafLining === undefined ? undefined : stackOf(buildUpOf(job, job.faces.doorEnd.leafLining));
  const stacks: FaceStacks = {
    left: stackOf(buildUpOf(job, job.faces.left.buildUp)),
    right: stackOf(buildUpOf(job, job.faces.right.buildUp)),
    blindEnd: stackOf(buildUpOf(job, job.faces.blindEnd.buildUp)),
    doorEnd: stackOf(buildUpOf(job, job.faces.doorEnd.buildUp), leafStack?.finished),
    roof: stackOf(buildUpOf(job, job.faces.roof.buildUp)),
    floor: floorStack(job.floor, box.floor.thickness),
  };
  const faces = [
    ...sideFaces(box, planes, stacks),
    ...endFaces(box, planes, stacks, leafStack),
    ...levelFaces(box, planes, stacks),
  ];
  const partitions = [...job.partitions]
    .sort((a, b) => a.at - b.at)
    .map((partition) => partitionSurface(job, partition, planes, stacks));
  return [...faces, ...partitions];
}

/** Where walls stand: on the bare floor, or on floor layers that went in before them. */
export function wallFoot(job: Job, surfaces: readonly Surface[]): number {
  return job.floor.laid === "before walls" ? findSurface(surfaces, "floor").stack.finished : 0;
}

/** The build-up of that name; undefined where the face has none. Throws RangeError for a name that the job lacks. */
export function buildUpOf(job: Job, name: string | undefined): BuildUp | undefined {
  if (name === undefined) return undefined;
  const found = job.buildUps[name];
  if (found === undefined) throw new RangeError(`no build-up named ${name}`);
  return found;
}

function planesOf(box: BoxRow): Planes {
  const { outside, insets } = box;
  const top = outside.height - insets.floor;
  return {
    outside: { length: outside.length, width: outside.width, bottom: -insets.floor, top },
    blind: insets.blindEnd,
    door: outside.length - insets.doorEnd,
    left: insets.left,
    right: outside.width - insets.right,
    roof: top - insets.roof,
  };
}

/** From the inner flats' plane to the outer face of the sheet. */
function sheetDepth(profile: ProfileRow): number {
  return profile.depth + profile.thickness;
}

/** Height of the finished floor and the finished ceiling above the bare floor. */
function levels(planes: Planes, stacks: FaceStacks): { readonly v0: number; readonly v1: number } {
  return { v0: stacks.floor.finished, v1: planes.roof - stacks.roof.finished };
}

function sideFaces(box: BoxRow, planes: Planes, stacks: FaceStacks): readonly Surface[] {
  const { blindEnd, doorEnd } = box.posts;
  const { length, bottom, top } = planes.outside;
  const between = length - blindEnd.face - doorEnd.face;
  const profile = catalogue.profiles.get(box.sheets.side);
  const up = { v0: bottom + box.rails.bottomSide.face, v1: top - box.rails.topSide.face };
  const left = {
    inside: { u0: planes.blind - blindEnd.face, u1: planes.door - blindEnd.face, v0: 0, v1: planes.roof },
    outside: { u0: -blindEnd.face, u1: length - blindEnd.face, v0: bottom, v1: top },
  };
  const right = {
    inside: { u0: length - doorEnd.face - planes.door, u1: length - doorEnd.face - planes.blind, v0: 0, v1: planes.roof },
    outside: { u0: -doorEnd.face, u1: length - doorEnd.face, v0: bottom, v1: top },
  };
  const common = {
    kind: "face" as const,
    up: { x: 0, y: 0, z: 1 },
    panel: { u0: 0, u1: between, ...up },
    profile,
    farStack: undefined,
    leafStack: undefined,
  };
  const ends = { blind: stacks.blindEnd.finished, door: stacks.doorEnd.finished };
  return [
    {
      ...common,
      ...left,
      id: "left",
      name: "left wall",
      origin: { x: blindEnd.face, y: planes.left, z: 0 },
      along: { x: 1, y: 0, z: 0 },
      inward: { x: 0, y: 1, z: 0 },
      skinDepth: sheetDepth(profile),
      stack: stacks.left,
      lined: { u0: left.inside.u0 + ends.blind, u1: left.inside.u1 - ends.door, ...levels(planes, stacks) },
    },
    {
      ...common,
      ...right,
      id: "right",
      name: "right wall",
      origin: { x: length - doorEnd.face, y: planes.right, z: 0 },
      along: { x: -1, y: 0, z: 0 },
      inward: { x: 0, y: -1, z: 0 },
      skinDepth: sheetDepth(profile),
      stack: stacks.right,
      lined: { u0: right.inside.u0 + ends.door, u1: right.inside.u1 - ends.blind, ...levels(planes, stacks) },
    },
  ];
}

function endFaces(box: BoxRow, planes: Planes, stacks: FaceStacks, leafStack: Stack | undefined): readonly Surface[] {
  const { width, bottom, top, length } = planes.outside;
  const blindPost = box.posts.blindEnd.depth;
  const doorPost = box.posts.doorEnd.depth;
  const common = { kind: "face" as const, up: { x: 0, y: 0, z: 1 }, farStack: undefined };
  const blindInside: Rect = { u0: width - blindPost - planes.right, u1: width - blindPost - planes.left, v0: 0, v1: planes.roof };
  const doorInside: Rect = { u0: planes.left - doorPost, u1: planes.right - doorPost, v0: 0, v1: planes.roof };
  const sides = { left: stacks.left.finished, right: stacks.right.finished };
  const doorway = (width - box.doorOpening.width) / 2 - doorPost;
  return [
    {
      ...common,
      id: "blindEnd",
      name: "blind end",
      origin: { x: planes.blind, y: width - blindPost, z: 0 },
      along: { x: 0, y: -1, z: 0 },
      inward: { x: 1, y: 0, z: 0 },
      inside: blindInside,
      outside: { u0: -blindPost, u1: width - blindPost, v0: bottom, v1: top },
      panel: {
        u0: 0,
        u1: width - 2 * blindPost,
        v0: bottom + box.rails.bottomBlind.face,
        v1: top - box.rails.topBlind.face,
      },
      profile: catalogue.profiles.get(box.sheets.end),
      skinDepth: sheetDepth(catalogue.profiles.get(box.sheets.end)),
      stack: stacks.blindEnd,
      leafStack: undefined,
      lined: { u0: blindInside.u0 + sides.right, u1: blindInside.u1 - sides.left, ...levels(planes, stacks) },
    },
    {
      ...common,
      id: "doorEnd",
      name: "door end",
      origin: { x: planes.door, y: doorPost, z: 0 },
      along: { x: 0, y: 1, z: 0 },
      inward: { x: -1, y: 0, z: 0 },
      inside: doorInside,
      outside: { u0: -doorPost, u1: width - doorPost, v0: bottom, v1: top },
      panel: { u0: doorway, u1: doorway + box.doorOpening.width, v0: 0, v1: box.doorOpening.height },
      profile: undefined,
      skinDepth: length - planes.door,
      stack: stacks.doorEnd,
      leafStack,
      lined: { u0: doorInside.u0 + sides.left, u1: doorInside.u1 - sides.right, ...levels(planes, stacks) },
    },
  ];
}

function levelFaces(box: BoxRow, planes: Planes, stacks: FaceStacks): readonly Surface[] {
  const { width, length } = planes.outside;
  const inside: Rect = { u0: 0, u1: planes.door - planes.blind, v0: 0, v1: planes.right - planes.left };
  const outside: Rect = { u0: -planes.blind, u1: length - planes.blind, v0: -planes.left, v1: width - planes.left };
  const lined: Rect = {
    u0: stacks.blindEnd.finished,
    u1: inside.u1 - stacks.doorEnd.finished,
    v0: stacks.left.finished,
    v1: inside.v1 - stacks.right.finished,
  };
  const common = {
    kind: "face" as const,
    along: { x: 1, y: 0, z: 0 },
    up: { x: 0, y: 1, z: 0 },
    inside,
    outside,
    lined,
    farStack: undefined,
    leafStack: undefined,
  };
  return [
    {
      ...common,
      id: "roof",
      name: "roof",
      origin: { x: planes.blind, y: planes.left, z: planes.roof },
      inward: { x: 0, y: 0, z: -1 },
      panel: {
        u0: outside.u0 + box.rails.topBlind.depth,
        u1: outside.u1 - box.rails.doorHeader.depth,
        v0: outside.v0 + box.rails.topSide.depth,
        v1: outside.v1 - box.rails.topSide.depth,
      },
      profile: catalogue.profiles.get(box.sheets.roof),
      skinDepth: sheetDepth(catalogue.profiles.get(box.sheets.roof)),
      stack: stacks.roof,
    },
    {
      ...common,
      id: "floor",
      name: "floor",
      origin: { x: planes.blind, y: planes.left, z: 0 },
      inward: { x: 0, y: 0, z: 1 },
      panel: inside,
      profile: undefined,
      skinDepth: box.insets.floor,
      stack: stacks.floor,
    },
  ];
}

function partitionSurface(job: Job, partition: Partition, planes: Planes, stacks: FaceStacks): Surface {
  const near = buildUpOf(job, partition.buildUp);
  const studs = near?.studs;
  if (near === undefined || studs === undefined) throw new RangeError(`partition ${partition.id} needs a build-up with studs`);
  const far = buildUpOf(job, partition.blindSide) ?? near;
  const depth = catalogue.sections.get(studs.row).depth;
  const stack = nearStack(near, depth);
  const inside: Rect = {
    u0: stacks.left.finished,
    u1: planes.right - planes.left - stacks.right.finished,
    v0: job.floor.laid === "before walls" ? stacks.floor.finished : 0,
    v1: planes.roof - stacks.roof.finished,
  };
  return {
    id: partition.id,
    kind: "partition",
    name: `partition ${partition.id}`,
    origin: { x: planes.blind + partition.at, y: planes.left, z: 0 },
    along: { x: 0, y: 1, z: 0 },
    up: { x: 0, y: 0, z: 1 },
    inward: { x: -1, y: 0, z: 0 },
    inside,
    outside: inside,
    panel: inside,
    profile: undefined,
    skinDepth: 0,
    stack,
    farStack: farStack(far, depth, stack),
    leafStack: undefined,
    lined: { ...inside, v0: stacks.floor.finished },
  };
}
