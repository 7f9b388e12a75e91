import { apply, defineFormula } from "../../working/formula.ts";
import type { Quantity } from "../../working/quantity.ts";
import { source } from "../../working/source.ts";
import type { HeatFlow } from "../plainLayers.ts";

const ISO_6946 = source("ISO 6946:2017", "memory", "annex on unventilated airspaces, and ISO 10077-2 for rectangular cavities");
/** Thicker spaces are rooms of their own, m. */
const THICKEST = 0.3;

/** An unventilated air space that is closed on all sides. */
export interface Gap {
  /** Thickness in the direction of heat flow. */
  readonly depth: Quantity<"m">;
  /** Extent across the heat flow, of the narrower side; large where the space runs on. */
  readonly width: Quantity<"m">;
  /** Emissivities of the two faces that heat passes between. */
  readonly emissivities: readonly [Quantity<"1">, Quantity<"1">];
  readonly meanTemperature: Quantity<"degC">;
  readonly flow: HeatFlow;
}

/**
 * Conductivity of a solid that would pass as much heat as the gap does, W/(m K). Assumes still, dry air, faces that emit
 * alike in every direction, and a difference of up to 5 K between them. Throws RangeError outside the domains below.
 */
export function equivalentGapConductivity({ depth, width, emissivities, meanTemperature, flow }: Gap): Quantity<"W/(m K)"> {
  const h_r0 = apply(blackRadiation, { T_m: meanTemperature });
  const h_r = apply(gapRadiation, { h_r0, epsilon_1: emissivities[0], epsilon_2: emissivities[1], d_gap: depth, b_gap: width });
  return apply(gapConductivity, { d_gap: depth, h_a: apply(CONVECTION[flow], { d_gap: depth }), h_r });
}

/** Radiation between black surfaces for each kelvin, W/(m2 K). Throws RangeError at or below absolute zero. */
export const blackRadiation = defineFormula({
  id: "gap.blackRadiation",
  symbol: "h_r0",
  means: "radiation between black surfaces",
  unit: "W/(m2 K)",
  text: "4 * 5.67e-8 * (T_m + 273.15)^3",
  takes: { T_m: "degC" },
  source: ISO_6946,
  compute: ({ T_m }) => {
    if (!(T_m > -273.15)) throw new RangeError(`gap.blackRadiation: T_m is ${T_m} degC, not above absolute zero`);
    return 4 * 5.67e-8 * (T_m + 273.15) ** 3;
  },
});

/** Radiation across a rectangular gap for each kelvin, W/(m2 K). Throws RangeError at sizes or emissivities outside their domain. */
export const gapRadiation = defineFormula({
  id: "gap.radiation",
  symbol: "h_r",
  means: "radiation across a gap",
  unit: "W/(m2 K)",
  text: "h_r0 / (1 / epsilon_1 + 1 / epsilon_2 - 2 + 2 / (1 + sqrt(1 + (d_gap / b_gap)^2) - d_gap / b_gap))",
  takes: { h_r0: "W/(m2 K)", epsilon_1: "1", epsilon_2: "1", d_gap: "m", b_gap: "m" },
  source: ISO_6946,
  compute: ({ h_r0, epsilon_1, epsilon_2, d_gap, b_gap }) => {
    for (const [name, value] of Object.entries({ epsilon_1, epsilon_2 })) {
      if (!(value > 0 && value <= 1)) throw new RangeError(`gap.radiation: ${name} is ${value} and has to be above 0 and up to 1`);
    }
    for (const [name, value] of Object.entries({ d_gap, b_gap })) {
      if (!(value > 0)) throw new RangeError(`gap.radiation: ${name} is ${value} m and has to be above zero`);
    }
    return h_r0 / (1 / epsilon_1 + 1 / epsilon_2 - 2 + 2 / (1 + Math.sqrt(1 + (d_gap / b_gap) ** 2) - d_gap / b_gap));
  },
});

/** Convection and conduction across a gap with heat flow upward, W/(m2 K). */
export const gapConvectionUp = defineFormula({
  id: "gap.convectionUp",
  symbol: "h_a",
  means: "convection across a gap",
  unit: "W/(m2 K)",
  text: "max(1.95, 0.025 / d_gap)",
  takes: { d_gap: "m" },
  source: ISO_6946,
  compute: ({ d_gap }) => {
    checkDepth("gap.convectionUp", d_gap);
    return Math.max(1.95, 0.025 / d_gap);
  },
});

/** Convection and conduction across a gap with heat flow level, W/(m2 K). */
export const gapConvectionHorizontal = defineFormula({
  id: "gap.convectionHorizontal",
  symbol: "h_a",
  means: "convection across a gap",
  unit: "W/(m2 K)",
  text: "max(1.25, 0.025 / d_gap)",
  takes: { d_gap: "m" },
  source: ISO_6946,
  compute: ({ d_gap }) => {
    checkDepth("gap.convectionHorizontal", d_gap);
    return Math.max(1.25, 0.025 / d_gap);
  },
});

/** Convection and conduction across a gap with heat flow downward, W/(m2 K). */
export const gapConvectionDown = defineFormula({
  id: "gap.convectionDown",
  symbol: "h_a",
  means: "convection across a gap",
  unit: "W/(m2 K)",
  text: "max(0.12 / d_gap^0.44, 0.025 / d_gap)",
  takes: { d_gap: "m" },
  source: ISO_6946,
  compute: ({ d_gap }) => {
    checkDepth("gap.convectionDown", d_gap);
    return Math.max(0.12 / d_gap ** 0.44, 0.025 / d_gap);
  },
});

/** Conductivity that stands for a gap, W/(m K). */
export const gapConductivity = defineFormula({
  id: "gap.conductivity",
  symbol: "lambda_gap",
  means: "equivalent conductivity of a gap",
  unit: "W/(m K)",
  text: "d_gap * (h_a + h_r)",
  takes: { d_gap: "m", h_a: "W/(m2 K)", h_r: "W/(m2 K)" },
  source: ISO_6946,
  compute: ({ d_gap, h_a, h_r }) => d_gap * (h_a + h_r),
});

const CONVECTION = {
  up: gapConvectionUp,
  horizontal: gapConvectionHorizontal,
  down: gapConvectionDown,
} as const;

function checkDepth(formula: string, d_gap: number): void {
  if (!(d_gap > 0 && d_gap <= THICKEST)) {
    throw new RangeError(`${formula}: d_gap is ${d_gap} m and has to be above 0 and up to ${THICKEST} m`);
  }
}
