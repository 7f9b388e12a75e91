import { usPerm } from "../../units/factors.ts";
import { defineFormula } from "../../working/formula.ts";
import { given, type Quantity } from "../../working/quantity.ts";
import { source } from "../../working/source.ts";

/**
 * A plain layer on the way of heat and vapour. Thickness in m, conductivity in W/(m K); vapour by the resistance factor
 * mu, null where nothing passes, or by the thickness of still air that resists as much, m.
 */
export type VapourLayer = {
  readonly what: string;
  readonly thickness: number;
  readonly conductivity: number;
} & ({ readonly mu: number | null } | { readonly airThickness: number });

const DIFFUSION = source("ISO 13788:2012", "memory", "vapour diffusion through layers");

/** Permeability of still air, kg/(m s Pa). */
export const AIR_PERMEABILITY: Quantity<"kg/(s m Pa)"> = given(2e-10, "kg/(s m Pa)", "delta_0", "vapour permeability of still air", {
  kind: "constant",
  source: DIFFUSION,
});

/** Thickness of still air that resists vapour as a layer does, m. Throws RangeError where thickness is not above zero or the factor is below 1. */
export const equivalentAir = defineFormula({
  id: "moisture.equivalentAir",
  symbol: "s_d",
  means: "thickness of still air that resists vapour as much",
  unit: "m",
  text: "mu * d",
  takes: { mu: "1", d: "m" },
  source: DIFFUSION,
  compute: ({ mu, d }) => {
    if (!(d > 0)) throw new RangeError(`moisture.equivalentAir: d is ${d} m and has to be above zero`);
    if (!(mu >= 1)) throw new RangeError(`moisture.equivalentAir: mu is ${mu} and may not be below 1`);
    return mu * d;
  },
});

/** Vapour permeance of a layer, kg/(s m2 Pa). Throws RangeError where its equivalent thickness of air is not above zero. */
export const layerPermeance = defineFormula({
  id: "moisture.layerPermeance",
  symbol: "W_v",
  means: "vapour permeance of a layer",
  unit: "kg/(s m2 Pa)",
  text: "delta_0 / s_d",
  takes: { delta_0: "kg/(s m Pa)", s_d: "m" },
  source: DIFFUSION,
  compute: ({ delta_0, s_d }) => {
    if (!(s_d > 0)) throw new RangeError(`moisture.layerPermeance: s_d is ${s_d} m and has to be above zero`);
    return delta_0 / s_d;
  },
});

/** Vapour that passes a stretch between two vapour pressures, kg/(s m2), above zero toward the second. Domain as `layerPermeance`. */
export const vapourFlow = defineFormula({
  id: "moisture.vapourFlow",
  symbol: "g_v",
  means: "vapour that passes for each second and square metre",
  unit: "kg/(s m2)",
  text: "delta_0 * ((p_1 - p_2) / s_d)",
  takes: { delta_0: "kg/(s m Pa)", p_1: "Pa", p_2: "Pa", s_d: "m" },
  source: DIFFUSION,
  compute: ({ delta_0, p_1, p_2, s_d }) => {
    if (!(s_d > 0)) throw new RangeError(`moisture.vapourFlow: s_d is ${s_d} m and has to be above zero`);
    return delta_0 * ((p_1 - p_2) / s_d);
  },
});

/** Thickness of still air that resists as a layer does, m; undefined where the layer is vapour-tight. Throws RangeError where a figure of the layer makes no sense. */
export function airThicknessOf(layer: VapourLayer): number | undefined {
  if ("mu" in layer) {
    return layer.mu === null ? undefined : equivalentAir.compute({ mu: layer.mu, d: layer.thickness });
  }
  if (!(layer.airThickness > 0 && Number.isFinite(layer.airThickness))) {
    throw new RangeError(`airThickness of ${layer.what} is ${layer.airThickness} m and has to be above zero`);
  }
  return layer.airThickness;
}

/** Vapour permeance of a layer, kg/(s m2 Pa); 0 where it is vapour-tight. */
export function permeanceOf(layer: VapourLayer): number {
  const s_d = airThicknessOf(layer);
  return s_d === undefined ? 0 : layerPermeance.compute({ delta_0: AIR_PERMEABILITY.value, s_d });
}

/** How well a layer holds vapour back: I to III as North American codes count them, or open. */
export type VapourClass = "I" | "II" | "III" | "open";

/** Upper edges of the classes: 0.1, 1 and 10 US perm, by the dry-cup test. From memory of the building codes, to be confirmed. */
export const VAPOUR_CLASS_EDGES: readonly { readonly vapourClass: VapourClass; readonly permeance: Quantity<"kg/(s m2 Pa)"> }[] = [
  { vapourClass: "I", permeance: edge("I", 0.1) },
  { vapourClass: "II", permeance: edge("II", 1) },
  { vapourClass: "III", permeance: edge("III", 10) },
];

/** The vapour class of a permeance in kg/(s m2 Pa). Throws RangeError where it is below zero. */
export function vapourClassOf(permeance: number): VapourClass {
  if (!(permeance >= 0)) throw new RangeError(`permeance is ${permeance} kg/(s m2 Pa) and may not be below zero`);
  return VAPOUR_CLASS_EDGES.find((one) => permeance <= one.permeance.value)?.vapourClass ?? "open";
}

function edge(vapourClass: VapourClass, perms: number): Quantity<"kg/(s m2 Pa)"> {
  const from = source("International Building Code", "memory", "vapour retarder classes, ASTM E96 dry cup");
  return given((perms * usPerm.times) / usPerm.over, "kg/(s m2 Pa)", "W_v", `greatest permeance of vapour class ${vapourClass}`, { kind: "constant", source: from });
}
