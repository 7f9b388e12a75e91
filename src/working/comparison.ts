import type { Quantity } from "./quantity.ts";

/** The relation that has to hold for a pass. */
export type Relation = "<=" | ">=";

/** A decision as a step of a working: two quantities, the relation asked for, whether it holds, and by how much. */
export interface Comparison<U extends string = string> {
  readonly left: Quantity<U>;
  readonly relation: Relation;
  readonly right: Quantity<U>;
  readonly holds: boolean;
  /** Room left in the unit of both sides; negative where the relation does not hold. */
  readonly margin: number;
  /** How far the relation may be missed and still hold, in the unit of both sides. */
  readonly tolerance: number;
}

/**
 * Compares on unrounded numbers. `tolerance` (same unit, not negative) lets a relation hold at its limit in spite of the
 * last digits of floating arithmetic. Sides in different units are a compile error, and a RangeError where the compiler
 * cannot know; so is a tolerance below zero.
 */
export function compare<U extends string>(
  left: Quantity<U>,
  relation: Relation,
  right: Quantity<NoInfer<U>>,
  tolerance = 0,
): Comparison<U> {
  if (left.unit !== right.unit) {
    throw new RangeError(`${left.symbol} in ${left.unit} cannot be compared with ${right.symbol} in ${right.unit}`);
  }
  if (!(tolerance >= 0)) throw new RangeError(`tolerance of ${left.symbol} ${relation} ${right.symbol} is ${tolerance}`);
  const margin = relation === "<=" ? right.value - left.value : left.value - right.value;
  return { left, relation, right, holds: margin >= -tolerance, margin, tolerance };
}
