import { apply, defineFormula } from "../../working/formula.ts";
import { given, type Quantity } from "../../working/quantity.ts";
import { source, type Source } from "../../working/source.ts";
import { dewPoint } from "./saturation.ts";

const SURFACE = source("ISO 13788:2012", "memory", "temperature factor at the inside surface");

/** What an inside surface has to stay clear of: mould above 80 % humidity at it, condensation at 100 %. */
export type Criterion = "mould" | "condensation";

/**
 * Temperature factor of an inside surface: 0 at the outside air's temperature, 1 at the room's. Throws RangeError where
 * the room is not warmer than the outside.
 */
export const surfaceFactor = defineFormula({
  id: "moisture.surfaceFactor",
  symbol: "f_Rsi",
  means: "temperature factor of the inside surface",
  unit: "1",
  text: "(T_s - T_e) / (T_i - T_e)",
  takes: { T_s: "degC", T_e: "degC", T_i: "degC" },
  source: SURFACE,
  compute: ({ T_s, T_e, T_i }) => factor("surfaceFactor", T_s, T_e, T_i),
});

/** Temperature factor that a surface has to reach; above 1 where no insulation can do it. Domain as `surfaceFactor`. */
export const neededFactor = defineFormula({
  id: "moisture.neededFactor",
  symbol: "f_min",
  means: "least temperature factor of the inside surface",
  unit: "1",
  text: "(T_need - T_e) / (T_i - T_e)",
  takes: { T_need: "degC", T_e: "degC", T_i: "degC" },
  source: SURFACE,
  compute: ({ T_need, T_e, T_i }) => factor("neededFactor", T_need, T_e, T_i),
});

/** Temperature of a surface from its factor, °C. Holds for any two airs. */
export const surfaceTemperature = defineFormula({
  id: "moisture.surfaceTemperature",
  symbol: "T_s",
  means: "temperature of the inside surface",
  unit: "degC",
  text: "T_e + f_Rsi * (T_i - T_e)",
  takes: { T_e: "degC", f_Rsi: "1", T_i: "degC" },
  source: SURFACE,
  compute: ({ T_e, f_Rsi, T_i }) => T_e + f_Rsi * (T_i - T_e),
});

/** Relative humidity of the air at a surface; above 1 where vapour condenses on it. Throws RangeError where the saturation pressure is not above zero. */
export const surfaceHumidity = defineFormula({
  id: "moisture.surfaceHumidity",
  symbol: "phi_s",
  means: "relative humidity at the inside surface",
  unit: "1",
  text: "p_i / p_sat",
  takes: { p_i: "Pa", p_sat: "Pa" },
  source: SURFACE,
  compute: ({ p_i, p_sat }) => {
    if (!(p_sat > 0)) throw new RangeError(`moisture.surfaceHumidity: p_sat is ${p_sat} Pa and has to be above zero`);
    return p_i / p_sat;
  },
});

/** Saturation pressure that a surface needs so that the air at it stays under a humidity, Pa. Throws RangeError where the humidity is not above 0 and 1 at most. */
export const neededSaturation = defineFormula({
  id: "moisture.neededSaturation",
  symbol: "p_need",
  means: "least saturation pressure at the inside surface",
  unit: "Pa",
  text: "p_i / phi_max",
  takes: { p_i: "Pa", phi_max: "1" },
  source: SURFACE,
  compute: ({ p_i, phi_max }) => {
    if (!(phi_max > 0 && phi_max <= 1)) throw new RangeError(`moisture.neededSaturation: phi_max is ${phi_max} and has to be above 0 and 1 at most`);
    return p_i / phi_max;
  },
});

/** Greatest relative humidity of the air at a surface: 0.80 against mould, 1.00 against condensation. */
export function greatestSurfaceHumidity(criterion: Criterion): Quantity<"1"> {
  const { value, from } = LIMITS[criterion];
  return given(value, "1", "phi_max", `greatest relative humidity at the surface against ${criterion}`, { kind: "constant", source: from });
}

/**
 * Inside surface resistance that the temperature factor is judged with, m2K/W: 0.25 on walls, roofs and floors, where
 * furniture and corners hold the air still; 0.13 on windows and doors.
 */
export function resistanceForSurfaceFactor(on: "opaque" | "window or door"): Quantity<"m2K/W"> {
  const value = on === "opaque" ? 0.25 : 0.13;
  return given(value, "m2K/W", "R_si", `inside surface resistance for the temperature factor, ${on}`, { kind: "constant", source: SURFACE });
}

/** Inside air, its vapour and the outside temperature, as a surface meets them. */
export interface SurfaceAirs {
  readonly T_e: Quantity<"degC">;
  readonly T_i: Quantity<"degC">;
  readonly p_i: Quantity<"Pa">;
}

/**
 * The least temperature factor that keeps a surface clear of the criterion; undefined where the outside is as warm as the
 * room or warmer, so that no inside surface is colder than the room's air. Above 1 where the room's air itself is over the
 * limit; below 0 where even bare metal would do. Throws RangeError where there is no vapour at all.
 */
export function leastSurfaceFactor({ T_e, T_i, p_i }: SurfaceAirs, criterion: Criterion): Quantity<"1"> | undefined {
  if (T_e.value >= T_i.value) return undefined;
  const p = apply(neededSaturation, { p_i, phi_max: greatestSurfaceHumidity(criterion) });
  const T_need = { ...dewPoint(p, `least temperature of the inside surface against ${criterion}`), symbol: "T_need" };
  return apply(neededFactor, { T_need, T_e, T_i }, { means: `least temperature factor of the inside surface against ${criterion}` });
}

const LIMITS: Readonly<Record<Criterion, { readonly value: number; readonly from: Source }>> = {
  mould: { value: 0.8, from: source("ISO 13788:2012", "memory", "critical surface humidity against mould") },
  condensation: { value: 1, from: source("saturated air by definition", "derived") },
};

function factor(name: string, T: number, T_e: number, T_i: number): number {
  if (!(T_i > T_e)) throw new RangeError(`moisture.${name}: T_i is ${T_i} degC and has to be above T_e, ${T_e}`);
  return (T - T_e) / (T_i - T_e);
}
