import { intervalsOverlap } from "../geometry/interval.ts";
import { overlaps, type Rect } from "../geometry/rect.ts";
import { SAME_LENGTH } from "../geometry/tolerance.ts";
import type { Part, Role } from "./part.ts";
import { blockOf, findSurface, rectOnSurface, type Span, type Surface } from "./surface.ts";

/** A post, rail, corner fitting or welded frame that stands past a surface's inside plane, in the way of its lining. */
export interface Steel {
  readonly rect: Rect;
  readonly depth: Span;
  /** The way in which a frame keeps clear of it: rails along u are passed below, everything else is passed beside. */
  readonly pass: "beside" | "below";
}

const STANDS_IN: ReadonlySet<Role> = new Set<Role>(["post", "rail", "corner fitting", "opening frame"]);

/** What of the steel given stands into the lining of a surface. */
export function steelOn(surface: Surface, parts: readonly Part[], surfaces: readonly Surface[]): readonly Steel[] {
  return parts
    .filter(({ role }) => STANDS_IN.has(role))
    .map((part) => {
      const { rect, depth } = rectOnSurface(surface, blockOf(findSurface(surfaces, part.surface), part.rect, part.depth));
      const isLong = part.role === "rail" && rect.u1 - rect.u0 > rect.v1 - rect.v0;
      return { rect, depth, pass: isLong ? ("below" as const) : ("beside" as const) };
    })
    .filter(({ rect, depth }) => depth.to > SAME_LENGTH && overlaps(rect, surface.inside));
}

/** The steel that a layer at this depth would run into. */
export function steelAt(steel: readonly Steel[], depth: Span): readonly Steel[] {
  return steel.filter((one) => intervalsOverlap(one.depth, depth));
}

/** A frame drawn in from its edges until it is clear of the steel there. */
export function clearOfSteel(frame: Rect, steel: readonly Steel[]): Rect {
  let { u0, u1, v0, v1 } = frame;
  const middle = { u: (u0 + u1) / 2, v: (v0 + v1) / 2 };
  for (const { rect, pass } of steel) {
    if (!overlaps(rect, { u0, u1, v0, v1 })) continue;
    if (pass === "beside") {
      if (rect.u0 + rect.u1 < 2 * middle.u) u0 = Math.max(u0, rect.u1);
      else u1 = Math.min(u1, rect.u0);
    } else if (rect.v0 + rect.v1 < 2 * middle.v) v0 = Math.max(v0, rect.v1);
    else v1 = Math.min(v1, rect.v0);
  }
  return { u0, u1, v0, v1 };
}
