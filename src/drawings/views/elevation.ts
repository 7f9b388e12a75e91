import type { Build, PlacedOpening } from "../../build/build.ts";
import type { Part } from "../../build/part.ts";
import { isBoxPart } from "../../build/part.ts";
import type { Surface } from "../../build/surface.ts";
import { toWorld } from "../../build/surface.ts";
import { edgesOf } from "../../geometry/polygon.ts";
import type { Polygon } from "../../geometry/polygon.ts";
import type { Rect } from "../../geometry/rect.ts";
import { wavePoints } from "../../geometry/trapezoid.ts";
import type { Vec3 } from "../../geometry/vector.ts";
import type { DrawnShape, View } from "../drawing.ts";
import { chain } from "./chains.ts";
import { capital, datumsOf, openingsOn } from "./faceNames.ts";
import { openingChains } from "./openingChains.ts";
import { box, direct, rings, stroke, viewOf, words } from "./shapes.ts";
import type { Map2 } from "./shapes.ts";

/** Frame members this near to the outer plane of a face are seen on it. */
const SEEN = 0.06;
/** Openings smaller than this have their id above them. */
const SMALL = 0.36;

/** A face from outside: frame, sheet with the lines of its profile, openings as the welder cuts them. */
export function elevationView(build: Build, surface: Surface): View {
  const openings = openingsOn(build, surface);
  const { outside } = surface;
  const { units } = build.job;
  const shapes = [
    ...frameSeen(build, surface),
    ...build.parts.filter((part) => part.surface === surface.id && isBoxPart(part)).flatMap((part) => sheetSeen(part, surface)),
    box("outline", outside),
    ...openings.flatMap((placed) => openingSeen(placed, direct, true)),
    ...(surface.inward.z === 0 ? [stroke("hidden", { x: outside.u0, y: 0 }, { x: outside.u1, y: 0 }, true)] : []),
  ];
  const { v: [v0, v1] } = datumsOf(surface);
  const parts =
    surface.inward.z === 0
      ? [
          chain({ direction: "up", side: "left", row: 8, label: "floor, rail" }, [outside.v0, v0.at, v1.at, outside.v1], units),
        ]
      : [];
  const overall = [
    ...parts,
    chain({ direction: "across", side: "below", row: 9, label: "outside" }, [outside.u0, outside.u1], units),
    chain({ direction: "up", side: "left", row: 9, label: "outside" }, [outside.v0, outside.v1], units),
  ];
  const rows = { below: 1, above: 1, left: 1, right: 1 };
  const beyond = surface.inward.z === 0 ? [outside.u0, outside.u1] : [];
  const places =
    openings.length === 0 && surface.inward.z !== 0
      ? []
      : openingChains(surface, openings, units, direct, rows, { rectOf: ({ hole }) => hole, beyond, work: "outside" });
  const seen = surface.id === "roof" ? "seen from above" : "seen from outside";
  return viewOf(`${surface.id}-outside`, `${capital(surface.name)}, ${seen}`, shapes, [...places, ...overall]);
}

/** An opening in its face: the hole, the clear opening, a sign for its leaf, and its id. */
export function openingSeen(placed: PlacedOpening, map: Map2, fromOutside: boolean): readonly DrawnShape[] {
  const { clear, hole } = placed;
  return [
    box("openings", hole, map, { filled: true }),
    ...(hole === clear ? [] : [box("openings", clear, map)]),
    ...swingSeen(placed, map, fromOutside),
    openingLabel(placed, map),
  ];
}

/** The id of an opening: in its middle, or above it where it is too small to be written in. */
export function openingLabel({ clear, hole, opening }: PlacedOpening, map: Map2): DrawnShape {
  const small = Math.min(clear.u1 - clear.u0, clear.v1 - clear.v0) < SMALL;
  return words("openings", map((clear.u0 + clear.u1) / 2, small ? hole.v1 + 0.08 : (clear.v0 + clear.v1) / 2), opening.id);
}

