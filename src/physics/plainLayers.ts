import { defineFormula } from "../working/formula.ts";
import { given, type Quantity } from "../working/quantity.ts";
import { source, type Source } from "../working/source.ts";

/** Which way heat goes through a face in the season that decides. */
export type HeatFlow = "up" | "horizontal" | "down";

const ISO_6946 = source("ISO 6946:2017", "memory", "plane layers of uniform thickness");
const TABLE_HORIZONTAL = source("Scottish Government, Tables of U-values and thermal conductivity, 6.B.2, after ISO 6946", "seen");
const TABLE = source("ISO 6946:2017", "memory", "table of conventional surface resistances");

/**
 * Resistance between the inside surface and the room by the direction of heat flow, m2K/W: 0.10 up, 0.13 level,
 * 0.17 down. Holds for plain surfaces of high emissivity.
 */
export function insideSurfaceResistance(flow: HeatFlow): Quantity<"m2K/W"> {
  const row = INSIDE[flow];
  return given(row.value, "m2K/W", "R_si", `inside surface resistance, heat flow ${flow}`, { kind: "constant", source: row.source });
}

/** Resistance between the outside surface and the air in wind, m2K/W: 0.04 in every direction. */
export function outsideSurfaceResistance(): Quantity<"m2K/W"> {
  return given(0.04, "m2K/W", "R_se", "outside surface resistance", { kind: "constant", source: TABLE_HORIZONTAL });
}

/** Resistance of one plain layer, m2K/W. Throws RangeError where thickness is below zero or conductivity not above it. */
export const layerResistance = defineFormula({
  id: "plainLayers.layerResistance",
  symbol: "R_layer",
  means: "thermal resistance of a layer",
  unit: "m2K/W",
  text: "d / lambda",
  takes: { d: "m", lambda: "W/(m K)" },
  source: ISO_6946,
  compute: ({ d, lambda }) => {
    if (!(d >= 0)) throw new RangeError(`plainLayers.layerResistance: d is ${d} m and may not be below zero`);
    if (!(lambda > 0)) throw new RangeError(`plainLayers.layerResistance: lambda is ${lambda} W/(m K) and has to be above zero`);
    return d / lambda;
  },
});

/** Resistance from air to air through plain layers in series, m2K/W. */
export const totalResistance = defineFormula({
  id: "plainLayers.totalResistance",
  symbol: "R_tot",
  means: "thermal resistance from air to air",
  unit: "m2K/W",
  text: "R_si + sum(R_layer) + R_se",
  takes: { R_si: "m2K/W", R_layer: "m2K/W[]", R_se: "m2K/W" },
  source: ISO_6946,
  compute: ({ R_si, R_layer, R_se }) => R_si + R_layer.reduce((total, layer) => total + layer, 0) + R_se,
});

/** Heat flow for each square metre and kelvin, W/(m2 K). Throws RangeError where the resistance is not above zero. */
export const transmittance = defineFormula({
  id: "plainLayers.transmittance",
  symbol: "U",
  means: "thermal transmittance",
  unit: "W/(m2 K)",
  text: "1 / R_tot",
  takes: { R_tot: "m2K/W" },
  source: ISO_6946,
  compute: ({ R_tot }) => {
    if (!(R_tot > 0)) throw new RangeError(`plainLayers.transmittance: R_tot is ${R_tot} m2K/W and has to be above zero`);
    return 1 / R_tot;
  },
});

/** Mean thickness of a fill, m. Throws RangeError where the area is not above zero. */
export const meanThickness = defineFormula({
  id: "plainLayers.meanThickness",
  symbol: "d_mean",
  means: "mean thickness",
  unit: "m",
  text: "V / A",
  takes: { V: "m3", A: "m2" },
  source: source("volume over area", "derived"),
  compute: ({ V, A }) => {
    if (!(A > 0)) throw new RangeError(`plainLayers.meanThickness: A is ${A} m2 and has to be above zero`);
    return V / A;
  },
});

const INSIDE: Readonly<Record<HeatFlow, { readonly value: number; readonly source: Source }>> = {
  up: { value: 0.1, source: TABLE },
  horizontal: { value: 0.13, source: TABLE_HORIZONTAL },
  down: { value: 0.17, source: TABLE },
};
