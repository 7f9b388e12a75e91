import type { Build } from "../../../build/build.ts";
import { pathText } from "../../../job/path.ts";
import { degreeDaysOf, yearlyHeat } from "../../../physics/degreeDays.ts";
import { apply } from "../../../working/formula.ts";
import { given, type Quantity } from "../../../working/quantity.ts";
import { MONTHS } from "../moisture/rooms.ts";

/** What a year takes to keep a box warm. */
export interface YearlyHeat {
  readonly heat: Quantity<"J">;
  readonly degreeDays: Quantity<"K d">;
  /** Temperature of the warmest room. */
  readonly base: Quantity<"degC">;
}

/** The heat of a year by monthly means, for a box that loses H for each kelvin; undefined where no room is heated or no month is stated. */
export function yearlyHeatOf({ job }: Build, H_loss: Quantity<"W/K">): YearlyHeat | undefined {
  const { monthly } = job.site;
  const heated = job.rooms.flatMap(({ heatTo, what }, index) => (heatTo === undefined ? [] : [{ heatTo, what, index }]));
  const warmest = heated.toSorted((a, b) => b.heatTo - a.heatTo)[0];
  if (monthly === undefined || warmest === undefined) return undefined;
  const means = monthly.map(({ temperature }, at) =>
    given(temperature, "degC", "T_month", `mean temperature outdoors, ${MONTHS[at]}`, { kind: "job", path: pathText(["site", "monthly", at, "temperature"]) }),
  );
  const base = given(warmest.heatTo, "degC", "T_base", `temperature of the warmest room, ${warmest.what}`, { kind: "job", path: pathText(["rooms", warmest.index, "heatTo"]) });
  const degreeDays = degreeDaysOf(means, base);
  return { heat: apply(yearlyHeat, { H_loss, D_year: degreeDays }), degreeDays, base };
}
