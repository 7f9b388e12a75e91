import type { Rect } from "../geometry/rect.ts";
import { SAME_LENGTH } from "../geometry/tolerance.ts";
import type { Job } from "../job/job.ts";
import { boardSurface } from "./boards/boardSurface.ts";
import type { PlacedOpening, PlacedRoom, Snag } from "./build.ts";
import { partMaker } from "./makePart.ts";
import type { Part } from "./part.ts";
import { steelOn } from "./steel.ts";
import { blockOf, findSurface, rectOnSurface, type Surface } from "./surface.ts";

/**
 * Floor layers: over the whole bare floor where they go in before the walls, else cut to each finished room and into the
 * doorways.
 */
export function floorLayerParts(
  job: Job,
  surfaces: readonly Surface[],
  rooms: readonly PlacedRoom[],
  openings: readonly PlacedOpening[],
  steelParts: readonly Part[],
): { readonly parts: readonly Part[]; readonly snags: readonly Snag[] } {
  const floor = findSurface(surfaces, "floor");
  const steel = steelOn(floor, steelParts, surfaces);
  const maker = partMaker(floor);
  const holes = openings.filter(({ surface }) => surface.id === "floor").map(({ hole }) => hole);
  const regions = job.floor.laid === "before walls" ? [floor.inside] : [...rooms.map((room) => underRoom(room, floor)), ...doorways(floor, openings)];
  const laid = regions.map((rect) =>
    boardSurface(
      floor,
      job.floor.layers,
      floor.stack.boards,
      {
        rect,
        seamLines: "everywhere",
        from: "start",
        holes,
        steel,
        firstLayer: 1,
        role: "floor board",
      },
      maker,
    ),
  );
  return { parts: laid.flatMap(({ parts }) => parts), snags: laid.flatMap(({ snags }) => snags) };
}

function underRoom({ x, y }: PlacedRoom, floor: Surface): Rect {
  return { u0: x.from - floor.origin.x, u1: x.to - floor.origin.x, v0: y.from - floor.origin.y, v1: y.to - floor.origin.y };
}

/** The floor under personnel doors, between their frames: through a partition from face to face, in a wall from its finished face to the sheet. */
function doorways(floor: Surface, openings: readonly PlacedOpening[]): readonly Rect[] {
  return openings
    .filter(({ opening, clear }) => opening.kind === "personnel door" && clear.v0 <= floor.stack.finished)
    .flatMap(({ surface, clear }) => {
      const depth = { from: surface.farStack === undefined ? 0 : surface.stack.finished, to: surface.farStack?.finished ?? surface.stack.finished };
      return depth.to - depth.from > SAME_LENGTH ? [rectOnSurface(floor, blockOf(surface, clear, depth)).rect] : [];
    });
}
