import { equivalentGapConductivity } from "../../../physics/conduction.ts";
import type { HeatFlow } from "../../../physics/plainLayers.ts";
import { given, type Quantity } from "../../../working/quantity.ts";
import { source } from "../../../working/source.ts";

/** Gaps thinner than this are taken as this thick, m: nooks beside foam that fills its bay. */
const THINNEST = 0.005;
/** Extent of a gap that runs on, m. */
const RUNS_ON = 1;

const USUAL = { kind: "constant", source: source("ISO 6946:2017", "memory", "ordinary building surfaces, mean temperature 10 °C") } as const;
const EMISSIVITY = given(0.9, "1", "epsilon", "emissivity of ordinary surfaces; bare zinc is less, which this errs cold against", USUAL);
const MEAN = given(10, "degC", "T_m", "mean temperature of an enclosed gap", USUAL);

/** Equivalent conductivity of an enclosed gap of that thickness, W/(m K); `width` is its extent across the flow of heat. */
export function gapConductivity(thickness: number, flow: HeatFlow, width = RUNS_ON): number {
  return equivalentGapConductivity({
    depth: size(thickness > THINNEST ? thickness : THINNEST, "d_gap", "thickness of an enclosed gap"),
    width: size(width, "b_gap", "extent of an enclosed gap"),
    emissivities: [EMISSIVITY, EMISSIVITY],
    meanTemperature: MEAN,
    flow,
  }).value;
}

function size(value: number, symbol: string, means: string): Quantity<"m"> {
  return given(value, "m", symbol, means, { kind: "constant", source: source("the section's own geometry", "derived") });
}
