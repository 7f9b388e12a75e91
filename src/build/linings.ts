import type { BoxRow } from "../catalogue/rows.ts";
import { cutRects, polygonArea } from "../geometry/polygon.ts";
import { grow, type Rect } from "../geometry/rect.ts";
import type { Job } from "../job/job.ts";
import { boardSurface } from "./boards/boardSurface.ts";
import type { PlacedOpening } from "./build.ts";
import type { FramePlan } from "./framing/frameSurface.ts";
import { type LinedSurface, lineSurface } from "./lineSurface.ts";
import { partMaker } from "./makePart.ts";
import type { Part } from "./part.ts";
import { paintParts } from "./shell/coatings.ts";
import { leafRects } from "./shell/shell.ts";
import { clearOfSteel, steelAt, steelOn } from "./steel.ts";
import { findSurface, type Stack, type Surface, type SurfaceId } from "./surface.ts";
import { buildUpOf, wallFoot } from "./surfaces.ts";

/** The faces that a wall or roof meets at the start and the end of u. */
const NEIGHBOURS = {
  left: { start: "blindEnd", end: "doorEnd" },
  right: { start: "doorEnd", end: "blindEnd" },
  blindEnd: { start: "right", end: "left" },
  doorEnd: { start: "left", end: "right" },
  roof: { start: "blindEnd", end: "doorEnd" },
} as const satisfies Partial<Record<SurfaceId, { start: SurfaceId; end: SurfaceId }>>;

type LinedFace = keyof typeof NEIGHBOURS;

/**
 * Frames and boards the roof, the four walls and the partitions. End walls run to the side walls' stud planes and side
 * walls butt against the finished end walls, so that no corner is lined twice. Wall studs stop under the ceiling's
 * framing, which rests on them.
 */
export function linings(
  job: Job,
  surfaces: readonly Surface[],
  openings: readonly PlacedOpening[],
  boxFrame: readonly Part[],
): readonly LinedSurface[] {
  const surface = (id: SurfaceId): Surface => findSurface(surfaces, id);
  const stack = (id: SurfaceId): Stack => surface(id).stack;
  const bottom = wallFoot(job, surfaces);
  const openingsIn = (id: SurfaceId): readonly PlacedOpening[] => openings.filter((one) => one.surface.id === id);

  const faces = (Object.keys(NEIGHBOURS) as readonly LinedFace[]).flatMap((id): readonly LinedSurface[] => {
    const buildUp = buildUpOf(job, job.faces[id].buildUp);
    if (buildUp === undefined) return [];
    const { inside } = surface(id);
    const start = stack(NEIGHBOURS[id].start);
    const end = stack(NEIGHBOURS[id].end);
    const pull = buildUp.studs?.cornerPull;
    const from = startsAtStart(job, id) ? "start" : "end";
    const framed = { u0: inside.u0 + start.boardPlane, u1: inside.u1 - end.boardPlane };
    const finished = { u0: inside.u0 + start.finished, u1: inside.u1 - end.finished };
    const roof = stack("roof");
    const extents =
      id === "roof"
        ? roofExtents(job, inside, framed, finished, { left: stack("left"), right: stack("right") })
        : {
            frame: { ...framed, v0: bottom, v1: inside.v1 - roof.boardPlane },
            boards: {
              ...(id === "left" || id === "right" ? finished : framed),
              v0: bottom,
              v1: inside.v1 - (job.ceilingFirst ? roof.finished : roof.boardPlane),
            },
          };
    const steel = steelOn(surface(id), boxFrame, surfaces);
    const { studs } = stack(id);
    const rect = studs === undefined ? extents.frame : clearOfSteel(extents.frame, steelAt(steel, studs));
    const boards = withinFrame(extents.boards, rect, {
      start: start.boards.length === 0,
      end: end.boards.length === 0,
      bottom: id === "roof" && stack("left").boards.length === 0,
      top: stack(id === "roof" ? "right" : "roof").boards.length === 0,
    });
    const plan: FramePlan = {
      rect,
      pull: {
        start: Math.max(0, framed.u0 + cornerPull(pull, start) - rect.u0),
        end: Math.max(0, rect.u1 - framed.u1 + cornerPull(pull, end)),
      },
      boards: { from: boards.u0, to: boards.u1 },
      from,
    };
    const side = { buildUp, stack: stack(id), rect: boards };
    return [lineSurface(surface(id), [side], plan, openingsIn(id), steel)];
  });

  const partitions = job.partitions.map((partition): LinedSurface => {
    const one = surface(partition.id);
    const near = buildUpOf(job, partition.buildUp);
    if (near === undefined || one.farStack === undefined) throw new RangeError(`partition ${partition.id} has no build-up`);
    const far = buildUpOf(job, partition.blindSide) ?? near;
    const plan: FramePlan = {
      rect: one.inside,
      pull: { start: 0, end: 0 },
      boards: { from: one.inside.u0, to: one.inside.u1 },
      from: partition.studsFrom === "left" ? "start" : "end",
    };
    const sides = [
      { buildUp: near, stack: one.stack, rect: one.inside },
      { buildUp: far, stack: one.farStack, rect: one.inside },
    ];
    return lineSurface(one, sides, plan, openingsIn(partition.id), []);
  });
  return [...faces, ...partitions];
}

