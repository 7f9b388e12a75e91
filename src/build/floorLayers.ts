import type { Job } from "../job/job.ts";
import { boardSurface } from "./boards/boardSurface.ts";
import type { PlacedOpening, PlacedRoom, Snag } from "./build.ts";
import { partMaker } from "./makePart.ts";
import type { Part } from "./part.ts";
import type { Surface } from "./surface.ts";

/** Floor layers: over the whole bare floor where they go in before the walls, else cut to each finished room. */
export function floorLayerParts(
  job: Job,
  floor: Surface,
  rooms: readonly PlacedRoom[],
  openings: readonly PlacedOpening[],
): { readonly parts: readonly Part[]; readonly snags: readonly Snag[] } {
  const maker = partMaker(floor);
  const regions =
    job.floor.laid === "before walls"
      ? [floor.inside]
      : rooms.map(({ x, y }) => ({
          u0: x.from - floor.origin.x,
          u1: x.to - floor.origin.x,
          v0: y.from - floor.origin.y,
          v1: y.to - floor.origin.y,
        }));
  const laid = regions.map((rect) =>
    boardSurface(
      floor,
      job.floor.layers,
      floor.stack.boards,
      {
        rect,
        seamLines: "everywhere",
        from: "start",
        holes: openings.filter(({ surface }) => surface.id === "floor").map(({ hole }) => hole),
        firstLayer: 1,
        role: "floor board",
      },
      maker,
    ),
  );
  return { parts: laid.flatMap(({ parts }) => parts), snags: laid.flatMap(({ snags }) => snags) };
}
