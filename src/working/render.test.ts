import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { upperLimit, woolLayers } from "../../test/exampleWall.ts";
import { compare, type Relation } from "./comparison.ts";
import { apply, defineFormula } from "./formula.ts";
import { given, type Quantity } from "./quantity.ts";
import { renderComparison, renderWorking } from "./render.ts";
import { commonPractice } from "./source.ts";

const asked = given(3.5, "m2K/W", "R_min", "least resistance asked for", { kind: "job", path: "wall.least", typed: "RSI 3.5" });

const mass = defineFormula({
  id: "test.mass",
  symbol: "m",
  means: "mass of a board",
  unit: "kg",
  text: "V * rho",
  takes: { V: "m3", rho: "kg/m3" },
  source: commonPractice,
  compute: ({ V, rho }) => V * rho,
});

const massOfAll = defineFormula({
  id: "test.massOfAll",
  symbol: "m_all",
  means: "mass of all boards",
  unit: "kg",
  text: "sum(m)",
  takes: { m: "kg[]" },
  source: commonPractice,
  compute: ({ m }) => m.reduce((sum, one) => sum + one, 0),
});

const rise = defineFormula({
  id: "test.rise",
  symbol: "dT",
  means: "difference of temperature",
  unit: "K",
  text: "max(T_i, 1e3 * T_e) - T_e",
  takes: { T_i: "degC", T_e: "degC" },
  source: commonPractice,
  compute: ({ T_i, T_e }) => Math.max(T_i, 1e3 * T_e) - T_e,
});

const measured = <U extends string>(value: number, unit: U, symbol: string): Quantity<U> =>
  given(value, unit, symbol, `${symbol} of the test`, { kind: "measured", on: "the bench" });

