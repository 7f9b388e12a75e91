import type { RowRef } from "../build/part.ts";
import type { Quantity } from "../working/quantity.ts";

export type TakeoffGroup =
  | "box" | "steel" | "framing" | "foam" | "batts" | "boards" | "floor" | "coatings" | "openings" | "items" | "fasteners" | "sealants";

/** One thing to have: how much is in the box, and how much has to be bought in whole stock. */
export interface TakeoffLine {
  readonly id: string;
  readonly group: TakeoffGroup;
  readonly what: string;
  /** Catalogue row; undefined for items that the job alone describes. */
  readonly row: { readonly table: RowRef["table"] | "fasteners" | "sealants"; readonly id: string } | undefined;
  /** Net, in SI, with its working back to the parts. */
  readonly net: Quantity;
  /** The same in other units of the trade, or what it takes: board feet, passes, liquid volume, pieces. */
  readonly also: readonly Quantity[];
  /**
   * To be bought: whole bars, sheets, packs, sets, in the unit that it is sold by. `holds` is what one of them holds where it
   * is priced by that: metres of a bar, m2 of a sheet, m3 of a can.
   */
  readonly buy: { readonly count: Quantity<"1">; readonly unit: string; readonly each: string; readonly holds?: Quantity };
  readonly parts: readonly string[];
}

/** A bar or board piece to be cut. */
export interface CutPiece {
  readonly label: string;
  readonly part: string;
  readonly row: string;
  readonly what: string;
  readonly length: number;
  /** Undefined for bars. */
  readonly width?: number;
  /** Holes and notches. */
  readonly cuts: number;
  /** Pieces of one row with the same sizes (to a tenth of a millimetre) and cuts share a bundle. */
  readonly bundle: string;
  /** Which bought bar or sheet it is cut from, from 1 within row and stock size, with its stock size. */
  readonly from: { readonly number: number; readonly length: number; readonly width?: number };
}

export interface Takeoff {
  readonly lines: readonly TakeoffLine[];
  readonly cutList: readonly CutPiece[];
}
