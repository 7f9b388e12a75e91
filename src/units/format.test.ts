import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { formatLength, formatQuantity, formatSi, formatStep, prettyUnit, roundChain } from "./format.ts";
import type { System } from "./format.ts";
import { KINDS, SI_UNIT } from "./kinds.ts";
import type { Kind } from "./kinds.ts";
import { parseQuantity } from "./parse.ts";
import { UNITS } from "./unitTable.ts";

const SYSTEMS: readonly System[] = ["metric", "imperial"];
const SIXTEENTH = 0.0254 / 16;

function read(kind: Kind, text: string): number {
  const parsed = parseQuantity(kind, text);
  if (!parsed.ok) throw new Error(`${kind} "${text}": ${parsed.reason}`);
  return parsed.value;
}

describe("as it is printed", () => {
  it.each<[Kind, number, System, string]>([
    ["length", 2.352, "metric", "2352 mm"], ["length", 12.192, "metric", "12192 mm"], ["length", -0.0015, "metric", "-2 mm"],
    ["length", 0, "metric", "0 mm"], ["length", -0.0001, "metric", "0 mm"],
    ["length", 2.352675, "imperial", `7' 8-5/8"`], ["length", -2.352675, "imperial", `-7' 8-5/8"`],
    ["length", 0.0889, "imperial", `3-1/2"`], ["length", 0.015875, "imperial", `5/8"`], ["length", 0.0762, "imperial", `3"`],
    ["length", 1.8288, "imperial", `6' 0"`], ["length", 1.844675, "imperial", `6' 0-5/8"`], ["length", 0, "imperial", `0"`],
    ["length", -0.0001, "imperial", `0"`], ["length", 0.3047, "imperial", `1' 0"`],
    ["length", 0.0254 / 32, "imperial", `1/16"`],
    ["mass", 30480, "metric", "30,480 kg"], ["mass", 12.3456, "metric", "12.35 kg"], ["mass", 0.45359237, "imperial", "1 lb"],
    ["force", 86_400 * 9.81, "metric", "847.6 kN"], ["force", 450, "metric", "450 N"],
    ["temperature", -34, "metric", "-34 °C"], ["temperature", 35, "imperial", "95 °F"],
    ["temperature", 21.37, "metric", "21.4 °C"], ["temperatureDifference", 20, "imperial", "36 F°"],
    ["power", 3200, "metric", "3.2 kW"], ["power", 999.96, "metric", "1,000 W"],
    ["power", 3516.8528420667, "imperial", "12,000 BTU/h"], ["airFlow", 0.25, "metric", "250 L/s"],
    ["airFlow", 0.028316846592, "imperial", "60 cfm"],
    ["thermalResistance", 2.1, "metric", "2.1 m²·K/W"], ["thermalResistance", 2.113322, "imperial", "R-12"],
    ["vapourPermeance", 6e-11, "metric", "60 ng/(s·m²·Pa)"], ["ratio", 0.15, "metric", "15 %"],
    ["angle", Math.PI / 4, "metric", "45°"],
    ["pressure", 62.27, "metric", "62.27 Pa"], ["pressure", 1800, "metric", "1.8 kPa"],
    ["pressure", 3.5e8, "metric", "350 MPa"], ["vapourResistanceFactor", 60, "metric", "60"],
    ["coverage", 8000, "metric", "8 m²/L"], ["duration", 5400, "metric", "1.5 h"],
  ])("%s %s %s: %s", (kind, value, system, text) => {
    expect(formatQuantity(kind, value, system)).toBe(text);
  });

  it("takes another unit or another number of digits", () => {
    expect(formatQuantity("length", 2.352675, "metric", { unit: "m" })).toBe("2.353 m");
    expect(formatQuantity("length", 2.352675, "imperial", { unit: "in", digits: 6 })).toBe("92.625 in");
    expect(formatQuantity("pressure", 62.2722275, "imperial", { unit: "in wg" })).toBe("0.25 inH₂O");
    expect(formatQuantity("speed", 51.4096, "imperial", { unit: "mph" })).toBe("115 mph");
    expect(formatQuantity("mass", 123_456.7, "metric", { digits: 2 })).toBe("123,457 kg");
  });

  it("keeps to the step of a tape", () => {
    expect(formatLength(2.352675, "imperial", { step: 0.0254 / 2 })).toBe(`7' 8-1/2"`);
    expect(formatLength(0.0254 * 0.71875, "imperial", { step: 0.0254 / 32 })).toBe(`23/32"`);
    expect(formatLength(2.3524, "metric", { step: 0.005 })).toBe("2350 mm");
    expect(formatLength(0.01234, "metric", { step: 0.0001 })).toBe("12.3 mm");
    expect(() => formatLength(1, "imperial", { step: 0.001 })).toThrow(RangeError);
    expect(() => formatLength(1, "metric", { step: 0 })).toThrow(RangeError);
  });

  it("throws on what is no quantity", () => {
    for (const value of [NaN, Infinity, -Infinity]) {
      expect(() => formatQuantity("mass", value, "metric")).toThrow(RangeError);
      expect(() => formatQuantity("length", value, "imperial")).toThrow(RangeError);
      expect(() => formatSi("m", value)).toThrow(RangeError);
    }
    expect(() => formatQuantity("mass", 1, "metric", { unit: "mm" })).toThrow(/not a unit of mass/);
    expect(() => formatQuantity("mass", 1, "metric", { digits: 0 })).toThrow(/digits/);
  });
});

