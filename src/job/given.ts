import type { SiUnit } from "../units/kinds.ts";
import { given } from "../working/quantity.ts";
import type { Quantity } from "../working/quantity.ts";

/**
 * A quantity that the job gives: its SI value with the path of the field, for example `openings[2].at.up`.
 * Throws RangeError where the value is not a finite number.
 */
export function fromJob<U extends SiUnit>(value: number, unit: U, symbol: string, means: string, path: string): Quantity<U> {
  return given(value, unit, symbol, means, { kind: "job", path });
}
