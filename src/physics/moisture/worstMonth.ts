import type { Quantity } from "../../working/quantity.ts";
import type { Airs } from "./insideAir.ts";
import { leastSurfaceFactor, type Criterion } from "./surface.ts";

/** A month and the temperature factor that it asks of inside surfaces. */
export interface MonthNeed {
  /** 0 for January. */
  readonly month: number;
  readonly airs: Airs;
  readonly factor: Quantity<"1">;
}

/**
 * What every month asks of inside surfaces, in the order of the year; months in which the outside is as warm as the room
 * ask nothing and are left out. Throws RangeError where there are not twelve months.
 */
export function monthlyNeeds(months: readonly Airs[], criterion: Criterion): readonly MonthNeed[] {
  if (months.length !== 12) throw new RangeError(`monthlyNeeds: months are ${months.length} and have to be twelve`);
  return months.flatMap((airs, month) => {
    const factor = leastSurfaceFactor(airs, criterion);
    return factor === undefined ? [] : [{ month, airs, factor }];
  });
}

/** The month that asks most, the earlier one where two ask the same; undefined where no month asks anything. */
export function worstMonth(months: readonly Airs[], criterion: Criterion): MonthNeed | undefined {
  return monthlyNeeds(months, criterion).reduce<MonthNeed | undefined>(
    (worst, one) => (worst !== undefined && worst.factor.value >= one.factor.value ? worst : one),
    undefined,
  );
}