describe("workings", () => {
  it.each<[string, number, string]>([
    ["W/(m K)", 0.35214, "0.3521 W/(m·K)"], ["m2K/W", 2.1, "2.1 m²·K/W"], ["degC", -34, "-34 °C"], ["1", 0.97654, "0.9765"],
    ["Pa", 123_456.7, "123,457 Pa"], ["kg/(s m2 Pa)", 6e-11, "6×10⁻¹¹ kg/(s·m²·Pa)"],
    ["m", 0, "0 m"], ["kg/m3", 7850, "7,850 kg/m³"], ["m2/m3", 8000, "8,000 m²/m³"], ["m4", 1.0239e-6, "1.024×10⁻⁶ m⁴"],
    ["W/(m2 K)", 0.0001234, "0.0001234 W/(m²·K)"], ["m4", 9.99999e-7, "1×10⁻⁶ m⁴"],
  ])("%s %s: %s", (unit, value, text) => {
    expect(formatSi(unit, value)).toBe(text);
  });

  it("prints each SI unit in letters that are read back as that unit", () => {
    for (const kind of KINDS) expect(read(kind, formatSi(SI_UNIT[kind], 12)), kind).toBe(12);
    expect(prettyUnit("m3/(s m2)")).toBe("m³/(s·m²)");
  });
});

describe("round trips", () => {
  // Sizes from a film of paint to a whole site; temperatures above absolute zero; R-values not below nothing.
  const size = fc.tuple(fc.double({ min: 1, max: 10, noNaN: true }), fc.integer({ min: -14, max: 8 }), fc.boolean());
  function valueOf(kind: Kind, [mantissa, power, negative]: [number, number, boolean]): number {
    const value = (negative && kind !== "thermalResistance" ? -mantissa : mantissa) * 10 ** power;
    return kind === "temperature" ? Math.max(value, -273) : value;
  }

  it("reads back what it writes to within half a step, in both systems, for every kind", () => {
    for (const kind of KINDS) {
      for (const system of SYSTEMS) {
        fc.assert(
          fc.property(size, fc.option(fc.integer({ min: 1, max: 12 }), { nil: undefined }), (parts, digits) => {
            const value = valueOf(kind, parts);
            const options = digits === undefined ? {} : { digits };
            const back = read(kind, formatQuantity(kind, value, system, options));
            expect(Math.abs(back - value)).toBeLessThanOrEqual(0.5 * formatStep(kind, value, system, options) * (1 + 1e-6) + 1e-13 * Math.abs(value) + (kind === "temperature" ? 1e-12 : 0));
          }),
          { seed: 7, numRuns: 400 },
        );
      }
    }
  });

  it("does so in every unit of every kind", () => {
    for (const kind of KINDS) {
      for (const unit of UNITS[kind].filter((each) => each.print !== "")) {
        fc.assert(
          fc.property(size, (parts) => {
            const value = valueOf(kind, parts);
            const options = { unit: unit.print, digits: 6 };
            const back = read(kind, formatQuantity(kind, value, "metric", options));
            expect(Math.abs(back - value)).toBeLessThanOrEqual(0.5 * formatStep(kind, value, "metric", options) * (1 + 1e-6) + 1e-13 * Math.abs(value) + (kind === "temperature" ? 1e-12 : 0));
          }),
          { seed: 7, numRuns: 50 },
        );
      }
    }
  });

  it("shows four significant digits or more, whatever the size", () => {
    fc.assert(
      fc.property(size, (parts) => {
        const value = valueOf("area", parts);
        expect(Math.abs(read("area", formatQuantity("area", value, "imperial")) / value - 1)).toBeLessThanOrEqual(0.5001e-3);
      }),
      { seed: 7 },
    );
  });
});

describe("a chain of dimensions", () => {
  const chain = fc.array(fc.double({ min: 0, max: 12, noNaN: true }), { minLength: 1, maxLength: 60 });

  it("adds up to the rounded overall, with no part off by a step", () => {
    for (const step of [0.001, SIXTEENTH]) {
      fc.assert(
        fc.property(chain, (values) => {
          const steps = roundChain(values, step).map((part) => Math.round(part / step));
          const total = values.reduce((sum, value) => sum + value, 0);
          expect(Math.abs(steps.reduce((sum, part) => sum + part, 0) - total / step)).toBeLessThanOrEqual(0.5 + 1e-6);
          steps.forEach((part, index) => {
            expect(Math.abs(part - (values[index] ?? NaN) / step)).toBeLessThanOrEqual(1 + 1e-6);
          });
        }),
        { seed: 7, numRuns: 500 },
      );
    }
  });

  it("does not drift where each part alone would", () => {
    // Thirty bays of 406.4 mm: rounded one by one they would come to 12180 mm; the whole is 12192 mm.
    const parts = roundChain(Array.from({ length: 30 }, () => 0.4064), 0.001);
    expect(Math.round(parts.reduce((sum, part) => sum + part, 0) * 1000)).toBe(12_192);
    expect(new Set(parts.map((part) => Math.round(part * 1000)))).toEqual(new Set([406, 407]));
    expect(() => roundChain([1], 0)).toThrow(RangeError);
    expect(() => roundChain([NaN], 0.001)).toThrow(RangeError);
  });
});