describe("a working in lines", () => {
  test("whole, metric", () => {
    const R = woolLayers();
    expect(renderWorking([R], [compare(R, ">=", asked)], { system: "metric" }).join("\n")).toMatchInlineSnapshot(`
      "Given
        d_1       thickness of brick            0.102 m (102 mm)    Scottish Government, Tables of U-values and thermal conductivity, 6.B.2
        d_2       thickness of sheathing        0.009 m (9 mm)      Scottish Government, Tables of U-values and thermal conductivity, 6.B.2
        d_3       depth of the studs            0.14 m (140 mm)     Scottish Government, Tables of U-values and thermal conductivity, 6.B.2
        d_4       thickness of plasterboard     0.0125 m (12.5 mm)  Scottish Government, Tables of U-values and thermal conductivity, 6.B.2
        lambda_1  conductivity of brick         0.77 W/(m·K)        Scottish Government, Tables of U-values and thermal conductivity, 6.B.2
        lambda_2  conductivity of sheathing     0.13 W/(m·K)        Scottish Government, Tables of U-values and thermal conductivity, 6.B.2
        lambda_3  conductivity of mineral wool  0.04 W/(m·K)        Scottish Government, Tables of U-values and thermal conductivity, 6.B.2
        lambda_4  conductivity of plasterboard  0.21 W/(m·K)        Scottish Government, Tables of U-values and thermal conductivity, 6.B.2
        R_min     least resistance asked for    3.5 m²·K/W          job, wall.least, typed as "RSI 3.5"
      Worked out
        thermal resistance of the solid layers [ISO 6946, combined method (from memory, to be confirmed)]
          R = sum(d / lambda) with d = [d_1, d_2, d_3, d_4], lambda = [lambda_1, lambda_2, lambda_3, lambda_4]
            = sum([0.102, 0.009, 0.14, 0.0125] / [0.77, 0.13, 0.04, 0.21])
            = 3.761 m²·K/W
      Compared
        thermal resistance of the solid layers against least resistance asked for
          R ≥ R_min: 3.761 m²·K/W ≥ 3.5 m²·K/W: holds, with 0.2612 m²·K/W to spare"
    `);
  });

  test("whole, imperial: lengths as a tape shows them, below an inch in decimals", () => {
    const lines = renderWorking([woolLayers()], [], { system: "imperial", form: "givens" });
    expect(lines.map((line) => line.slice(0, 63).trimEnd()).join("\n")).toMatchInlineSnapshot(`
      "d_1       thickness of brick            0.102 m (4")          S
      d_2       thickness of sheathing        0.009 m (0.3543 in)   S
      d_3       depth of the studs            0.14 m (5-1/2")       S
      d_4       thickness of plasterboard     0.0125 m (0.4921 in)  S
      lambda_1  conductivity of brick         0.77 W/(m·K)          S
      lambda_2  conductivity of sheathing     0.13 W/(m·K)          S
      lambda_3  conductivity of mineral wool  0.04 W/(m·K)          S
      lambda_4  conductivity of plasterboard  0.21 W/(m·K)          S"
    `);
  });

  test("symbolic", () => {
    expect(renderWorking([upperLimit()], [], { system: "metric", form: "symbolic" }).join("\n")).toMatchInlineSnapshot(`
      "R_1 = sum(d / lambda) with d = [d_1, d_2, d_3, d_4], lambda = [lambda_1, lambda_2, lambda_3, lambda_4]
      R_path_1 = R_se + R_cav + R_1 + R_si
      R_2 = sum(d / lambda) with d = [d_1, d_2, d_3, d_4], lambda = [lambda_1, lambda_2, lambda_5, lambda_4]
      R_path_2 = R_se + R_cav + R_2 + R_si
      R_upper = 1 / sum(f / R_path) with f = [f_1, f_2], R_path = [R_path_1, R_path_2]"
    `);
  });

  test("one line for each result and each comparison", () => {
    const R = upperLimit();
    expect(renderWorking([R, asked], [compare(R, ">=", asked)], { system: "metric", form: "oneLine" }).join("\n")).toMatchInlineSnapshot(`
      "R_upper = 1 / sum(f / R_path) = 1 / sum([0.85, 0.15] / [4.111, 1.778]) = 3.435 m²·K/W
      R_min = 3.5 m²·K/W
      R_upper ≥ R_min: 3.435 m²·K/W ≥ 3.5 m²·K/W: does not hold, by 0.065 m²·K/W"
    `);
  });

  test("long lists by their ends, with count, range and sum", () => {
    const rho = measured(600, "kg/m3", "rho");
    const m = Array.from({ length: 12 }, (_, at) => apply(mass, { V: measured((at + 1) / 100, "m3", "V"), rho }));
    expect(renderWorking([apply(massOfAll, { m })], [], { system: "metric" }).join("\n")).toMatchInlineSnapshot(`
      "Given
        V_1, V_2, … V_12  V of the test    12 values, 0.01 m³ to 0.12 m³  measured on the bench
        rho               rho of the test  600 kg/m³                      measured on the bench
      Worked out
        mass of a board [common practice]
          m_1 = V_1 * rho
              = 0.01 * 600
              = 6 kg
          likewise m_2, m_3, … m_12: 11 values, 12 kg to 72 kg
        mass of all boards [common practice]
          m_all = sum(m) with m = [m_1, m_2, … m_12] (12 values, 6 kg to 72 kg, sum 468 kg)
                = sum([6, 12, … 72])
                = 468 kg"
    `);
  });

  test("a list of eight is printed whole", () => {
    const m = Array.from({ length: 8 }, (_, at) => measured(at, "kg", "m"));
    expect(renderWorking([apply(massOfAll, { m })], [], { system: "metric", form: "oneLine" })).toEqual([
      "m_all = sum(m) = sum([0, 1, 2, 3, 4, 5, 6, 7]) = 28 kg",
    ]);
  });

  test("negative numbers stand in brackets, numbers of the text stay", () => {
    const dT = apply(rise, { T_i: measured(21, "degC", "T_i"), T_e: measured(-34, "degC", "T_e") });
    expect(renderWorking([dT], [], { system: "metric", form: "oneLine" })).toEqual([
      "dT = max(T_i, 1e3 * T_e) - T_e = max(21, 1e3 * (-34)) - (-34) = 55 K",
    ]);
  });

  test("thousands have no comma inside a formula's text", () => {
    const m_one = apply(mass, { V: measured(30480.4, "m3", "V"), rho: measured(1, "kg/m3", "rho") });
    expect(renderWorking([m_one], [], { system: "metric", form: "oneLine" })).toEqual(["m = V * rho = 30480 * 1 = 30,480 kg"]);
  });
});

