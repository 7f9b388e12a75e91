import type { BoxRow } from "../catalogue/rows.ts";
import type { Rect } from "../geometry/rect.ts";
import type { Vec3 } from "../geometry/vector.ts";
import type { Job, Opening, Room } from "../job/job.ts";
import type { Part } from "./part.ts";
import { findSurface, type Span, type Surface, type SurfaceId } from "./surface.ts";

/** An opening in its place on a surface, all in the surface's u and v. */
export interface PlacedOpening {
  readonly opening: Opening;
  readonly surface: Surface;
  /** Clear opening inside the frame. */
  readonly clear: Rect;
  /** Hole in the skin: the outside of the welded frame; the clear opening where there is none. */
  readonly hole: Rect;
  /** Hole in the lining and between the jamb studs. */
  readonly lining: Rect;
  /** True where jamb studs, header and sill stand around it. */
  readonly framed: boolean;
  /** What each leaf sweeps, in the world's plan; none where nothing swings. */
  readonly sweeps: readonly Sweep[];
}

/** A leaf's sweep in plan: a sector around the hinge from `from` to `to` (radians, counter-clockwise from +x). */
export interface Sweep {
  readonly hinge: Vec3;
  readonly radius: number;
  readonly from: number;
  readonly to: number;
  readonly height: number;
  /** True where the leaf swings over the floor of the box. */
  readonly inside: boolean;
}

/** A room between two partitions or ends. Extents between finished faces, world. */
export interface PlacedRoom {
  readonly room: Room | undefined;
  readonly name: string;
  readonly x: Span;
  readonly y: Span;
  readonly z: Span;
}

/** The supports that board seams may fall on, kept for checks and drawings. */
export interface Framing {
  readonly surface: SurfaceId;
  /** Lines in u that run over the whole height on studs, headers, sills or openings. */
  readonly seamLines: readonly number[];
}

/** Something that could not be built as asked; the checks turn it into findings. */
export type Snag =
  /** An opening that cuts a track leaves none to carry its header, or its sill. */
  | { readonly kind: "no header room"; readonly surface: SurfaceId; readonly opening: string }
  | { readonly kind: "jamb left out"; readonly surface: SurfaceId; readonly opening: string }
  | { readonly kind: "stagger lost"; readonly surface: SurfaceId; readonly layer: number; readonly seam: number }
  | { readonly kind: "no seam line"; readonly surface: SurfaceId; readonly layer: number; readonly from: number };

/** The build: every part, placed. */
export interface Build {
  readonly job: Job;
  readonly box: BoxRow;
  /** Six faces first, then partitions from the blind end. */
  readonly surfaces: readonly Surface[];
  readonly openings: readonly PlacedOpening[];
  readonly rooms: readonly PlacedRoom[];
  readonly framings: readonly Framing[];
  readonly parts: readonly Part[];
  readonly snags: readonly Snag[];
}

/** The surface by id. Throws RangeError where the build has none. */
export function surfaceOf(build: Build, id: SurfaceId): Surface {
  return findSurface(build.surfaces, id);
}

/** Mass of the box as bought, from its plate or the catalogue. */
export function tareOf(build: Build): number {
  return build.job.box.tare ?? build.box.mass.tare;
}

/** Greatest gross mass, from the plate or the catalogue. */
export function greatestGrossOf(build: Build): number {
  return build.job.box.greatestGross ?? build.box.mass.greatestGross;
}