/** Layers on the inside of each cargo door leaf, clear of its edges by the margin for gasket and locking gear. */
export function leafLinings(job: Job, box: BoxRow, doorEnd: Surface, openings: readonly PlacedOpening[]): readonly LinedSurface[] {
  const buildUp = buildUpOf(job, job.faces.doorEnd.leafLining);
  const { leafStack } = doorEnd;
  if (buildUp === undefined || leafStack === undefined) return [];
  const holes = openings.filter(({ surface }) => surface.id === "doorEnd").map(({ hole }) => hole);
  return leafRects(doorEnd).map((leaf, index) => {
    const rect = grow(leaf, -box.cargoDoors.liningMargin);
    const maker = partMaker(doorEnd, `leaf-${index + 1}`);
    const boarded = boardSurface(
      doorEnd,
      buildUp.boards,
      leafStack.boards,
      { rect, seamLines: "everywhere", from: "start", holes, steel: [], firstLayer: 1, role: "board" },
      maker,
    );
    const area = cutRects(rect, holes).reduce((sum, one) => sum + polygonArea(one), 0);
    const paint = paintParts(doorEnd, buildUp.paint, leafStack.finished, area, rect, maker);
    return { framing: undefined, parts: [...boarded.parts, ...paint], snags: boarded.snags };
  });
}

/** Ceiling framing rests on the side walls' studs; ceiling boards reach to their stud planes, or between the walls. */
function roofExtents(
  job: Job,
  inside: Rect,
  framed: { readonly u0: number; readonly u1: number },
  finished: { readonly u0: number; readonly u1: number },
  { left, right }: { readonly left: Stack; readonly right: Stack },
): { readonly frame: Rect; readonly boards: Rect } {
  const seat = (wall: Stack): number => wall.studs?.from ?? wall.boardPlane;
  return {
    frame: { ...framed, v0: inside.v0 + seat(left), v1: inside.v1 - seat(right) },
    boards: job.ceilingFirst
      ? { ...framed, v0: inside.v0 + left.boardPlane, v1: inside.v1 - right.boardPlane }
      : { ...finished, v0: inside.v0 + left.finished, v1: inside.v1 - right.finished },
  };
}

/** Boards end with their frame on the sides where no neighbour's boards close the corner. */
function withinFrame(
  boards: Rect,
  frame: Rect,
  open: { readonly start: boolean; readonly end: boolean; readonly bottom: boolean; readonly top: boolean },
): Rect {
  return {
    u0: open.start ? Math.max(boards.u0, frame.u0) : boards.u0,
    u1: open.end ? Math.min(boards.u1, frame.u1) : boards.u1,
    v0: open.bottom ? Math.max(boards.v0, frame.v0) : boards.v0,
    v1: open.top ? Math.min(boards.v1, frame.v1) : boards.v1,
  };
}

/** Only a corner with foam or studs behind needs room for the nozzle. */
function cornerPull(pull: number | undefined, neighbour: Stack): number {
  return pull === undefined || (neighbour.foam === undefined && neighbour.studs === undefined) ? 0 : pull;
}

/** Whether the stated end of the face is where u starts. */
function startsAtStart(job: Job, id: LinedFace): boolean {
  switch (id) {
    case "left":
    case "roof":
      return job.faces[id].studsFrom === "blind end";
    case "right":
      return job.faces.right.studsFrom === "door end";
    case "blindEnd":
      return job.faces.blindEnd.studsFrom === "right";
    case "doorEnd":
      return job.faces.doorEnd.studsFrom === "left";
  }
}