/** For each leaf two lines that meet at its hinge side: full where it opens toward the viewer, dashed where away. */
function swingSeen({ clear, opening, surface, sweeps }: PlacedOpening, map: Map2, fromOutside: boolean): readonly DrawnShape[] {
  const layer = (opening.swing?.opens === "out") === fromOutside ? "articles" : "swing";
  return sweeps.flatMap(({ hinge, radius }) => {
    const { along, origin } = surface;
    const u = (hinge.x - origin.x) * along.x + (hinge.y - origin.y) * along.y;
    const lock = u < (clear.u0 + clear.u1) / 2 ? u + radius : u - radius;
    const at = map(u, (clear.v0 + clear.v1) / 2);
    return [stroke(layer, map(lock, clear.v0), at), stroke(layer, map(lock, clear.v1), at)];
  });
}

/** Posts, rails and corner fittings that reach to the outer plane of the face, wherever they were listed. */
function frameSeen(build: Build, surface: Surface): readonly DrawnShape[] {
  const surfaces = new Map(build.surfaces.map((each) => [each.id, each]));
  const members = build.parts.filter(({ role }) => role === "post" || role === "rail");
  const fittings = build.parts.filter(({ role }) => role === "corner fitting");
  return [...members, ...fittings].flatMap((part) => {
    const home = surfaces.get(part.surface);
    if (home === undefined) throw new RangeError(`part ${part.id} lies on no surface`);
    const { rect, outermost } = seenOn(part, home, surface);
    if (outermost > -surface.skinDepth + SEEN) return [];
    const mark = part.role === "corner fitting" ? [box("frame", holeOf(rect))] : [];
    return [box("frame", rect, direct, { filled: true }), ...mark];
  });
}

/** A part's extent in the u and v of another surface, and its outermost place there. */
function seenOn(part: Part, home: Surface, surface: Surface): { readonly rect: Rect; readonly outermost: number } {
  const ends = [
    toWorld(home, part.rect.u0, part.rect.v0, part.depth.from),
    toWorld(home, part.rect.u1, part.rect.v1, part.depth.to),
  ].map((p) => ({ x: p.x - surface.origin.x, y: p.y - surface.origin.y, z: p.z - surface.origin.z }));
  const along = (direction: Vec3): number[] => ends.map((p) => p.x * direction.x + p.y * direction.y + p.z * direction.z);
  const [u, v, w] = [along(surface.along), along(surface.up), along(surface.inward)];
  return {
    rect: { u0: Math.min(...u), u1: Math.max(...u), v0: Math.min(...v), v1: Math.max(...v) },
    outermost: Math.min(...w),
  };
}

/** The aperture of a corner fitting, as a sign in its middle. */
function holeOf(rect: Rect): Rect {
  const [width, height] = [rect.u1 - rect.u0, rect.v1 - rect.v0];
  return { u0: rect.u0 + width * 0.3, u1: rect.u1 - width * 0.3, v0: rect.v0 + height * 0.25, v1: rect.v1 - height * 0.25 };
}

/** Outline of a sheet or a leaf, and the lines where a sheet bends. */
function sheetSeen(part: Part, surface: Surface): readonly DrawnShape[] {
  const { shape } = part;
  if (part.role === "bare floor" || !("outline" in shape)) return [];
  const outlines = shape.outline.flatMap((polygon) => rings("skin", polygon, direct, {}));
  const { profile, panel } = surface;
  if (shape.kind !== "sheet" || profile === undefined) return outlines;
  const bends = wavePoints(profile, 0, panel.u1 - panel.u0).slice(1, -1).map(({ x }) => x + panel.u0);
  const lines = bends.flatMap((u) =>
    shape.outline.flatMap((polygon) => uprights(polygon, u).map(([a, b]) => stroke("seams", { x: u, y: a }, { x: u, y: b }))),
  );
  return [...outlines, ...lines];
}

/** Stretches in v of the line at u that lie on the sheet. */
function uprights(polygon: Polygon, u: number): readonly (readonly [number, number])[] {
  const at = [polygon.outer, ...polygon.holes]
    .flatMap((points) => edgesOf(points))
    .filter(([a, b]) => (a.x <= u) !== (b.x <= u))
    .map(([a, b]) => a.y + ((u - a.x) / (b.x - a.x)) * (b.y - a.y))
    .sort((a, b) => a - b);
  return at.filter((_, index) => index % 2 === 0).map((from, index) => [from, at[2 * index + 1] as number] as const);
}
