import type { Build } from "../../build/build.ts";
import { eccentricity, eccentricityShare } from "../../physics/rigidBody.ts";
import { apply } from "../../working/formula.ts";
import { given, type Quantity } from "../../working/quantity.ts";
import type { Weighed } from "./weigh.ts";
import { fromRow } from "../fromRow.ts";

/** How far the centre of mass lies off the middle in one direction. */
export interface Offset {
  readonly way: "along" | "across";
  readonly toward: string;
  /** Positive toward the door end, or toward the right. */
  readonly eccentricity: Quantity<"m">;
  readonly share: Quantity<"1">;
}

export interface OffCentre {
  readonly along: Offset;
  readonly across: Offset;
}

/** Eccentricity along and across, measured from the middle of the box's outside. */
export function offCentre({ box }: Build, { centre }: Weighed): OffCentre {
  return {
    along: offset("along", centre.x, size(box.outside.length, "length"), ["toward the blind end", "toward the door end"]),
    across: offset("across", centre.y, size(box.outside.width, "width"), ["toward the left", "toward the right"]),
  };

  function size(value: number, field: "length" | "width"): Quantity<"m"> {
    return given(value, "m", "L_e", `outside ${field}`, fromRow(`boxes/${box.id}`, `outside.${field}`, box.outside.source));
  }
}

function offset(way: Offset["way"], at: Quantity<"m">, whole: Quantity<"m">, sides: readonly [string, string]): Offset {
  const e_cm = apply(eccentricity, { x_cm: at, L_e: whole }, { means: `centre of mass off the middle ${way}` });
  return {
    way,
    toward: e_cm.value < 0 ? sides[0] : sides[1],
    eccentricity: e_cm,
    share: apply(eccentricityShare, { e_cm, L_e: whole }, { means: `eccentricity ${way} as a share of the outside size` }),
  };
}
