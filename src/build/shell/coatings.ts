import { catalogue } from "../../catalogue/catalogue.ts";
import type { BoxRow } from "../../catalogue/rows.ts";
import { disjoint, type Rect, rectArea } from "../../geometry/rect.ts";
import type { BuildUp, Job } from "../../job/job.ts";
import type { PlacedOpening } from "../build.ts";
import { type PartMaker, partMaker } from "../makePart.ts";
import type { Part } from "../part.ts";
import type { Surface } from "../surface.ts";
import { crossMemberPlaces } from "./boxFrame.ts";
import { developedArea } from "./skin.ts";

/** Coats on a face: one film part for each coat. `plane` is where the film lies behind the inside plane. */
export function paintParts(
  surface: Surface,
  coats: BuildUp["paint"],
  plane: number,
  area: number,
  rect: Rect,
  maker: PartMaker,
): readonly Part[] {
  let coat = 0;
  return coats.flatMap(({ row, coats: count }) => {
    const coating = catalogue.coatings.get(row);
    return Array.from({ length: count }, () => {
      coat += 1;
      return maker.make({
        role: "coating",
        what: `${surface.name}, coat ${coat}: ${coating.what}`,
        rect,
        depth: { from: plane, to: plane },
        shape: { kind: "film", area, thickness: coating.dryFilm, coat },
        row: { table: "coatings", id: coating.id },
        basis: { by: "area", area, massPerArea: coating.dryFilm * coating.dryDensity },
      });
    });
  });
}

/** Coats on the outside of the walls, on the roof and under the floor. */
export function outsideCoats(
  job: Job,
  box: BoxRow,
  surfaces: readonly Surface[],
  openings: readonly PlacedOpening[],
): readonly Part[] {
  return surfaces.flatMap((surface) => {
    if (surface.kind === "partition") return [];
    const coats = coatsOf(job, surface);
    const holes = openings.filter((one) => one.surface.id === surface.id).map(({ hole }) => hole);
    const maker = partMaker(surface, "outside");
    return paintParts(surface, coats, -surface.skinDepth, outsideArea(box, surface, holes), surface.outside, maker);
  });
}

function coatsOf(job: Job, surface: Surface): BuildUp["paint"] {
  if (surface.id === "roof") return job.coatings.roof;
  return surface.id === "floor" ? job.coatings.underside : job.coatings.outside;
}

/**
 * Area to coat: the sheet as developed and the frame as seen; under the floor, the floor and both sides of each
 * cross-member's web.
 */
function outsideArea(box: BoxRow, surface: Surface, holes: readonly Rect[]): number {
  const gross = rectArea(surface.outside);
  const cut = disjoint(holes).reduce((sum, hole) => sum + rectArea(hole), 0);
  if (surface.id === "floor") {
    const webs = crossMemberPlaces(box, surface).length * 2 * box.crossMembers.depth;
    return gross - cut + webs * (surface.inside.v1 - surface.inside.v0);
  }
  if (surface.profile === undefined) return gross - cut;
  return gross - rectArea(surface.panel) + developedArea(surface, surface.profile, surface.panel, holes);
}
