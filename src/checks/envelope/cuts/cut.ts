import type { Span, Surface } from "../../../build/surface.ts";
import { toWorld } from "../../../build/surface.ts";
import type { Polygon } from "../../../geometry/polygon.ts";
import type { Rect } from "../../../geometry/rect.ts";
import type { Vec2, Vec3 } from "../../../geometry/vector.ts";

/** A plane through the build, square to one axis of the world, with two axes of its own from `origin`. */
export interface Cut {
  readonly origin: Vec3;
  readonly x: Vec3;
  readonly y: Vec3;
}

/** A surface where a plane cuts it square to its face: `t` is the surface's axis that lies in the plane beside w. */
export interface SurfaceInCut {
  readonly surface: Surface;
  readonly runs: "u" | "v";
  /** Where the plane cuts the surface's other axis. */
  readonly at: number;
  /** Stretches of t and w that the window shows. */
  readonly t: Span;
  readonly w: Span;
  readonly place: (t: number, w: number) => Vec2;
}

/** A surface as a plane cuts it inside a window; undefined where the plane runs along the surface. */
export function surfaceInCut(surface: Surface, cut: Cut, window: Rect): SurfaceInCut | undefined {
  const lies = (axis: Vec3): boolean => Math.abs(dot(axis, cut.x)) > 0.5 || Math.abs(dot(axis, cut.y)) > 0.5;
  if (!lies(surface.inward)) return undefined;
  const runs = lies(surface.along) ? "u" : "v";
  const across = runs === "u" ? surface.up : surface.along;
  const at = dot(minus(cut.origin, surface.origin), across);
  const place = (t: number, w: number): Vec2 => ontoCut(cut, runs === "u" ? toWorld(surface, t, at, w) : toWorld(surface, at, t, w));
  const corners = [worldOf(cut, window.u0, window.v0), worldOf(cut, window.u1, window.v1)].map((one) => minus(one, surface.origin));
  const seen = (axis: Vec3): Span => {
    const ends = corners.map((one) => dot(one, axis));
    return { from: Math.min(...ends), to: Math.max(...ends) };
  };
  return { surface, runs, at, t: seen(runs === "u" ? surface.along : surface.up), w: seen(surface.inward), place };
}

/** Coordinates in the plane of a point of the world, seen square to the plane. */
export function ontoCut(cut: Cut, at: Vec3): Vec2 {
  const from = minus(at, cut.origin);
  return { x: dot(from, cut.x), y: dot(from, cut.y) };
}

/** The point of the world at these coordinates in the plane. */
export function worldOf({ origin, x, y }: Cut, at: number, up: number): Vec3 {
  return { x: origin.x + x.x * at + y.x * up, y: origin.y + x.y * at + y.y * up, z: origin.z + x.z * at + y.z * up };
}

/** The axis of the world that the plane is square to. */
export function normalOf({ x, y }: Cut): "x" | "y" | "z" {
  if (Math.abs(x.x) + Math.abs(y.x) === 0) return "x";
  return Math.abs(x.y) + Math.abs(y.y) === 0 ? "y" : "z";
}

/** A point with coordinates to the micrometre, so that the same geometry gives the same section. */
export function rounded({ x, y }: Vec2): Vec2 {
  return { x: toMicrometre(x), y: toMicrometre(y) };
}

/** A polygon of rounded points in the plane, counter-clockwise from its lowest point at the left, however the surface lies in it. */
export function ringInCut(points: readonly Vec2[]): Polygon {
  const ring = points.map(rounded);
  const twice = ring.reduce((sum, a, at) => {
    const b = ring[(at + 1) % ring.length] as Vec2;
    return sum + a.x * b.y - b.x * a.y;
  }, 0);
  if (twice < 0) ring.reverse();
  const first = ring.reduce((least, { x, y }, at) => {
    const known = ring[least] as Vec2;
    return x < known.x || (x === known.x && y < known.y) ? at : least;
  }, 0);
  return { outer: [...ring.slice(first), ...ring.slice(0, first)], holes: [] };
}

/** The part of a stretch that lies in another; undefined where they share nothing. */
export function overlapOf(a: Span, b: Span): Span | undefined {
  const from = Math.max(a.from, b.from);
  const to = Math.min(a.to, b.to);
  return to - from > SHORTEST ? { from, to } : undefined;
}

export function dot(a: Vec3, b: Vec3): number {
  return a.x * b.x + a.y * b.y + a.z * b.z;
}

export function minus(a: Vec3, b: Vec3): Vec3 {
  return { x: a.x - b.x, y: a.y - b.y, z: a.z - b.z };
}

/** Stretches shorter than this are left out of a section, m. */
const SHORTEST = 2e-5;

/** Adding zero turns -0 into 0. */
function toMicrometre(value: number): number {
  return Math.round(value * 1e6) / 1e6 + 0;
}
