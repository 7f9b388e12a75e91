import type { Part, Role } from "../../build/part.ts";
import type { Surface } from "../../build/surface.ts";
import { toWorld } from "../../build/surface.ts";
import { SAME_LENGTH } from "../../geometry/tolerance.ts";
import { wavePoints, depthAt } from "../../geometry/trapezoid.ts";
import { edgesOf } from "../../geometry/polygon.ts";
import type { Polygon } from "../../geometry/polygon.ts";
import type { Vec2, Vec3 } from "../../geometry/vector.ts";
import type { DrawnShape, Layer } from "../drawing.ts";
import { path, ring } from "./shapes.ts";

export type Axis = "x" | "y" | "z";

/** How the world is laid in a view. */
export type Project = (p: Vec3) => Vec2;

type Local = "u" | "v" | "w";
type Corner = readonly [number, number, number];

/** The layer that a part is drawn on. */
export function layerOf(role: Role): Layer {
  switch (role) {
    case "corner fitting":
    case "post":
    case "rail":
    case "cross-member":
      return "frame";
    case "skin":
    case "cargo door":
    case "coating":
    case "rest of the box":
      return "skin";
    case "foam":
      return "foam";
    case "batt":
      return "batts";
    case "stud":
    case "jamb stud":
    case "cripple stud":
    case "track":
    case "header":
    case "sill":
    case "blocking":
    case "corner angle":
      return "studs";
    case "furring":
      return "furring";
    case "bare floor":
    case "board":
    case "floor board":
      return "boards";
    case "opening frame":
      return "openings";
    case "trim":
      return "trim";
    case "article":
      return "articles";
    case "item":
      return "items";
  }
}

const NOT_CUT: ReadonlySet<Role> = new Set<Role>(["coating", "rest of the box"]);

/** The parts that the plane `axis` = `at` cuts, in their true shape; parts that come off again are left out. */
export function cutParts(
  parts: readonly Part[],
  surfaces: ReadonlyMap<string, Surface>,
  axis: Axis,
  at: number,
  project: Project,
): readonly DrawnShape[] {
  return parts.flatMap((part) => {
    const surface = surfaces.get(part.surface);
    if (surface === undefined) throw new RangeError(`part ${part.id} lies on no surface`);
    if (NOT_CUT.has(part.role) || part.temporary) return [];
    return cutPart(part, surface, axis, at, project);
  });
}

function cutPart(part: Part, surface: Surface, axis: Axis, at: number, project: Project): readonly DrawnShape[] {
  const local = localAxis(surface, axis);
  const direction = { u: surface.along, v: surface.up, w: surface.inward }[local][axis];
  const place = (at - surface.origin[axis]) * direction;
  const { rect, depth, shape } = part;
  const reach = { u: [rect.u0, rect.u1], v: [rect.v0, rect.v1], w: [depth.from, depth.to] }[local] as [number, number];
  if (place <= reach[0] + SAME_LENGTH || place >= reach[1] - SAME_LENGTH) return [];
  const layer = layerOf(part.role);
  const outlines = "outline" in shape ? shape.outline : undefined;
  const closed = (corners: readonly Corner[]): DrawnShape =>
    ring(layer, corners.map(([u, v, w]) => project(toWorld(surface, u, v, w))), { filled: true });
  const open = (corners: readonly Corner[]): DrawnShape =>
    path(layer, corners.map(([u, v, w]) => project(toWorld(surface, u, v, w))));

  if (local === "w") {
    if (outlines === undefined) return [closed(corners(rect.u0, rect.u1, rect.v0, rect.v1, place))];
    return outlines.flatMap(({ outer, holes }) =>
      [outer, ...holes].map((points) => closed(points.map(({ x, y }) => [x, y, place] as const))),
    );
  }
  const spans = outlines === undefined ? [local === "u" ? [rect.v0, rect.v1] : [rect.u0, rect.u1]] : crossings(outlines, local, place);
  return spans.map((span) => {
    const [from, to] = span as [number, number];
    if (shape.kind === "sheet" || shape.kind === "fill") {
      const back = backLine(surface, local, place, from, to, shape.kind === "fill" ? depth.from : undefined);
      if (shape.kind === "sheet") return open(back);
      const face = local === "u" ? [[place, to, depth.to], [place, from, depth.to]] : [[to, place, depth.to], [from, place, depth.to]];
      return closed([...back, ...(face as unknown as readonly Corner[])]);
    }
    const [a, b] = [depth.from, depth.to];
    return local === "u"
      ? closed([[place, from, a], [place, to, a], [place, to, b], [place, from, b]])
      : closed([[from, place, a], [to, place, a], [to, place, b], [from, place, b]]);
  });
}

/** Where the sheet lies behind the inside plane along a cut; a flat plane at `flat` where there is no profile. */
function backLine(surface: Surface, local: "u" | "v", place: number, from: number, to: number, flat: number | undefined): readonly Corner[] {
  const { profile, panel } = surface;
  if (profile === undefined || (flat !== undefined && flat >= 0)) {
    const w = flat ?? -surface.skinDepth;
    return local === "u" ? [[place, from, w], [place, to, w]] : [[from, place, w], [to, place, w]];
  }
  if (local === "u") {
    const w = place < panel.u0 || place > panel.u1 ? 0 : -depthAt(profile, place - panel.u0);
    return [[place, from, w], [place, to, w]];
  }
  const [a, b] = [Math.max(from, panel.u0), Math.min(to, panel.u1)];
  if (b <= a) return [[from, place, 0], [to, place, 0]];
  const wave = wavePoints(profile, a - panel.u0, b - panel.u0).map(({ x, y }): Corner => [x + panel.u0, place, -y]);
  return [...(from < a ? [[from, place, 0], [a, place, 0]] as const : []), ...wave, ...(to > b ? [[b, place, 0], [to, place, 0]] as const : [])];
}

function localAxis(surface: Surface, axis: Axis): Local {
  if (Math.abs(surface.along[axis]) > 0.5) return "u";
  return Math.abs(surface.up[axis]) > 0.5 ? "v" : "w";
}

function corners(u0: number, u1: number, v0: number, v1: number, w: number): readonly Corner[] {
  return [[u0, v0, w], [u1, v0, w], [u1, v1, w], [u0, v1, w]];
}

/** The stretches inside polygons along the line on which the given coordinate is `place`. */
function crossings(polygons: readonly Polygon[], local: "u" | "v", place: number): readonly (readonly [number, number])[] {
  const across = local === "u" ? "x" : "y";
  const along = local === "u" ? "y" : "x";
  return polygons.flatMap(({ outer, holes }) => {
    const at = [outer, ...holes]
      .flatMap((points) => edgesOf(points))
      .filter(([a, b]) => (a[across] <= place) !== (b[across] <= place))
      .map(([a, b]) => a[along] + ((place - a[across]) / (b[across] - a[across])) * (b[along] - a[along]))
      .sort((a, b) => a - b);
    return at.filter((_, index) => index % 2 === 0).map((from, index) => [from, at[2 * index + 1] as number] as const);
  });
}
