import { catalogue } from "../../catalogue/catalogue.ts";
import type { SectionRow } from "../../catalogue/rows.ts";
import { subtractIntervals } from "../../geometry/interval.ts";
import { overlaps, type Rect } from "../../geometry/rect.ts";
import type { Job } from "../../job/job.ts";
import { type PartMaker, partMaker } from "../makePart.ts";
import type { Part } from "../part.ts";
import { findSurface, type Span, type Stack, type Surface, type SurfaceId } from "../surface.ts";
import { type Steel, steelAt, steelOn } from "../steel.ts";
import { wallFoot } from "../surfaces.ts";
import { barPart } from "./frameSurface.ts";

/** Bearing that a board edge in a corner needs on the angle behind it. */
const LEAST_BEARING = 0.0095;
/** Angles for corners, narrow first. */
const CORNER_ANGLES = ["angle-1-1-2-18mil", "trim-2x2-18mil", "trim-3x3-18mil"] as const;

/**
 * Angles that carry board edges in the corners, where studs are pulled back for the nozzle: one from floor to ceiling in
 * each corner of two lined walls, and one along each edge of a lined ceiling. They are set when the foam is in. Each is
 * made on the side wall or the roof; its extent is the box around both legs.
 */
export function cornerAngles(job: Job, surfaces: readonly Surface[], boxFrame: readonly Part[]): readonly Part[] {
  const stack = (id: SurfaceId): Stack => findSurface(surfaces, id).stack;
  const bottom = wallFoot(job, surfaces);
  const lined = (id: SurfaceId): boolean => stack(id).studs !== undefined && stack(id).boards.length > 0;
  const walls = [
    { id: "left", start: "blindEnd", end: "doorEnd" },
    { id: "right", start: "doorEnd", end: "blindEnd" },
  ] as const;
  const upright = walls.flatMap(({ id, start, end }) => {
    const surface = findSurface(surfaces, id);
    const maker = partMaker(surface, "corner");
    const steel = steelOn(surface, boxFrame, surfaces);
    const { inside } = surface;
    const height = { from: bottom, to: inside.v1 - stack("roof").finished };
    const angles = [
      ...(lined(id) && lined(start) ? [uprightAngle(surface, stack(start), inside.u0, 1, height)] : []),
      ...(lined(id) && lined(end) ? [uprightAngle(surface, stack(end), inside.u1, -1, height)] : []),
    ];
    return angles.flatMap((angle) => angleParts(angle, steel, maker));
  });
  if (!lined("roof")) return upright;
  const roof = findSurface(surfaces, "roof");
  const steel = steelOn(roof, boxFrame, surfaces);
  const maker = partMaker(roof, "corner");
  return [...upright, ...ceilingAngles(surfaces).flatMap((angle) => angleParts(angle, steel, maker))];
}

interface Angle {
  readonly section: SectionRow;
  readonly rect: Rect;
  readonly depth: Span;
  readonly runs: "u" | "v";
}

/** Cut to what the box's own steel leaves. */
function angleParts({ section, rect, depth, runs }: Angle, steel: readonly Steel[], maker: PartMaker): readonly Part[] {
  const inTheWay = steelAt(steel, depth)
    .map((one) => one.rect)
    .filter((one) => overlaps(one, rect));
  const free =
    runs === "u"
      ? subtractIntervals({ from: rect.u0, to: rect.u1 }, inTheWay.map(({ u0, u1 }) => ({ from: u0, to: u1 })))
      : subtractIntervals({ from: rect.v0, to: rect.v1 }, inTheWay.map(({ v0, v1 }) => ({ from: v0, to: v1 })));
  return free.map(({ from, to }) => {
    const piece = runs === "u" ? { ...rect, u0: from, u1: to } : { ...rect, v0: from, v1: to };
    return barPart(maker, section, "corner angle", piece, depth, runs, undefined);
  });
}

function uprightAngle(
  surface: Surface,
  neighbour: Stack,
  corner: number,
  direction: 1 | -1,
  height: Span,
): Angle {
  const { boardPlane, finished } = surface.stack;
  const section = angleFor(Math.max(finished - boardPlane, neighbour.finished - neighbour.boardPlane));
  const u = legSpan(corner, direction, neighbour.boardPlane, section);
  const depth = { from: boardPlane - section.thickness, to: boardPlane + section.width };
  const rect = { u0: u.from, u1: u.to, v0: height.from, v1: height.to };
  return { section, rect, depth, runs: "v" };
}

function ceilingAngles(surfaces: readonly Surface[]): readonly Angle[] {
  const roof = findSurface(surfaces, "roof");
  const stack = (id: SurfaceId): Stack => findSurface(surfaces, id).stack;
  const { inside } = roof;
  const u = { from: inside.u0 + stack("blindEnd").boardPlane, to: inside.u1 - stack("doorEnd").boardPlane };
  const v = { from: inside.v0 + stack("left").boardPlane, to: inside.v1 - stack("right").boardPlane };
  const thickness = roof.stack.finished - roof.stack.boardPlane;
  const depthOf = (section: SectionRow): Span => ({
    from: roof.stack.boardPlane - section.thickness,
    to: roof.stack.boardPlane + section.width,
  });
  const edge = (neighbour: SurfaceId, corner: number, direction: 1 | -1, runs: "u" | "v"): Angle => {
    const { boardPlane, finished } = stack(neighbour);
    const section = angleFor(Math.max(thickness, finished - boardPlane));
    const leg = legSpan(corner, direction, boardPlane, section);
    const rect =
      runs === "u"
        ? { u0: u.from, u1: u.to, v0: leg.from, v1: leg.to }
        : { u0: leg.from, u1: leg.to, v0: v.from, v1: v.to };
    return { section, rect, depth: depthOf(section), runs };
  };
  return [
    edge("left", inside.v0, 1, "u"),
    edge("right", inside.v1, -1, "u"),
    edge("blindEnd", inside.u0, 1, "v"),
    edge("doorEnd", inside.u1, -1, "v"),
  ];
}

/** From behind the neighbour's boards to the end of the leg that lies behind this surface's boards. */
function legSpan(corner: number, direction: 1 | -1, boardPlane: number, section: SectionRow): Span {
  const back = corner + direction * (boardPlane - section.thickness);
  const tip = corner + direction * (boardPlane + section.width);
  return direction === 1 ? { from: back, to: tip } : { from: tip, to: back };
}

/** The narrowest angle whose leg still bears a board edge beyond the neighbour's boards. */
function angleFor(boards: number): SectionRow {
  const rows = CORNER_ANGLES.map((id) => catalogue.sections.get(id));
  const fitting = rows.find((row) => row.width - boards >= LEAST_BEARING) ?? rows.at(-1);
  if (fitting === undefined) throw new RangeError("no corner angle in the catalogue");
  return fitting;
}