/** The combined method's worked example 6.B.2 in Scottish Government, "Tables of U-values and thermal conductivity". */
test("published: upper limit of the resistance of the timber-framed wall is 3.435 m2K/W", () => {
  expect(upperLimit().value).toBeCloseTo(3.435, 3);
});

describe("a comparison in one line", () => {
  const line = (left: number, relation: Relation, right: number, unit = "m", tolerance = 0, system: "metric" | "imperial" = "metric"): string =>
    renderComparison(compare(measured(left, unit, "a"), relation, measured(right, unit, "b"), tolerance), { system });

  test.each([
    ["room to spare", line(0.05, "<=", 0.07), "a ≤ b: 0.05 m (50 mm) ≤ 0.07 m (70 mm): holds, with 0.02 m (20 mm) to spare"],
    ["at the limit but for the last digit", line(0.1 + 0.2, ">=", 0.3), "a ≥ b: 0.3 m (300 mm) ≥ 0.3 m (300 mm): holds, at the limit"],
    ["at the limit", line(2.4, ">=", 2.4, "m2K/W"), "a ≥ b: 2.4 m²·K/W ≥ 2.4 m²·K/W: holds, at the limit"],
    ["missed by a hair", line(24000.0001, "<=", 24000, "kg"), "a ≤ b: 24,000.0001 kg ≤ 24,000 kg: does not hold, by 0.0001 kg"],
    ["within tolerance", line(2.4000001, "<=", 2.4, "K", 1e-6), "a ≤ b: 2.4 K ≤ 2.4 K: holds within the tolerance of 1×10⁻⁶ K, missed by 1×10⁻⁷ K"],
    ["differences of temperature", line(-34.5, ">=", -34, "degC"), "a ≥ b: -34.5 °C ≥ -34 °C: does not hold, by 0.5 K"],
    ["a tape that can tell", line(0.0508, "<=", 0.0254, "m", 0, "imperial"), 'a ≤ b: 0.0508 m (2") ≤ 0.0254 m (1"): does not hold, by 0.0254 m (1")'],
    ["a tape that cannot tell", line(0.05081, "<=", 0.0508, "m", 0, "imperial"), "a ≤ b: 0.05081 m ≤ 0.0508 m: does not hold, by 1×10⁻⁵ m (0.0003937 in)"],
  ])("%s", (_, text, wanted) => {
    expect(text).toBe(wanted);
  });

  test("neighbouring numbers are written whole", () => {
    expect(line(1 + Number.EPSILON, "<=", 1, "1")).toContain("1.0000000000000002 ≤ 1: does not hold");
  });

  const near = fc
    .tuple(fc.oneof(fc.double({ min: -1e6, max: 1e6, noNaN: true }), fc.integer({ min: -1e6, max: 1e7 }).map((n) => n / 1000)), fc.constantFrom(0, 1e-9, -1e-9, 1e-12, 1e-4, 0.3), fc.boolean())
    .map(([left, step, relative]) => [left, relative ? left * (1 + step) : left + step] as const);

  test.each(["metric", "imperial"] as const)("the printed numbers say what the verdict says, %s", (system) => {
    fc.assert(
      fc.property(near, fc.constantFrom<Relation>("<=", ">="), fc.constantFrom("m", "kg", "degC", "1", "Pa"), ([a, b], relation, unit) => {
        const text = line(a, relation, b, unit, 0, system);
        const [, left, right] = /^a [≤≥] b: (.*) [≤≥] (.*): (?:holds|does not)/.exec(text) ?? [];
        expect(obeys(printedNumber(left), relation, printedNumber(right)), text).toBe(text.includes(": holds"));
      }),
      { seed: 10211, numRuns: 2000 },
    );
  });
});

function obeys(left: number, relation: Relation, right: number): boolean {
  return relation === "<=" ? left <= right : left >= right;
}

/** Reads a printed number back by other means than the printer's: commas out, powers of ten as exponents. */
function printedNumber(text = ""): number {
  const plain = text.replaceAll(",", "").replace(/×10([⁻⁰¹²³⁴-⁹]+)/, (_, power: string) => `e${power.replace(/./g, (one) => "0123456789-"["⁰¹²³⁴⁵⁶⁷⁸⁹⁻".indexOf(one)] ?? "?")}`);
  return Number(/^-?[\d.]+(?:e[+-]?\d+)?/.exec(plain)?.[0]);
}
