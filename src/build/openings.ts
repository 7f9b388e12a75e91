import { catalogue } from "../catalogue/catalogue.ts";
import { grow, type Rect, rectAt, rectHeight, rectWidth } from "../geometry/rect.ts";
import { scale } from "../geometry/vector.ts";
import type { Job, Opening } from "../job/job.ts";
import type { PlacedOpening, Sweep } from "./build.ts";
import { findSurface, type Surface, toWorld } from "./surface.ts";

/** Kinds that people or goods pass or look through; studs always frame them. */
const ALWAYS_FRAMED: ReadonlySet<Opening["kind"]> = new Set<Opening["kind"]>(["personnel door", "window", "hatch"]);

/** Puts every opening in its place. Throws RangeError for a face that the job does not have. */
export function placeOpenings(job: Job, surfaces: readonly Surface[]): readonly PlacedOpening[] {
  return job.openings.map((opening) => {
    const surface = findSurface(surfaces, opening.face);
    const clear = clearRect(opening);
    const hole = holeRect(opening, clear, surface);
    const framed = opening.frame !== undefined || surface.kind === "partition" || ALWAYS_FRAMED.has(opening.kind);
    return {
      opening,
      surface,
      clear,
      hole,
      lining: framed ? hole : clear,
      framed,
      sweeps: sweepsOf(opening, surface, clear),
    };
  });
}

/** Clear size from the job, else the maker's rough hole, else the article itself. */
function clearRect(opening: Opening): Rect {
  const article = opening.article === undefined ? undefined : catalogue.articles.get(opening.article);
  const size = opening.size ?? article?.rough ?? article;
  if (size === undefined) throw new RangeError(`opening ${opening.id} has neither a size nor an article`);
  return rectAt(opening.at.along, opening.at.up, size.width, size.height);
}

/** The outside of the welded frame. A frame that would reach below the sheet has no lower bar: the rail closes it. */
function holeRect(opening: Opening, clear: Rect, surface: Surface): Rect {
  if (opening.frame === undefined) return clear;
  const hole = grow(clear, catalogue.sections.get(opening.frame.row).width);
  return hole.v0 < surface.panel.v0 ? { ...hole, v0: clear.v0 } : hole;
}

/**
 * What each leaf sweeps in plan: the article's leaves centred in the clear opening, or one leaf over all of it. A single
 * leaf hangs on the stated side; of a pair each hangs on its own. Leaves in roof and floor lift and sweep no floor.
 */
function sweepsOf(opening: Opening, surface: Surface, clear: Rect): readonly Sweep[] {
  const { swing } = opening;
  if (swing === undefined || surface.inward.z !== 0) return [];
  const leaves = opening.article === undefined ? undefined : catalogue.articles.get(opening.article).leaves;
  const radius = leaves?.width ?? rectWidth(clear);
  const jamb = (rectWidth(clear) - radius * (leaves?.count ?? 1)) / 2;
  const sides = leaves?.count === 2 ? (["left", "right"] as const) : [swing.hinge];
  return sides.map((side) => {
    const u = side === "left" ? clear.u0 + jamb : clear.u1 - jamb;
    return { ...sectorOf(surface, swing, side, u, clear.v0), radius, height: rectHeight(clear) };
  });
}

function sectorOf(
  surface: Surface,
  { opens, angle }: NonNullable<Opening["swing"]>,
  hinge: "left" | "right",
  u: number,
  v: number,
): Pick<Sweep, "hinge" | "from" | "to" | "inside"> {
  const inward = opens === "in";
  const outerPlane = surface.kind === "partition" ? surface.stack.finished : -surface.skinDepth;
  const innerPlane = surface.farStack?.finished ?? surface.stack.finished;
  const closed = scale(surface.along, hinge === "left" ? 1 : -1);
  const open = scale(surface.inward, inward ? 1 : -1);
  const start = Math.atan2(closed.y, closed.x);
  const turnsLeft = closed.x * open.y - closed.y * open.x > 0;
  return {
    hinge: toWorld(surface, u, v, inward ? innerPlane : outerPlane),
    from: turnsLeft ? start : start - angle,
    to: turnsLeft ? start + angle : start,
    inside: inward || surface.kind === "partition",
  };
}
