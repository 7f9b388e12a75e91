import { catalogue } from "../catalogue/catalogue.ts";
import type { BoxRow } from "../catalogue/rows.ts";
import { grow, type Rect, rectAt, rectWidth } from "../geometry/rect.ts";
import { add, scale } from "../geometry/vector.ts";
import type { Job, Opening } from "../job/job.ts";
import type { PlacedOpening, Sweep } from "./build.ts";
import { findSurface, type Surface, toWorld } from "./surface.ts";

/** Kinds that people or goods pass or look through; studs always frame them. */
const ALWAYS_FRAMED: ReadonlySet<Opening["kind"]> = new Set<Opening["kind"]>(["personnel door", "window", "hatch"]);

/** Puts every opening in its place. Throws RangeError for a face that the job does not have. */
export function placeOpenings(job: Job, box: BoxRow, surfaces: readonly Surface[]): readonly PlacedOpening[] {
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
      sweep: sweepOf(opening, surface, clear, box),
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

/** The outside of the welded frame. A frame that would reach below the sheet stands on the rail and has no lower bar. */
function holeRect(opening: Opening, clear: Rect, surface: Surface): Rect {
  if (opening.frame === undefined) return clear;
  const hole = grow(clear, catalogue.sections.get(opening.frame.row).width);
  return hole.v0 < surface.panel.v0 ? { ...hole, v0: clear.v0 } : hole;
}

/** What the leaf sweeps in plan. Leaves in roof and floor lift and sweep no floor. */
function sweepOf(opening: Opening, surface: Surface, clear: Rect, box: BoxRow): Sweep | undefined {
  const swing = opening.swing;
  if (swing === undefined || surface.inward.z !== 0) return undefined;
  const inward = swing.opens === "in";
  const outerPlane = surface.kind === "partition" ? surface.stack.finished : -surface.skinDepth;
  const innerPlane = surface.farStack?.finished ?? surface.stack.finished;
  const w = inward ? innerPlane : outerPlane;
  const hingeLeft = swing.hinge === "left";
  const hinge = toWorld(surface, hingeLeft ? clear.u0 : clear.u1, clear.v0, w);
  const closed = scale(surface.along, hingeLeft ? 1 : -1);
  const open = scale(surface.inward, inward ? 1 : -1);
  const start = Math.atan2(closed.y, closed.x);
  const turnsLeft = closed.x * open.y - closed.y * open.x > 0;
  const tip = add(hinge, scale(open, rectWidth(clear)));
  return {
    hinge,
    radius: rectWidth(clear),
    from: turnsLeft ? start : start - swing.angle,
    to: turnsLeft ? start + swing.angle : start,
    height: clear.v1 - clear.v0,
    inside: tip.x > 0 && tip.x < box.outside.length && tip.y > 0 && tip.y < box.outside.width,
  };
}
