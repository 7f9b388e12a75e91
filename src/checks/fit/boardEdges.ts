import type { Part } from "../../build/part.ts";
import type { Span, Surface } from "../../build/surface.ts";
import { edgesOf } from "../../geometry/polygon.ts";
import { grow, type Rect } from "../../geometry/rect.ts";
import { SAME_LENGTH } from "../../geometry/tolerance.ts";
import { BOXING, SEAM_TOLERANCE } from "../limits.ts";
import { ontoSurface, partBox } from "../places.ts";
import type { Fit } from "./context.ts";

/** An edge of a board along the studs: a line of constant u. */
export interface BoardEdge {
  readonly board: Part;
  readonly u: number;
  readonly v: Span;
}

/** Boards that hang on studs; lining of the cargo door leaves is bonded to them and left out. */
function studBoards(fit: Fit, surface: Surface): readonly Part[] {
  const leaf = surface.leafStack?.finished;
  return fit.parts(surface.id, "board").filter(({ depth }) => leaf === undefined || depth.to > leaf + SAME_LENGTH);
}

/** The edges of boards along the studs, but for those around holes that no stud frames. */
export function edgesAlongStuds(fit: Fit, surface: Surface): readonly BoardEdge[] {
  const bare = fit.build.openings.filter((one) => one.surface.id === surface.id && !one.framed).map(({ lining }) => lining);
  return studBoards(fit, surface).flatMap((board) => {
    if (board.shape.kind !== "panel") return [];
    return board.shape.outline
      .flatMap(({ outer, holes }) => [outer, ...holes])
      .flatMap((ring) => edgesOf(ring))
      .filter(([a, b]) => Math.abs(a.x - b.x) < SAME_LENGTH && Math.abs(a.y - b.y) > SEAM_TOLERANCE.value)
      .map(([a, b]) => ({ board, u: a.x, v: { from: Math.min(a.y, b.y), to: Math.max(a.y, b.y) } }))
      .filter((edge) => !bare.some((hole) => bounds(hole, edge)));
  });
}

/** What carries board edges on a surface, as rectangles on it. */
export function supportsOn(fit: Fit, surface: Surface): readonly Rect[] {
  const own = fit
    .parts(surface.id, "stud", "jamb stud", "cripple stud", "track", "header", "sill", "blocking", "furring")
    .filter(({ temporary }) => !temporary)
    .map(({ rect }) => rect);
  return [...own, ...cornerAngles(fit, surface), ...boxedSteel(fit, surface)];
}

/** The longest stretch of an edge that no support lies behind, or within `reach` beside it, m. */
export function openLength({ u, v }: BoardEdge, supports: readonly Rect[], reach: number): number {
  const behind = supports
    .filter((rect) => rect.u0 - reach <= u && u <= rect.u1 + reach && rect.v1 > v.from && rect.v0 < v.to)
    .sort((a, b) => a.v0 - b.v0);
  let open = 0;
  let covered = v.from;
  for (const { v0, v1 } of behind) {
    open = Math.max(open, v0 - covered);
    covered = Math.max(covered, v1);
  }
  return Math.max(open, v.to - covered);
}

/** Boxing around the box's own steel that stands into the lining: it carries board edges by an angle's leg all around. */
function boxedSteel(fit: Fit, surface: Surface): readonly Rect[] {
  const { boardPlane } = surface.stack;
  return fit.build.surfaces.flatMap((owner) =>
    fit
      .parts(owner.id, "post", "rail", "corner fitting")
      .map((part) => ontoSurface(surface, partBox(owner, part)))
      .filter(({ depth }) => depth.from <= boardPlane && depth.to >= boardPlane)
      .map(({ rect }) => grow(rect, BOXING.value)),
  );
}

/** Corner angles of this surface, and of its neighbours where a leg lies behind this surface's boards. */
function cornerAngles(fit: Fit, surface: Surface): readonly Rect[] {
  const { boardPlane } = surface.stack;
  return fit.build.surfaces.flatMap((owner) =>
    fit
      .parts(owner.id, "corner angle")
      .map((part) => ontoSurface(surface, partBox(owner, part)))
      .filter(({ depth }) => depth.from <= boardPlane + SAME_LENGTH && depth.to >= boardPlane - SAME_LENGTH)
      .map(({ rect }) => rect),
  );
}

function bounds(hole: Rect, { u, v }: BoardEdge): boolean {
  const beside = Math.min(Math.abs(u - hole.u0), Math.abs(u - hole.u1)) < SEAM_TOLERANCE.value;
  return beside && v.from >= hole.v0 - SEAM_TOLERANCE.value && v.to <= hole.v1 + SEAM_TOLERANCE.value;
}
