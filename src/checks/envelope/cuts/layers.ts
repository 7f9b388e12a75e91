import type { Part } from "../../../build/part.ts";
import type { Span } from "../../../build/surface.ts";
import { catalogue } from "../../../catalogue/catalogue.ts";
import { MILL_DENSITY } from "../../../catalogue/steel.ts";
import { depthAt, wavePoints } from "../../../geometry/trapezoid.ts";
import type { Region, Sheet } from "../../../physics/conduction.ts";
import type { Vec2 } from "../../../geometry/vector.ts";
import { overlapOf, ringInCut, type SurfaceInCut } from "./cut.ts";
import { stretchesOf } from "./outlines.ts";

/** What a flat part, a sheet or a fill shows where a plane cuts it. */
export interface Shown {
  readonly regions: readonly Region[];
  readonly sheets: readonly Sheet[];
}

const NOTHING: Shown = { regions: [], sheets: [] };

/**
 * Boards, bare floor, fills, the box's sheets and the leaves of its cargo doors. A leaf is a flat sheet at the inside
 * plane, as thick as its mass makes it over its area.
 */
export function layerInCut(part: Part, inCut: SurfaceInCut): Shown {
  const { shape, material, what } = part;
  if (!("outline" in shape) || material === undefined) return NOTHING;
  const stretches = stretchesOf(shape.outline, inCut.runs, inCut.at).flatMap((one) => overlapOf(one, inCut.t) ?? []);
  const { conductivity } = catalogue.materials.get(material);
  if (shape.kind === "sheet") {
    const { thickness } = catalogue.profiles.get(part.row?.id ?? "");
    const sheets = stretches.map((t) => ({ what, points: skinLine(inCut, t).map((at) => inCut.place(at.x, at.y)), conductivity, thickness }));
    return { regions: [], sheets };
  }
  if (part.role === "cargo door") {
    const thickness = part.mass / shape.area / MILL_DENSITY;
    const sheets = stretches.map(({ from, to }) => ({ what, points: [inCut.place(from, 0), inCut.place(to, 0)], conductivity, thickness }));
    return { regions: [], sheets };
  }
  const onSkin = shape.kind === "fill" && inCut.surface.profile !== undefined && part.depth.from < 0;
  const regions = stretches.flatMap((t) => {
    const outline = onSkin ? behindTo(inCut, t, part.depth.to) : slab(inCut, t, part.depth);
    return outline === undefined ? [] : [{ what, outline, fill: { kind: "solid" as const, conductivity } }];
  });
  return { regions, sheets: [] };
}

/** A rectangle over a stretch and a depth, cut to the window; undefined where the window shows none of it. */
export function slab(inCut: SurfaceInCut, t: Span, depth: Span): Region["outline"] | undefined {
  const w = overlapOf(depth, inCut.w);
  if (w === undefined) return undefined;
  const corners = [[t.from, w.from], [t.to, w.from], [t.to, w.to], [t.from, w.to]] as const;
  return ringInCut(corners.map(([at, up]) => inCut.place(at, up)));
}

/** What lies between the inside of the skin and a plane parallel to the face. */
export function behindTo(inCut: SurfaceInCut, t: Span, plane: number): Region["outline"] | undefined {
  const to = Math.min(plane, inCut.w.to);
  const line = skinLine(inCut, t);
  if (to <= inCut.w.from || line.every(({ y }) => to - y < 1e-5)) return undefined;
  return ringInCut([...line, { x: t.to, y: to }, { x: t.from, y: to }].map(({ x, y }) => inCut.place(x, y)));
}

/**
 * The inside of the skin over a stretch, as points (t, w): the sheet where there is one, the inside plane beyond it and on
 * faces without a profile.
 */
function skinLine({ surface, runs, at }: SurfaceInCut, { from, to }: Span): readonly Vec2[] {
  const { panel, profile } = surface;
  const flat = [{ x: from, y: 0 }, { x: to, y: 0 }];
  if (profile === undefined) return flat;
  const along: Span = runs === "u" ? { from: panel.u0, to: panel.u1 } : { from: panel.v0, to: panel.v1 };
  const across: Span = runs === "u" ? { from: panel.v0, to: panel.v1 } : { from: panel.u0, to: panel.u1 };
  const sheet = overlapOf({ from, to }, along);
  if (sheet === undefined || at < across.from || at > across.to) return flat;
  const onSheet =
    runs === "u"
      ? wavePoints(profile, sheet.from - panel.u0, sheet.to - panel.u0).map(({ x, y }) => ({ x: x + panel.u0, y: -y }))
      : [sheet.from, sheet.to].map((x) => ({ x, y: -depthAt(profile, at - panel.u0) }));
  return withoutRepeats([
    ...(sheet.from > from ? [{ x: from, y: 0 }, { x: sheet.from, y: 0 }] : []),
    ...onSheet,
    ...(sheet.to < to ? [{ x: sheet.to, y: 0 }, { x: to, y: 0 }] : []),
  ]);
}

function withoutRepeats(points: readonly Vec2[]): readonly Vec2[] {
  return points.filter(({ x, y }, index) => {
    const before = points[index - 1];
    return before === undefined || Math.hypot(before.x - x, before.y - y) > 1e-9;
  });
}
