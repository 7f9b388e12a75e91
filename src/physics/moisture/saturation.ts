import { apply, defineFormula } from "../../working/formula.ts";
import type { Quantity } from "../../working/quantity.ts";
import { source } from "../../working/source.ts";

const FITS = source("ISO 13788:2012", "memory", "saturation pressure by temperature, and its inverse");
const COLDEST = -120;
const HOTTEST = 100;
/** Ice is there up to the triple point. */
const TRIPLE_POINT = 0.01;
/** Both fits give this at 0 °C, Pa. */
const AT_ZERO = 610.5;

/** Saturation pressure above water, Pa, for 0 to 100 °C. Throws RangeError outside. */
export const saturationAboveWater = defineFormula({
  id: "moisture.saturationAboveWater",
  symbol: "p_sat",
  means: "saturation pressure above water",
  unit: "Pa",
  text: "610.5 * exp(17.269 * T / (237.3 + T))",
  takes: { T: "degC" },
  source: FITS,
  compute: ({ T }) => {
    if (!(T >= 0 && T <= HOTTEST)) throw new RangeError(`moisture.saturationAboveWater: T is ${T} degC and has to be 0 to ${HOTTEST}`);
    return AT_ZERO * Math.exp((17.269 * T) / (237.3 + T));
  },
});

/** Saturation pressure above ice, Pa, for -120 to 0.01 °C; reads 0.6 % low at -20, 1 % at -30, 2 % at -40 °C. Throws RangeError outside. */
export const saturationAboveIce = defineFormula({
  id: "moisture.saturationAboveIce",
  symbol: "p_sat",
  means: "saturation pressure above ice",
  unit: "Pa",
  text: "610.5 * exp(21.875 * T / (265.5 + T))",
  takes: { T: "degC" },
  source: FITS,
  compute: ({ T }) => {
    if (!(T >= COLDEST && T <= TRIPLE_POINT)) {
      throw new RangeError(`moisture.saturationAboveIce: T is ${T} degC and has to be ${COLDEST} to ${TRIPLE_POINT}`);
    }
    return AT_ZERO * Math.exp((21.875 * T) / (265.5 + T));
  },
});

/** Temperature at which air of a vapour pressure is saturated above water, °C. Throws RangeError below 610.5 Pa and above 100 °C. */
export const dewPointAboveWater = defineFormula({
  id: "moisture.dewPointAboveWater",
  symbol: "T_dew",
  means: "dew point above water",
  unit: "degC",
  text: "237.3 * ln(p / 610.5) / (17.269 - ln(p / 610.5))",
  takes: { p: "Pa" },
  source: FITS,
  compute: ({ p }) => {
    if (!(p >= AT_ZERO)) throw new RangeError(`moisture.dewPointAboveWater: p is ${p} Pa and has to be ${AT_ZERO} or more`);
    const T = (237.3 * Math.log(p / AT_ZERO)) / (17.269 - Math.log(p / AT_ZERO));
    if (!(T >= 0 && T <= HOTTEST)) throw new RangeError(`moisture.dewPointAboveWater: p is ${p} Pa, which is saturated above ${HOTTEST} degC`);
    return T;
  },
});

/** Temperature at which air of a vapour pressure is saturated above ice, °C. Throws RangeError above 610.5 Pa and below -120 °C. */
export const dewPointAboveIce = defineFormula({
  id: "moisture.dewPointAboveIce",
  symbol: "T_dew",
  means: "frost point above ice",
  unit: "degC",
  text: "265.5 * ln(p / 610.5) / (21.875 - ln(p / 610.5))",
  takes: { p: "Pa" },
  source: FITS,
  compute: ({ p }) => {
    if (!(p > 0 && p <= AT_ZERO)) throw new RangeError(`moisture.dewPointAboveIce: p is ${p} Pa and has to be above 0 and ${AT_ZERO} at most`);
    const T = (265.5 * Math.log(p / AT_ZERO)) / (21.875 - Math.log(p / AT_ZERO));
    if (!(T >= COLDEST)) throw new RangeError(`moisture.dewPointAboveIce: p is ${p} Pa, which is saturated below ${COLDEST} degC`);
    return T;
  },
});

/** Vapour pressure of air from its relative humidity, Pa. Throws RangeError where the humidity is not 0 to 1. */
export const vapourPressure = defineFormula({
  id: "moisture.vapourPressure",
  symbol: "p_v",
  means: "vapour pressure",
  unit: "Pa",
  text: "phi * p_sat",
  takes: { phi: "1", p_sat: "Pa" },
  source: source("relative humidity by definition", "derived"),
  compute: ({ phi, p_sat }) => {
    if (!(phi >= 0 && phi <= 1)) throw new RangeError(`moisture.vapourPressure: phi is ${phi} and has to be 0 to 1`);
    return phi * p_sat;
  },
});

/** Saturation pressure, Pa: above water from 0 °C up, above ice below; the formula used says which. -120 to 100 °C. */
export function saturationPressure(T: Quantity<"degC">, means?: string): Quantity<"Pa"> {
  const named = means === undefined ? {} : { means };
  return apply(T.value >= 0 ? saturationAboveWater : saturationAboveIce, { T }, named);
}

/** Dew point, °C: above water from 610.5 Pa up, above ice below; the formula used says which. Above 0 Pa. */
export function dewPoint(p: Quantity<"Pa">, means?: string): Quantity<"degC"> {
  const named = means === undefined ? {} : { means };
  return apply(p.value >= AT_ZERO ? dewPointAboveWater : dewPointAboveIce, { p }, named);
}

/** `saturationPressure` on a plain number, for solvers. */
export function saturationAt(T: number): number {
  return T >= 0 ? saturationAboveWater.compute({ T }) : saturationAboveIce.compute({ T });
}
