import { catalogue } from "../catalogue/catalogue.ts";
import type { BoxRow } from "../catalogue/rows.ts";
import { cutRects, polygonArea } from "../geometry/polygon.ts";
import { grow, type Rect } from "../geometry/rect.ts";
import type { Job } from "../job/job.ts";
import type { PlacedOpening } from "./build.ts";
import { partMaker } from "./makePart.ts";
import type { Part } from "./part.ts";
import { crossMemberPlaces } from "./shell/boxFrame.ts";
import { leafRects } from "./shell/shell.ts";
import { troughVolume } from "./shell/skin.ts";
import type { Span, Surface, SurfaceId } from "./surface.ts";
import { buildUpOf, wallFoot } from "./surfaces.ts";

/**
 * Foam by face: the stated thickness from the inside plane, and the troughs of the sheet behind it. The roof's foam runs
 * over the walls' and the side walls' over the end walls', so that no corner is counted twice. Steel bedded in the foam
 * is not taken off: open studs fill up, and their metal is far below what a sprayer's hand varies.
 */
export function foamParts(
  job: Job,
  surfaces: readonly Surface[],
  openings: readonly PlacedOpening[],
  box: BoxRow,
): readonly Part[] {
  const thickness = (id: SurfaceId): number => {
    const foam = surfaces.find((one) => one.id === id)?.stack.foam;
    return foam === undefined ? 0 : foam.to - foam.from;
  };
  const bottom = wallFoot(job, surfaces);
  return surfaces.flatMap((surface) => {
    if (surface.kind === "partition") return [];
    const holes = openings.filter((one) => one.surface.id === surface.id).map(({ hole }) => hole);
    if (surface.id === "floor") return floorFoam(job, box, surface, holes);
    const face = surface.id as keyof Job["faces"];
    const { inside } = surface;
    const regions: readonly FoamRegion[] = [
      {
        row: buildUpOf(job, job.faces[face].buildUp)?.foam?.row,
        span: surface.stack.foam,
        rect:
          surface.id === "roof"
            ? inside
            : { ...inside, ...betweenSides(surface, thickness), v0: bottom, v1: inside.v1 - thickness("roof") },
      },
      ...(surface.id === "doorEnd" ? leafFoam(job, surface, box.cargoDoors.liningMargin) : []),
    ];
    const maker = partMaker(surface);
    return regions.flatMap((region) => foamPart(surface, region, holes, maker));
  });
}

interface FoamRegion {
  readonly row: string | undefined;
  readonly span: Span | undefined;
  readonly rect: Rect;
}

function foamPart(
  surface: Surface,
  { row, span, rect }: FoamRegion,
  holes: readonly Rect[],
  maker: ReturnType<typeof partMaker>,
): readonly Part[] {
  if (row === undefined || span === undefined) return [];
  const foam = catalogue.foams.get(row);
  const outline = cutRects(rect, holes);
  const area = outline.reduce((sum, one) => sum + polygonArea(one), 0);
  if (area === 0) return [];
  const troughs = span.from === 0 ? troughVolume(surface, rect, holes) : 0;
  const volume = area * (span.to - span.from) + troughs;
  return [
    maker.make({
      role: "foam",
      what: `${foam.what} on the ${surface.name}`,
      rect,
      depth: { from: surface.profile === undefined ? span.from : -surface.profile.depth, to: span.to },
      shape: { kind: "fill", outline, area, troughs, volume },
      row: { table: "foams", id: foam.id },
      material: foam.material,
      basis: { by: "volume", volume, density: catalogue.materials.get(foam.material).density },
    }),
  ];
}

/** Under the bare floor, between the bottom rails and the flanges of the cross-members. */
function floorFoam(job: Job, box: BoxRow, floor: Surface, holes: readonly Rect[]): readonly Part[] {
  const rail = box.rails.bottomSide.depth;
  const rect = { ...floor.inside, v0: floor.outside.v0 + rail, v1: floor.outside.v1 - rail };
  const half = box.crossMembers.flange / 2;
  const flanges = crossMemberPlaces(box, floor).map((u) => ({ ...rect, u0: u - half, u1: u + half }));
  return foamPart(floor, { row: job.floor.foam?.row, span: floor.stack.foam, rect }, [...holes, ...flanges], partMaker(floor));
}

/** End walls are foamed between the side walls' foam; side walls over their whole length. */
function betweenSides(surface: Surface, thickness: (id: SurfaceId) => number): { readonly u0: number; readonly u1: number } {
  const { u0, u1 } = surface.inside;
  if (surface.id === "blindEnd") return { u0: u0 + thickness("right"), u1: u1 - thickness("left") };
  if (surface.id === "doorEnd") return { u0: u0 + thickness("left"), u1: u1 - thickness("right") };
  return { u0, u1 };
}

function leafFoam(job: Job, doorEnd: Surface, liningMargin: number): readonly FoamRegion[] {
  const row = buildUpOf(job, job.faces.doorEnd.leafLining)?.foam?.row;
  return leafRects(doorEnd).map((leaf) => ({
    row,
    span: doorEnd.leafStack?.foam,
    rect: grow(leaf, -liningMargin),
  }));
}
