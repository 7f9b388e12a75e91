import type { Build } from "../../../build/build.ts";
import type { Part } from "../../../build/part.ts";
import { blockOf, rectOnSurface, type Span, type Surface } from "../../../build/surface.ts";
import type { Rect } from "../../../geometry/rect.ts";

/** A line that is cut stays this far from what it should not cut, m, where it can; it counts no more beyond. */
export const ROOM_ENOUGH = 0.1;
/** A line that comes closer than this to what it should not cut is not taken, m. */
export const LEAST_ROOM = 0.005;

/** Bars, openings and partitions of a surface, for choosing where it may be cut. */
export interface Ground {
  readonly surface: Surface;
  readonly bars: readonly Part[];
  /** Holes, and where partitions stand against the surface. */
  readonly taken: readonly Rect[];
  /** What should not be cut along a line in u, or in v: bars that run that way, and what is taken. */
  readonly along: Readonly<Record<"u" | "v", readonly Rect[]>>;
  /** Bars that a line in u, or in v, may cut across, in order along it. */
  readonly across: Readonly<Record<"u" | "v", readonly Part[]>>;
}

/** What stands on a surface. `but` is a partition or opening that may be cut. */
export function groundOf(build: Build, surface: Surface, but?: string): Ground {
  const bars = build.parts.filter((part) => part.surface === surface.id && part.shape.kind === "bar" && !part.temporary && part.role !== "trim");
  const holes = build.openings.filter((one) => one.surface.id === surface.id && one.opening.id !== but).map(({ hole }) => hole);
  const partitions = build.surfaces
    .filter((one) => one.kind === "partition" && one.id !== but && one.id !== surface.id && surface.along.x !== 0)
    .map((one) => rectOnSurface(surface, blockOf(one, one.inside, depthOf(one))).rect);
  return groundWith(surface, bars, [...holes, ...partitions]);
}

/** Bars and what is taken, sorted by the way a line may run. */
export function groundWith(surface: Surface, bars: readonly Part[], taken: readonly Rect[]): Ground {
  const running = (runs: "u" | "v"): readonly Part[] => bars.filter(({ shape }) => shape.kind === "bar" && shape.runs === runs);
  const [u, v] = [running("u"), running("v")];
  const rects = (parts: readonly Part[]): readonly Rect[] => [...parts.map(({ rect }) => rect), ...taken];
  return {
    surface,
    bars,
    taken,
    along: { u: rects(u), v: rects(v) },
    across: { u: v.toSorted((a, b) => a.rect.u0 - b.rect.u0), v: u.toSorted((a, b) => a.rect.v0 - b.rect.v0) },
  };
}

/** Depth that a partition takes, from one finished face to the other. */
export function depthOf({ stack, farStack }: Surface): Span {
  return { from: stack.finished, to: farStack?.finished ?? stack.finished };
}

/** Distance from a line to the nearest thing that it should not be cut along, within a stretch, m; 0 where it meets one. */
export function roomBeside({ along }: Ground, runs: "u" | "v", at: number, stretch: Span): number {
  let least = Number.POSITIVE_INFINITY;
  for (const { u0, u1, v0, v1 } of along[runs]) {
    const [from, to, low, high] = runs === "u" ? [u0, u1, v0, v1] : [v0, v1, u0, u1];
    if (to < stretch.from || from > stretch.to) continue;
    least = Math.min(least, Math.max(0, low - at, at - high));
  }
  return least;
}

/** The bars that a line cuts across, in order along it. */
export function barsAcross({ across }: Ground, runs: "u" | "v", at: number): readonly { readonly part: Part; readonly t: Span }[] {
  return across[runs].flatMap((part) => {
    const [own, other] = axesOf(part.rect, runs);
    return at > other.from && at < other.to ? [{ part, t: own }] : [];
  });
}

/** Least distance that an edge of a window keeps from bars, m. */
const CLEAR_OF_BARS = 0.03;
/** Further off is no better, m. */
const FAR_FROM_BARS = 0.12;
/** Steps in which the end of a stretch without a profile is tried, m. */
const STEP = 0.02;

/**
 * Where a window may end beyond `from` (`way` 1 or -1), at least `least` and at most `most` away: far from bars, and on the
 * middle of a flat where the line cuts a profile across, so that the edge is a plane of symmetry. Undefined where no place does.
 */
export function endBeyond(ground: Ground, runs: "u" | "v", at: number, { from, way, least, most }: { from: number; way: 1 | -1; least: number; most: number }): number | undefined {
  const bars = barsAcross(ground, runs, at);
  const places = placesBetween(ground.surface, runs, from + way * least, from + way * most);
  const scored = places.flatMap((t) => {
    const room = Math.min(FAR_FROM_BARS, ...bars.map((bar) => Math.max(bar.t.from - t, t - bar.t.to)));
    return room < CLEAR_OF_BARS ? [] : [{ t, score: room - 0.5 * Math.abs(t - from) }];
  });
  return best(scored)?.t;
}

/** The one with the highest score, the first of equals; undefined for none. */
export function best<T extends { readonly score: number }>(scored: readonly T[]): T | undefined {
  return scored.reduce<T | undefined>((top, one) => (top === undefined || one.score > top.score + 1e-9 ? one : top), undefined);
}

/** Middles of the profile's flats between two places; of a flat line, places in even steps. In order from the first. */
export function placesBetween({ profile, panel }: Surface, runs: "u" | "v", first: number, last: number): readonly number[] {
  const [low, high] = first < last ? [first, last] : [last, first];
  const places: number[] = [];
  if (runs === "u" && profile !== undefined) {
    const start = panel.u0 + profile.outerFlat / 2;
    for (let k = Math.ceil((low - start) / (profile.pitch / 2)); start + (k * profile.pitch) / 2 <= high; k += 1) places.push(start + (k * profile.pitch) / 2);
    return first < last ? places : places.reverse();
  }
  for (let k = 0; k * STEP <= high - low; k += 1) places.push(first < last ? first + k * STEP : first - k * STEP);
  return places;
}

/** The stretch of a rectangle along the line and across it. */
export function axesOf(rect: Rect, runs: "u" | "v"): readonly [Span, Span] {
  const [u, v] = [{ from: rect.u0, to: rect.u1 }, { from: rect.v0, to: rect.v1 }];
  return runs === "u" ? [u, v] : [v, u];
}
