import type { Build } from "../../../build/build.ts";
import type { Part } from "../../../build/part.ts";
import type { Rect } from "../../../geometry/rect.ts";
import type { Region, Section, Sheet } from "../../../physics/conduction.ts";
import { airsOf, behindLining, type Films, outsideAir, roomAirs } from "./airs.ts";
import { type BarWalls, wallsOf } from "./bars.ts";
import { type Cut, overlapOf, rounded, surfaceInCut, type SurfaceInCut } from "./cut.ts";
import { gapConductivity } from "./gaps.ts";
import { layerInCut, type Shown, slab } from "./layers.ts";
import { openingInCut } from "./openings.ts";
import { lineInWindow } from "./outlines.ts";
import { snapped } from "./snap.ts";

/** What of a build goes into a section. */
export interface Included {
  /** Bars left out: for the same bay without its studs. */
  readonly without?: (part: Part) => boolean;
  readonly films?: Films;
}

/**
 * The section of a build in a plane, inside a window of the plane's own axes: outside air, the rooms, what stands behind each
 * lining, then fills, flat parts, openings, and bars as thin walls. Coordinates are rounded to the micrometre.
 *
 * Left out: bars that run in the plane, trim, coats, items, corner fittings, fasteners, temporary parts.
 */
export function cutSection(build: Build, cut: Cut, window: Rect, { without = () => false, films = "heat flow" }: Included = {}): Section {
  const faces = build.surfaces.flatMap((surface) => surfaceInCut(surface, cut, window) ?? []);
  const face = new Map(faces.map((one) => [one.surface.id, one]));
  const parts = build.parts.filter((part) => face.has(part.surface) && !part.temporary && !without(part));
  const shown = (wanted: (part: Part) => boolean, show: (part: Part, inCut: SurfaceInCut) => Shown): readonly Shown[] =>
    parts.filter(wanted).map((part) => show(part, face.get(part.surface) as SurfaceInCut));

  const behind = faces.map((one) => behindLining(build, one, cut));
  const layers = [
    ...shown(({ shape }) => shape.kind === "fill", layerInCut),
    ...shown(({ shape }) => shape.kind === "panel" || shape.kind === "sheet", layerInCut),
    ...build.openings.flatMap((placed) => {
      const inCut = face.get(placed.surface.id);
      return inCut === undefined || placed.surface.kind === "partition" ? [] : [openingInCut(build, placed, inCut, cut)];
    }),
  ];
  const filled = [
    outsideAir(window),
    ...roomAirs(build, cut, window),
    ...behind.flatMap(({ open }) => open),
    ...behind.flatMap(({ gaps }) => gaps),
    ...layers.flatMap((one) => one.regions),
  ];
  const bars = snapped(filled, shown(({ shape }) => shape.kind === "bar", (part, inCut) => barInCut(build, part, inCut)));
  const regions = [...filled, ...bars.flatMap((one) => one.regions)];
  const sheets = [...layers, ...bars].flatMap((one) => one.sheets).flatMap((sheet) => inWindow(sheet, window));
  return { window, regions, sheets, airs: airsOf(build, regions, films) };
}

/** The walls of a bar that the plane cuts across, and the air that they close in. */
function barInCut({ openings }: Build, part: Part, inCut: SurfaceInCut): Shown {
  const walls = crosses(part, inCut) ? wallsOf(part, inCut.surface, openings.find(({ opening }) => opening.id === part.of)) : undefined;
  if (walls === undefined) return { regions: [], sheets: [] };
  const { thickness, conductivity } = walls;
  const sheets = walls.lines.map((line) => ({ what: part.what, points: line.map(({ x, y }) => rounded(inCut.place(x, y))), conductivity, thickness }));
  return { regions: walls.hollow ? hollowOf(part, walls, inCut) : [], sheets };
}

function hollowOf(part: Part, { lines }: BarWalls, inCut: SurfaceInCut): readonly Region[] {
  const ts = lines.flat().map(({ x }) => x);
  const t = overlapOf({ from: Math.min(...ts), to: Math.max(...ts) }, inCut.t);
  if (t === undefined) return [];
  const outline = slab(inCut, t, part.depth);
  const sides = [Math.max(...ts) - Math.min(...ts), part.depth.to - part.depth.from];
  const conductivity = gapConductivity(Math.min(...sides), "horizontal", Math.max(...sides));
  return outline === undefined ? [] : [{ what: `air in the ${part.what}`, outline, fill: { kind: "solid", conductivity } }];
}

/** True where the plane cuts a bar across its run. */
function crosses({ shape, rect }: Part, { runs, at }: SurfaceInCut): boolean {
  if (shape.kind !== "bar" || shape.runs === runs) return false;
  return runs === "u" ? at > rect.v0 && at < rect.v1 : at > rect.u0 && at < rect.u1;
}

function inWindow(sheet: Sheet, window: Rect): readonly Sheet[] {
  return lineInWindow(sheet.points, window).map((points) => ({ ...sheet, points: points.map(rounded) }));
}

