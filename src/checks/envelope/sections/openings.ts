import type { Build, PlacedOpening } from "../../../build/build.ts";
import { type Surface, toWorld } from "../../../build/surface.ts";
import { rectHeight, rectWidth } from "../../../geometry/rect.ts";
import { scale } from "../../../geometry/vector.ts";
import type { Cut } from "../cuts/cut.ts";
import { closureOf } from "../cuts/openings.ts";
import type { FacePlan } from "./fields.ts";
import { flankOf, STRIP } from "./junctions.ts";
import { axesOf, best, endBeyond, type Ground, groundOf, roomBeside } from "./places.ts";
import { type Flank, type Junction, plan, planeAcross, type Planned, throughFace } from "./planned.ts";

/** Openings narrower than this are left out: heat through them is no plane problem, m. */
const LEAST_OPENING = 0.2;
/** What the window shows of the opening, m: enough to forget its edge. */
const OPENING_SHOWN = 0.15;
const REACH = { least: 0.25, more: 0.35 };
const LEAST_ROOM = 0.002;

interface Edge {
  readonly id: "jamb" | "head" | "sill";
  readonly runs: "u" | "v";
  readonly way: 1 | -1;
  readonly count: 1 | 2;
}

/** A jamb stands for both. */
const EDGES: readonly Edge[] = [
  { id: "jamb", runs: "u", way: -1, count: 2 },
  { id: "head", runs: "v", way: 1, count: 1 },
  { id: "sill", runs: "v", way: -1, count: 1 },
];

/** Openings of walls and roof that are wide enough for sections, and whose articles say what heat they pass. */
export function openingsShown(build: Build): readonly PlacedOpening[] {
  return build.openings.filter(
    (placed) =>
      placed.surface.kind === "face" &&
      placed.surface.id !== "floor" &&
      Math.min(rectWidth(placed.clear), rectHeight(placed.clear)) >= LEAST_OPENING &&
      closureOf(build, placed).transmittance !== undefined,
  );
}

/** The middle of an opening, for its transmittance as it stands in the section. */
function openingField(build: Build, placed: PlacedOpening): Planned {
  const { opening, surface, clear } = placed;
  const [u, v] = [(clear.u0 + clear.u1) / 2, (clear.v0 + clear.v1) / 2];
  return plan({
    id: `${opening.id}/field`,
    name: `middle of the opening ${opening.id}`,
    about: [opening.id],
    cut: planeAcross(surface, "u", v),
    window: throughFace(surface, u - STRIP / 2, u + STRIP / 2, closureOf(build, placed).depth.to),
  });
}

/** Jamb, head and sill of every opening; the sill of a door that stands on the floor is left out. */
export function openingJunctions(build: Build, faces: readonly FacePlan[]): readonly Junction[] {
  return openingsShown(build).flatMap((placed) => EDGES.flatMap((edge) => edgeOf(build, placed, edge, faces)));
}

function edgeOf(build: Build, placed: PlacedOpening, edge: Edge, faces: readonly FacePlan[]): readonly Junction[] {
  const { opening, surface, clear, hole } = placed;
  const ground = groundOf(build, surface, opening.id);
  const [own, across] = axesOf(clear, edge.runs);
  const [frame] = axesOf(hole, edge.runs);
  const [border, outer] = edge.way > 0 ? [own.to, frame.to] : [own.from, frame.from];
  const middle = (across.from + across.to) / 2;
  const lines = Array.from({ length: 21 }, (_, k) => across.from + ((k + 0.5) / 21) * (across.to - across.from));
  const place = best(
    lines.flatMap((at) => {
      const end = endOf(ground, edge, at, outer);
      if (end === undefined) return [];
      const room = Math.min(0.05, roomBeside(ground, edge.runs, at, { from: Math.min(end, outer), to: Math.max(end, outer) }));
      return room < LEAST_ROOM ? [] : [{ at, end, score: room - 0.1 * Math.abs(at - middle) }];
    }),
  );
  if (place === undefined) return [];
  const { at, end } = place;
  const shown = Math.min(OPENING_SHOWN, (own.to - own.from) / 2);
  const length = Math.abs(end - border);
  const id = `${opening.id}/${edge.id}`;
  const name = `${edge.id} of the ${opening.kind} ${opening.id} in the ${surface.name}`;
  const about = [opening.id, surface.id];
  const cut = cutFrom(surface, edge, border, at);
  const wall = flankOf({ ground, runs: edge.runs, at, corner: border, end }, length, faces, () =>
    plan({ id: `${id}/plain`, name: `plain ${surface.name} beside the ${name}`, about, cut, window: throughFace(surface, length - STRIP, length) }),
  );
  const leaf: Flank = { surface: opening.id, name: `opening ${opening.id}`, length: shown, field: openingField(build, placed), bars: [] };
  return [{ id, name, main: plan({ id, name, about, cut, window: throughFace(surface, -shown, length, closureOf(build, placed).depth.to) }), flanks: [wall, leaf], length: edge.count * (across.to - across.from) }];
}

/** x runs from the edge of the clear opening into the wall, so that head and sill of the same make are the same section. */
function cutFrom(surface: Surface, { runs, way }: Edge, border: number, at: number): Cut {
  const [axis, u, v] = runs === "u" ? [surface.along, border, at] : [surface.up, at, border];
  return { origin: toWorld(surface, u, v, 0), x: scale(axis, way), y: surface.inward };
}

/** The window's edge: short of the next opening, of a partition and of the face's own edges. */
function endOf(ground: Ground, { runs, way }: Edge, at: number, outer: number): number | undefined {
  const { surface, taken } = ground;
  const [lined] = axesOf(surface.lined, runs);
  const [sheet] = axesOf(surface.panel, runs);
  const limits = [way > 0 ? Math.min(lined.to, sheet.to) : Math.max(lined.from, sheet.from)];
  for (const rect of taken) {
    const [along, across] = axesOf(rect, runs);
    if (at < across.from || at > across.to) continue;
    const near = way > 0 ? along.from : along.to;
    if (way * (near - outer) > 0) limits.push((near + outer) / 2);
  }
  const most = Math.min(REACH.least + REACH.more, ...limits.map((one) => way * (one - outer) - 0.01));
  for (const least of [REACH.least, 0.15, 0.08]) {
    if (most < least) continue;
    const end = endBeyond(ground, runs, at, { from: outer, way, least, most });
    if (end !== undefined) return end;
  }
  return undefined;
}
