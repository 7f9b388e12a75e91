import type { Rect } from "../../geometry/rect.ts";
import type { DrawnShape } from "../drawing.ts";

/** A sheet as shapes on paper: metres, from the paper's lower left corner. */
export interface LaidSheet {
  readonly number: string;
  readonly title: string;
  /** Name of the paper: "A3", "11 × 17 in". */
  readonly paper: string;
  readonly width: number;
  readonly height: number;
  /** Nothing is drawn outside the frame. */
  readonly frame: Rect;
  /** Scale 1 : ratio of its views; undefined on a sheet of tables. */
  readonly ratio: number | undefined;
  readonly shapes: readonly DrawnShape[];
}
