import type { Job } from "../job/job.ts";
import type { PlacedRoom } from "./build.ts";
import { findSurface, type Surface, type SurfaceId, toWorld } from "./surface.ts";

/** Rooms from the blind end, parted by the partitions; extents between finished faces, in the world. */
export function placeRooms(job: Job, surfaces: readonly Surface[]): readonly PlacedRoom[] {
  const face = (id: SurfaceId): Surface => findSurface(surfaces, id);
  const y = { from: finishedAt(face("left"), "y"), to: finishedAt(face("right"), "y") };
  const z = { from: finishedAt(face("floor"), "z"), to: finishedAt(face("roof"), "z") };
  const partitions = surfaces.filter(({ kind }) => kind === "partition");
  const starts = [finishedAt(face("blindEnd"), "x"), ...partitions.map((one) => finishedAt(one, "x"))];
  const ends = [...partitions.map((one) => finishedAt(one, "x", one.farStack?.finished)), finishedAt(face("doorEnd"), "x")];
  return starts.map((from, index) => {
    const room = job.rooms[index];
    return { room, name: room?.what ?? `room ${index + 1}`, x: { from, to: ends[index] as number }, y, z };
  });
}

function finishedAt(surface: Surface, axis: "x" | "y" | "z", w = surface.stack.finished): number {
  return toWorld(surface, 0, 0, w)[axis];
}
