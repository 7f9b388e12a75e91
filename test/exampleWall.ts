import { apply, defineFormula } from "../src/working/formula.ts";
import { given, type Quantity } from "../src/working/quantity.ts";
import { source } from "../src/working/source.ts";

/**
 * The timber-framed wall of the worked example 6.B.2 in Scottish Government, "Tables of U-values and thermal
 * conductivity" (combined method of ISO 6946): 102 mm brick, cavity, 9 mm sheathing, 140 mm of mineral wool (85 %) and
 * studs (15 %), 12.5 mm plasterboard.
 */
const WALL_SOURCE = source("Scottish Government, Tables of U-values and thermal conductivity", "seen", "6.B.2");

const METHOD = source("ISO 6946", "memory", "combined method");

export const layersResistance = defineFormula({
  id: "example.layersResistance",
  symbol: "R",
  means: "thermal resistance of the solid layers",
  unit: "m2K/W",
  text: "sum(d / lambda)",
  takes: { d: "m[]", lambda: "W/(m K)[]" },
  source: METHOD,
  compute: ({ d, lambda }) => d.reduce((sum, thickness, at) => sum + thickness / lambda[at]!, 0),
});

const pathResistance = defineFormula({
  id: "example.pathResistance",
  symbol: "R_path",
  means: "thermal resistance from air to air along one path",
  unit: "m2K/W",
  text: "R_se + R_cav + R + R_si",
  takes: { R_se: "m2K/W", R_cav: "m2K/W", R: "m2K/W", R_si: "m2K/W" },
  source: METHOD,
  compute: ({ R_se, R_cav, R, R_si }) => R_se + R_cav + R + R_si,
});

const upperResistance = defineFormula({
  id: "example.upperResistance",
  symbol: "R_upper",
  means: "upper limit of the thermal resistance",
  unit: "m2K/W",
  text: "1 / sum(f / R_path)",
  takes: { f: "1[]", R_path: "m2K/W[]" },
  source: METHOD,
  compute: ({ f, R_path }) => 1 / f.reduce((sum, share, at) => sum + share / R_path[at]!, 0),
});

const read = <U extends string>(value: number, unit: U, symbol: string, means: string): Quantity<U> =>
  given(value, unit, symbol, means, { kind: "constant", source: WALL_SOURCE });

const brick = { d: read(0.102, "m", "d", "thickness of brick"), lambda: read(0.77, "W/(m K)", "lambda", "conductivity of brick") };
const sheathing = { d: read(0.009, "m", "d", "thickness of sheathing"), lambda: read(0.13, "W/(m K)", "lambda", "conductivity of sheathing") };
const wool = { d: read(0.14, "m", "d", "depth of the studs"), lambda: read(0.04, "W/(m K)", "lambda", "conductivity of mineral wool") };
const stud = { d: wool.d, lambda: read(0.12, "W/(m K)", "lambda", "conductivity of studs") };
const board = { d: read(0.0125, "m", "d", "thickness of plasterboard"), lambda: read(0.21, "W/(m K)", "lambda", "conductivity of plasterboard") };
const surfaces = {
  R_se: read(0.04, "m2K/W", "R_se", "outside surface resistance"),
  R_cav: read(0.18, "m2K/W", "R_cav", "resistance of the cavity"),
  R_si: read(0.13, "m2K/W", "R_si", "inside surface resistance"),
};

/** Resistance of the solid layers where the middle one is mineral wool. */
export function woolLayers(): Quantity<"m2K/W"> {
  return layersOf(wool);
}

/** Upper limit of the wall's resistance, from the path through the wool and the path through the studs. */
export function upperLimit(): Quantity<"m2K/W"> {
  return apply(upperResistance, {
    f: [read(0.85, "1", "f", "share of mineral wool"), read(0.15, "1", "f", "share of studs")],
    R_path: [wool, stud].map((middle) => apply(pathResistance, { ...surfaces, R: layersOf(middle) })),
  });
}

function layersOf(middle: { d: Quantity<"m">; lambda: Quantity<"W/(m K)"> }): Quantity<"m2K/W"> {
  const layers = [brick, sheathing, middle, board];
  return apply(layersResistance, { d: layers.map((one) => one.d), lambda: layers.map((one) => one.lambda) });
}
