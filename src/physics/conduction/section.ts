import type { Polygon } from "../../geometry/polygon.ts";
import type { Rect } from "../../geometry/rect.ts";
import type { Vec2 } from "../../geometry/vector.ts";

/**
 * A plane cut through a construction, the same along the third axis. Metres; x runs along the face, y inward.
 *
 * Regions cover each other in order, the last on top. What no region covers is of no material and holds no air: nothing
 * passes there. The window's edges and every edge to such a void are adiabatic.
 */
export interface Section {
  readonly window: Rect;
  readonly regions: readonly Region[];
  readonly sheets: readonly Sheet[];
  readonly airs: readonly Air[];
}

/** Edges run along x or y, or slope straight through the section as a folded sheet does. */
export interface Region {
  readonly what: string;
  readonly outline: Polygon;
  readonly fill: Fill;
}

export type Fill =
  /** W/(m K), above zero; of an enclosed gap the equivalent conductivity. */
  | { readonly kind: "solid"; readonly conductivity: number }
  /** Well mixed air of that id; where it meets a solid or a sheet, heat passes by the air's surface resistance. */
  | { readonly kind: "air"; readonly air: string };

/**
 * A sheet so thin that its temperature is the same over its thickness: it conducts along its line alone. On an edge of the
 * window that is a line of symmetry it is given half its thickness.
 */
export interface Sheet {
  readonly what: string;
  readonly points: readonly Vec2[];
  readonly conductivity: number;
  readonly thickness: number;
}

/** Air along a part of the boundary. Airs of one environment share its temperature. */
export interface Air {
  readonly id: string;
  readonly environment: string;
  /** m2K/W, above zero; 1e-9 stands for a prescribed temperature. */
  readonly resistance: number;
}
