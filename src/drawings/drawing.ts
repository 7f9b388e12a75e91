import type { Vec2 } from "../geometry/vector.ts";

/** Drawing layers: what is drawn, not how. Line weight and look are in style.ts. */
export const LAYERS = [
  "outline", "frame", "skin", "foam", "batts", "studs", "furring", "boards", "seams", "openings", "swing", "trim", "articles", "items",
  "clear-space", "dimensions", "text", "origin", "hidden", "section-cut", "sheet",
] as const;
export type Layer = (typeof LAYERS)[number];

/** Model shapes in metres, x to the right, y up, as the viewer sees the view. */
export type DrawnShape =
  | { readonly kind: "line"; readonly layer: Layer; readonly from: Vec2; readonly to: Vec2; readonly dashed?: boolean }
  | { readonly kind: "polyline"; readonly layer: Layer; readonly points: readonly Vec2[]; readonly closed: boolean; readonly filled?: boolean; readonly dashed?: boolean }
  | { readonly kind: "circle"; readonly layer: Layer; readonly centre: Vec2; readonly radius: number }
  | { readonly kind: "arc"; readonly layer: Layer; readonly centre: Vec2; readonly radius: number; readonly from: number; readonly to: number }
  /** `height` of a capital on paper, metres; `at` in the model, on the baseline; `turned` reads upward. */
  | { readonly kind: "text"; readonly layer: Layer; readonly at: Vec2; readonly text: string; readonly height: number; readonly align: "left" | "middle" | "right"; readonly turned?: boolean };

/** A row of dimensions between points on one line, with its text already in the job's units. */
export interface DimensionChain {
  readonly direction: "across" | "up";
  /** Model positions along the direction, in order. */
  readonly stops: readonly number[];
  /** Text of each stretch, one fewer than the stops. */
  readonly texts: readonly string[];
  /** Which side of the view it stands on and in which row, 1 nearest the view. */
  readonly side: "below" | "above" | "left" | "right";
  readonly row: number;
  /** What the chain measures, for its label: "from post", "from blind end". */
  readonly label?: string;
  /** True where every text is the distance from the first stop, the origin, rather than the length of its stretch. */
  readonly running?: boolean;
}

/** One view. */
export interface View {
  readonly id: string;
  readonly title: string;
  readonly extent: { readonly min: Vec2; readonly max: Vec2 };
  readonly shapes: readonly DrawnShape[];
  readonly dimensions: readonly DimensionChain[];
}

/** A table on a sheet: the opening schedule, the layers of a build-up. */
export interface ScheduleTable {
  readonly title: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** A drawing: one or more views and tables that belong on one sheet. */
export interface Drawing {
  readonly id: string;
  readonly number: string;
  readonly title: string;
  readonly views: readonly View[];
  readonly tables: readonly ScheduleTable[];
  readonly notes: readonly string[];
}
