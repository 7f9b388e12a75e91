import { apply, defineFormula } from "../working/formula.ts";
import { given, type Quantity } from "../working/quantity.ts";
import { source } from "../working/source.ts";
import { nth } from "./moisture/nth.ts";
import { MONTH_DAYS, SECONDS_PER_DAY } from "./months.ts";

const MONTHLY = source("degree days from monthly means", "practice", "days within a month are taken as alike");

/** Degree days of one month, K d: none where its mean is at the base or above. Throws RangeError where there is no day. */
export const monthDegreeDays = defineFormula({
  id: "degreeDays.monthDegreeDays",
  symbol: "D_month",
  means: "heating degree days of a month",
  unit: "K d",
  text: "max(0, T_base - T_month) * n_day",
  takes: { T_base: "degC", T_month: "degC", n_day: "1" },
  source: MONTHLY,
  compute: ({ T_base, T_month, n_day }) => {
    if (!(n_day > 0)) throw new RangeError(`degreeDays.monthDegreeDays: n_day is ${n_day} and has to be above zero`);
    return Math.max(0, T_base - T_month) * n_day;
  },
});

/** Degree days of a year, K d. */
export const yearDegreeDays = defineFormula({
  id: "degreeDays.yearDegreeDays",
  symbol: "D_year",
  means: "heating degree days of a year",
  unit: "K d",
  text: "sum(D_month)",
  takes: { D_month: "K d[]" },
  source: MONTHLY,
  compute: ({ D_month }) => D_month.reduce((sum, one) => sum + one, 0),
});

/** Heat that a year of degree days takes from a building, J; sun, people and equipment give nothing. Throws RangeError where an input is below zero. */
export const yearlyHeat = defineFormula({
  id: "degreeDays.yearlyHeat",
  symbol: "E_heat",
  means: "heat needed in a year, without gains",
  unit: "J",
  text: "86400 * H_loss * D_year",
  takes: { H_loss: "W/K", D_year: "K d" },
  source: source("steady heat loss over the days of a year", "derived"),
  compute: ({ H_loss, D_year }) => {
    if (!(H_loss >= 0)) throw new RangeError(`degreeDays.yearlyHeat: H_loss is ${H_loss} W/K and may not be below zero`);
    if (!(D_year >= 0)) throw new RangeError(`degreeDays.yearlyHeat: D_year is ${D_year} K d and may not be below zero`);
    return SECONDS_PER_DAY * H_loss * D_year;
  },
});

/**
 * Heating degree days of a year from twelve monthly means, January first, K d: a first figure. It errs low in months whose
 * mean is near the base, because warm days count against cold ones. Throws RangeError where there are not twelve months.
 */
export function degreeDaysOf(means: readonly Quantity<"degC">[], T_base: Quantity<"degC">): Quantity<"K d"> {
  if (means.length !== MONTH_DAYS.length) throw new RangeError(`degreeDaysOf: means are ${means.length} and have to be twelve`);
  const calendar = { kind: "constant", source: source("calendar, no leap year", "derived") } as const;
  const D_month = means.map((T_month, month) => {
    const n_day = given(nth(MONTH_DAYS, month), "1", "n_day", "days of the month", calendar);
    return apply(monthDegreeDays, { T_base, T_month, n_day });
  });
  return apply(yearDegreeDays, { D_month });
}
