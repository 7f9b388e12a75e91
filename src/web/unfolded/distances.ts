import type { Rect, Surface } from "../../river/screen.ts";
import type { Thing } from "./things.ts";

/** A measured stretch on a face: from the thing's edge to what is beside, below or above it. */
export interface Distance {
  readonly axis: "u" | "v";
  /** Where it is measured, on the other axis. */
  readonly across: number;
  readonly from: number;
  readonly to: number;
  readonly length: number;
  readonly toWhat: string;
  /** To a neighbour, rather than to what bounds the face. */
  readonly near: boolean;
}

/**
 * The distances that someone who sets a thing out wants to see: to posts (or finished walls), to floor and head, and to the
 * nearest neighbour on each side. Neighbours that overlap on that axis are left out.
 */
export function distancesOf(rect: Rect, surface: Surface, things: readonly Thing[], id: string): readonly Distance[] {
  const others = things.filter((one) => one.surface === surface.id && one.id !== id);
  const middleU = (rect.u0 + rect.u1) / 2;
  const middleV = (rect.v0 + rect.v1) / 2;
  const bounds = boundsOf(surface);
  const u = (from: number, to: number, what: string, near?: number): Distance => ({
    axis: "u", across: near ?? middleV, from, to, length: Math.abs(to - from), toWhat: what, near: near !== undefined,
  });
  const v = (from: number, to: number, what: string, near?: number): Distance => ({
    axis: "v", across: near ?? middleU, from, to, length: Math.abs(to - from), toWhat: what, near: near !== undefined,
  });
  const beside = others.filter(({ rect: one }) => one.v0 < rect.v1 && one.v1 > rect.v0);
  const stacked = others.filter(({ rect: one }) => one.u0 < rect.u1 && one.u1 > rect.u0);
  const before = most(beside.filter(({ rect: one }) => one.u1 <= rect.u0), ({ rect: one }) => one.u1);
  const after = most(beside.filter(({ rect: one }) => one.u0 >= rect.u1), ({ rect: one }) => -one.u0);
  const below = most(stacked.filter(({ rect: one }) => one.v1 <= rect.v0), ({ rect: one }) => one.v1);
  const above = most(stacked.filter(({ rect: one }) => one.v0 >= rect.v1), ({ rect: one }) => -one.v0);
  const low = rect.v0 + (rect.v1 - rect.v0) * 0.25;
  const aside = rect.u0 + (rect.u1 - rect.u0) * 0.25;
  return [
    u(rect.u0, bounds.u0, bounds.uWhat),
    u(rect.u1, bounds.u1, bounds.uWhat),
    v(rect.v0, bounds.v0, bounds.v0What),
    v(rect.v1, bounds.v1, bounds.v1What),
    ...(before === undefined ? [] : [u(rect.u0, before.rect.u1, before.id, low)]),
    ...(after === undefined ? [] : [u(rect.u1, after.rect.u0, after.id, low)]),
    ...(below === undefined ? [] : [v(rect.v0, below.rect.v1, below.id, aside)]),
    ...(above === undefined ? [] : [v(rect.v1, above.rect.v0, above.id, aside)]),
  ].filter(({ length }) => length > 5e-4);
}

interface Bounds {
  readonly u0: number;
  readonly u1: number;
  readonly v0: number;
  readonly v1: number;
  readonly uWhat: string;
  readonly v0What: string;
  readonly v1What: string;
}

/** What a face is measured from: posts and bare floor on walls, finished walls elsewhere. */
function boundsOf({ kind, inward, panel, lined }: Surface): Bounds {
  if (kind === "face" && inward.z === 0) {
    return { u0: panel.u0, u1: panel.u1, v0: 0, v1: panel.v1, uWhat: "post", v0What: "bare floor", v1What: "top rail" };
  }
  const wall = "finished wall";
  return kind === "partition"
    ? { ...lined, v0: 0, uWhat: wall, v0What: "bare floor", v1What: "ceiling" }
    : { ...lined, uWhat: wall, v0What: wall, v1What: wall };
}

function most<T>(all: readonly T[], by: (one: T) => number): T | undefined {
  return all.reduce<T | undefined>((best, one) => (best === undefined || by(one) > by(best) ? one : best), undefined);
}
