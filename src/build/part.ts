import type { catalogue } from "../catalogue/catalogue.ts";
import type { Polygon } from "../geometry/polygon.ts";
import type { Rect } from "../geometry/rect.ts";
import type { Vec3 } from "../geometry/vector.ts";
import type { Span, SurfaceId } from "./surface.ts";

/** What a part does. The first group came with the box, the others are added. */
export type BoxRole = "corner fitting" | "post" | "rail" | "cross-member" | "skin" | "cargo door" | "bare floor" | "rest of the box";
export type AddedRole =
  | "opening frame"
  | "foam"
  | "stud" | "jamb stud" | "cripple stud" | "track" | "header" | "sill" | "blocking" | "corner angle"
  | "batt"
  | "furring"
  | "board"
  | "floor board"
  | "trim"
  | "article"
  | "item"
  | "coating";
export type Role = BoxRole | AddedRole;

/**
 * The form of a part on its surface.
 * - `bar`: a straight member of a section; runs along one axis of the surface over the part's whole extent.
 * - `panel`: flat, with its true outline (in u, v) and holes.
 * - `sheet`: corrugated; outline in u, v, with its developed area.
 * - `fill`: sprayed in place; volume includes the profile's troughs.
 * - `film`: a coat on an area.
 * - `block`: anything else, by its mass.
 */
export type Shape =
  | { readonly kind: "bar"; readonly runs: "u" | "v"; readonly length: number }
  | { readonly kind: "panel"; readonly outline: readonly Polygon[]; readonly area: number; readonly blank: Rect }
  | { readonly kind: "sheet"; readonly outline: readonly Polygon[]; readonly area: number; readonly developed: number }
  | { readonly kind: "fill"; readonly outline: readonly Polygon[]; readonly area: number; readonly troughs: number; readonly volume: number }
  | { readonly kind: "film"; readonly area: number; readonly thickness: number; readonly coat: number }
  | { readonly kind: "block" };

/** Where the stock of a part is looked up; none for items given by the job alone. */
export interface RowRef {
  readonly table: Exclude<keyof typeof catalogue, "materials" | "fasteners" | "sealants">;
  readonly id: string;
}

/** How a part's mass comes about; see mass.ts for the formulas. */
export type MassBasis =
  | { readonly by: "length"; readonly length: number; readonly massPerLength: number }
  | { readonly by: "area"; readonly area: number; readonly massPerArea: number }
  | { readonly by: "volume"; readonly volume: number; readonly density: number }
  | { readonly by: "given" };

export interface Part {
  /** Stable and readable: surface, role, number: "left/stud/3". */
  readonly id: string;
  readonly role: Role;
  readonly what: string;
  readonly surface: SurfaceId;
  /** Extent on the surface, metres. */
  readonly rect: Rect;
  /** Extent inward. */
  readonly depth: Span;
  readonly shape: Shape;
  readonly row: RowRef | undefined;
  /** Catalogue material; undefined for bought articles and items. */
  readonly material: string | undefined;
  readonly mass: number;
  readonly massBasis: MassBasis;
  /** Centre of mass in the world. */
  readonly centre: Vec3;
  /** True where the part comes off again before delivery; its mass is not in the finished box. */
  readonly temporary: boolean;
  /** Id of the opening, partition or item that it belongs to. */
  readonly of: string | undefined;
  /** Board layer counted from the studs, from 1; a partition's far side counts on after the near side. */
  readonly layer: number | undefined;
}

const BOX_ROLES: ReadonlySet<Role> = new Set<Role>([
  "corner fitting", "post", "rail", "cross-member", "skin", "cargo door", "bare floor", "rest of the box",
]);

/** True for what came with the box as bought. */
export function isBoxPart(part: Part): boolean {
  return BOX_ROLES.has(part.role);
}
