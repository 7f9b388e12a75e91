import { type Build, surfaceOf } from "../../../build/build.ts";
import type { Surface, SurfaceId } from "../../../build/surface.ts";
import { blockOf, rectOnSurface, toWorld } from "../../../build/surface.ts";
import type { FacePlan } from "./fields.ts";
import { flankOf, REACH, spanOf, STRIP, stretchAlong } from "./junctions.ts";
import { best, depthOf, endBeyond, type Ground, groundOf, LEAST_ROOM, ROOM_ENOUGH, roomBeside } from "./places.ts";
import { type Junction, OUTSIDE_SHOWN, plan, throughFace } from "./planned.ts";

const MEETS: readonly SurfaceId[] = ["left", "right", "roof", "floor"];

/** Where partitions meet the side walls, the roof and the floor. */
export function partitionJunctions(build: Build, faces: readonly FacePlan[]): readonly Junction[] {
  const partitions = build.surfaces.filter(({ kind }) => kind === "partition");
  return partitions.flatMap((partition) => MEETS.flatMap((id) => junctionOf(build, partition, surfaceOf(build, id), faces)));
}

/** The face is cut across its ribs, with the partition in the middle of the window; none where there is no room for it. */
function junctionOf(build: Build, partition: Surface, surface: Surface, faces: readonly FacePlan[]): readonly Junction[] {
  const ground = groundOf(build, surface, partition.id);
  const own = groundOf(build, partition);
  const stands = rectOnSurface(surface, blockOf(partition, partition.inside, depthOf(partition))).rect;
  const centre = (stands.u0 + stands.u1) / 2;
  const lines = Array.from({ length: 41 }, (_, k) => surface.inside.v0 + ((k + 0.5) / 41) * (surface.inside.v1 - surface.inside.v0));
  const middle = (surface.inside.v0 + surface.inside.v1) / 2;
  const place = best(
    lines.flatMap((at) => {
      const to = endBeyond(ground, "u", at, { from: stands.u1, way: 1, least: REACH.least, most: REACH.least + REACH.more });
      const from = endBeyond(ground, "u", at, { from: stands.u0, way: -1, least: REACH.least, most: REACH.least + REACH.more });
      if (from === undefined || to === undefined) return [];
      const { line, runs } = onPartition(surface, partition, at);
      const inner = partitionEnd(own, surface, runs, line);
      if (inner === undefined) return [];
      const room = Math.min(ROOM_ENOUGH, roomBeside(ground, "u", at, { from, to }), roomBeside(own, runs, line, inner.shown));
      return room < LEAST_ROOM ? [] : [{ at, from, to, reach: inner.reach, score: room - 0.02 * Math.abs(at - middle) }];
    }),
  );
  if (place === undefined) return [];
  const { at, from, to, reach } = place;
  const id = `${partition.id}-${surface.id}`;
  const name = `junction of ${partition.name} and ${surface.name}`;
  const about = [partition.id, surface.id];
  const cut = { origin: toWorld(surface, centre, at, 0), x: surface.along, y: surface.inward };
  const side = (end: number) =>
    flankOf({ ground, runs: "u", at, corner: centre, end }, Math.abs(end - centre), faces, () =>
      plan({ id: `${id}/plain/${surface.id}`, name: `plain ${surface.name} beside the ${name}`, about, cut, window: throughFace(surface, end - centre - STRIP, end - centre) }),
    );
  const window = { u0: from - centre, u1: to - centre, v0: -surface.skinDepth - OUTSIDE_SHOWN, v1: reach };
  const along = stretchAlong(build, surface.inward.z === 0 ? "z" : "y");
  return [{ id, name, main: plan({ id, name, about, cut, window }), flanks: [side(from), side(to)], length: along.to - along.from }];
}

/** Where the plane cuts the partition: level beside a wall, upright along the box at roof and floor. */
function onPartition(surface: Surface, partition: Surface, at: number): { readonly line: number; readonly runs: "u" | "v" } {
  const { x, y, z } = toWorld(surface, 0, at, 0);
  if (surface.inward.z === 0) return { line: z - partition.origin.z, runs: "u" };
  return { line: (x - partition.origin.x) * partition.along.x + (y - partition.origin.y) * partition.along.y, runs: "v" };
}

/** How far into the room the window reaches along the partition, and what it then shows of it. */
function partitionEnd(own: Ground, surface: Surface, runs: "u" | "v", line: number) {
  const { inside } = own.surface;
  const [low, high] = runs === "u" ? [inside.u0, inside.u1] : [inside.v0, inside.v1];
  const starts = surface.id === "left" || surface.id === "floor";
  const corner = starts ? low : high;
  const end = endBeyond(own, runs, line, { from: corner, way: starts ? 1 : -1, ...{ least: REACH.least, most: REACH.least + REACH.more } });
  if (end === undefined) return undefined;
  const behind = surface.id === "floor" ? low : surface.stack.finished;
  return { reach: behind + Math.abs(end - corner), shown: spanOf(corner, end) };
}
