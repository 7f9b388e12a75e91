import type { ProfileRow } from "../../catalogue/rows.ts";
import { MILL_DENSITY } from "../../catalogue/steel.ts";
import { cutRects, polygonArea } from "../../geometry/polygon.ts";
import { disjoint, intersect, type Rect, rectHeight } from "../../geometry/rect.ts";
import { developedLength, troughArea } from "../../geometry/trapezoid.ts";
import { partMaker } from "../makePart.ts";
import type { Part } from "../part.ts";
import type { Surface } from "../surface.ts";

/** The corrugated sheet of one face with its holes cut; none for faces without a profile. */
export function skinParts(surface: Surface, holes: readonly Rect[]): readonly Part[] {
  const { panel, profile } = surface;
  if (profile === undefined) return [];
  const outline = cutRects(panel, holes);
  const developed = developedArea(surface, profile, panel, holes);
  const { make } = partMaker(surface);
  return [
    make({
      role: "skin",
      what: `${surface.name} sheet`,
      rect: panel,
      depth: { from: -surface.skinDepth, to: 0 },
      shape: { kind: "sheet", outline, area: outline.reduce((sum, one) => sum + polygonArea(one), 0), developed },
      row: { table: "profiles", id: profile.id },
      material: profile.material,
      basis: { by: "area", area: developed, massPerArea: profile.thickness * MILL_DENSITY },
    }),
  ];
}

/** Area of the sheet laid flat within a region, less the holes. */
export function developedArea(surface: Surface, profile: ProfileRow, region: Rect, holes: readonly Rect[]): number {
  return overRegion(surface, region, holes, (from, to) => developedLength(profile, from, to));
}

/** Volume between the inside plane and the sheet within a region, less the holes. */
export function troughVolume(surface: Surface, region: Rect, holes: readonly Rect[]): number {
  const { profile } = surface;
  if (profile === undefined) return 0;
  return overRegion(surface, region, holes, (from, to) => troughArea(profile, from, to));
}

/** Sums a function of the stretch along u, times height, over the part of a region that the sheet covers. */
function overRegion(
  surface: Surface,
  region: Rect,
  holes: readonly Rect[],
  across: (from: number, to: number) => number,
): number {
  const covered = intersect(region, surface.panel);
  if (covered === undefined) return 0;
  const start = surface.panel.u0;
  const one = (r: Rect): number => across(r.u0 - start, r.u1 - start) * rectHeight(r);
  return disjoint(holes).reduce((sum, hole) => {
    const cut = intersect(hole, covered);
    return cut === undefined ? sum : sum - one(cut);
  }, one(covered));
}
