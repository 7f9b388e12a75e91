import type { ProfileRow } from "../catalogue/rows.ts";
import type { Rect } from "../geometry/rect.ts";
import type { Vec3 } from "../geometry/vector.ts";
import type { FaceId } from "../job/job.ts";

/** A face of the box or a partition, by the partition's own id. */
export type SurfaceId = FaceId | (string & {});

/** A stretch along one axis, from < to, metres. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/** Where each layer lies behind the inside plane (w, metres inward); undefined where the build-up has none. */
export interface Stack {
  readonly foam: Span | undefined;
  readonly studs: Span | undefined;
  /** Between the studs, flush with their inner surface. */
  readonly batts: Span | undefined;
  /** Furring that stays; temporary furring takes no room in the stack. */
  readonly furring: Span | undefined;
  /** The plane that carries the boards. */
  readonly boardPlane: number;
  readonly boards: readonly Span[];
  /** The finished face. */
  readonly finished: number;
}

/**
 * A flat frame of reference. World axes: x from the outer blind end toward the doors, y from the outer left side to the
 * right, z up from the bare floor.
 *
 * On a wall u is *along* (from the left-hand corner post's inner edge as seen from outside), v is *up* from the bare
 * floor, w is inward from the inside plane. On floor and roof u is *along* from the blind end's inside plane, v is
 * *across* from the left wall's inside plane, w is into the room. A partition reads as the door end does, seen from the
 * door end: u from the left wall's inside plane, w toward the blind end from the middle of its studs.
 */
export interface Surface {
  readonly id: SurfaceId;
  readonly kind: "face" | "partition";
  /** In words: "left wall", "roof", "partition P1". */
  readonly name: string;
  /** World position of u = v = w = 0. */
  readonly origin: Vec3;
  /** Unit vectors of u, v and w in the world. */
  readonly along: Vec3;
  readonly up: Vec3;
  readonly inward: Vec3;
  /** The inside plane between the neighbours' inside planes; for a partition, between the finished walls. */
  readonly inside: Rect;
  /** The whole face as seen from outside, corner fittings included. */
  readonly outside: Rect;
  /** The sheet between posts and rails (both cargo door leaves at the door end; the bare floor). */
  readonly panel: Rect;
  /** The sheet's profile along u, starting with a whole outer flat at panel.u0; none on doors, floor and partitions. */
  readonly profile: ProfileRow | undefined;
  /** Distance from the inside plane out to the outermost plane of the sheet. */
  readonly skinDepth: number;
  readonly stack: Stack;
  /** Boards on the far side of a partition's studs (w above zero, toward the blind end). */
  readonly farStack: Stack | undefined;
  /** Layers on the inside of the cargo door leaves, at the door end only; a framed wall stands inside of them. */
  readonly leafStack: Stack | undefined;
  /** What is left to see when finished: the lined face between its finished neighbours. */
  readonly lined: Rect;
}

/** The surface of that id. Throws RangeError where there is none. */
export function findSurface(surfaces: readonly Surface[], id: SurfaceId): Surface {
  const found = surfaces.find((surface) => surface.id === id);
  if (found === undefined) throw new RangeError(`there is no surface ${id}`);
  return found;
}

/** World position of a point on a surface. */
export function toWorld(surface: Surface, u: number, v: number, w: number): Vec3 {
  const { origin, along, up, inward } = surface;
  return {
    x: origin.x + along.x * u + up.x * v + inward.x * w,
    y: origin.y + along.y * u + up.y * v + inward.y * w,
    z: origin.z + along.z * u + up.z * v + inward.z * w,
  };
}

/** A block in the world, sides along its axes. */
export interface Block {
  readonly from: Vec3;
  readonly to: Vec3;
}

/** The block that a rectangle over a depth fills in the world. */
export function blockOf(surface: Surface, rect: Rect, depth: Span): Block {
  const a = toWorld(surface, rect.u0, rect.v0, depth.from);
  const b = toWorld(surface, rect.u1, rect.v1, depth.to);
  return {
    from: { x: Math.min(a.x, b.x), y: Math.min(a.y, b.y), z: Math.min(a.z, b.z) },
    to: { x: Math.max(a.x, b.x), y: Math.max(a.y, b.y), z: Math.max(a.z, b.z) },
  };
}

/** A block of the world as it lies on a surface. */
export function rectOnSurface(surface: Surface, { from, to }: Block): { readonly rect: Rect; readonly depth: Span } {
  const { origin } = surface;
  const on = (axis: Vec3): Span => {
    const a = (from.x - origin.x) * axis.x + (from.y - origin.y) * axis.y + (from.z - origin.z) * axis.z;
    const b = (to.x - origin.x) * axis.x + (to.y - origin.y) * axis.y + (to.z - origin.z) * axis.z;
    return { from: Math.min(a, b), to: Math.max(a, b) };
  };
  const u = on(surface.along);
  const v = on(surface.up);
  return { rect: { u0: u.from, u1: u.to, v0: v.from, v1: v.to }, depth: on(surface.inward) };
}
