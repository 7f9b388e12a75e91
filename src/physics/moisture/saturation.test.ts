import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { given, type Quantity } from "../../working/quantity.ts";
import { dewPoint, dewPointAboveIce, dewPointAboveWater, saturationAboveIce, saturationAboveWater, saturationAt, saturationPressure, vapourPressure } from "./saturation.ts";

const RUN = { seed: 20264, numRuns: 1000 };
const at = (T: number): Quantity<"degC"> => given(T, "degC", "T", "temperature", { kind: "measured", on: "test" });
const pascal = (p: number): Quantity<"Pa"> => given(p, "Pa", "p", "pressure", { kind: "measured", on: "test" });
const within = (value: number, wanted: number, share: number): void => expect(Math.abs(value / wanted - 1)).toBeLessThan(share);

describe("saturation pressure", () => {
  // The fits of ISO 13788 (from memory), worked by hand to a tenth of a pascal.
  test.each([[-20, 102.7], [-10, 259.3], [-5, 401.2], [0, 610.5], [5, 871.9], [10, 1227.3], [20, 2337], [25, 3165.9]])(
    "at %d °C is %d Pa",
    (T, wanted) => {
      expect(Math.abs(saturationAt(T) - wanted)).toBeLessThan(0.06);
    },
  );

  // ASHRAE Fundamentals 2017, chapter 1, table 3, as the tests of the psychrolib library hold it.
  test.each([[-20, 103.24], [-5, 401.74], [5, 872.6], [25, 3169.7], [50, 12351.3]])(
    "at %d °C lies within 0.6 %% of the handbook's %d Pa",
    (T, wanted) => {
      within(saturationAt(T), wanted, 0.006);
      within(hylandWexler(T), wanted, 3e-4);
    },
  );

  test("lies within 0.6 % of Hyland and Wexler from -20 to 80 °C, and reads low in hard frost by what its docstring says", () => {
    for (let T = -20; T <= 80; T += 0.5) within(saturationAt(T), hylandWexler(T), 0.006);
    for (const [T, low] of [[-30, 0.0105], [-40, 0.0195]] as const) {
      expect(1 - saturationAt(T) / hylandWexler(T)).toBeGreaterThan(0.8 * low);
      expect(1 - saturationAt(T) / hylandWexler(T)).toBeLessThan(1.1 * low);
    }
  });

  test("joins at 0 °C and rises all the way; the working says above what", () => {
    expect(saturationAboveIce.compute({ T: 0 })).toBe(saturationAboveWater.compute({ T: 0 }));
    fc.assert(
      fc.property(fc.double({ min: -120, max: 99, noNaN: true }), fc.double({ min: 1e-6, max: 1, noNaN: true }), (T, more) => {
        expect(saturationAt(T + more)).toBeGreaterThan(saturationAt(T));
      }),
      RUN,
    );
    expect(saturationPressure(at(-0.5)).means).toBe("saturation pressure above ice");
    expect(saturationPressure(at(0)).means).toBe("saturation pressure above water");
  });
});

test("dew point is the inverse of saturation pressure", () => {
  fc.assert(
    fc.property(fc.double({ min: -100, max: 99.9, noNaN: true }), (T) => {
      expect(dewPoint(pascal(saturationAt(T))).value).toBeCloseTo(T, 8);
    }),
    RUN,
  );
});

test("outside the domain it throws and names the input", () => {
  for (const T of [-0.01, 100.1, Number.NaN]) expect(() => saturationAboveWater.compute({ T })).toThrow(/ T is/);
  for (const T of [0.02, -121, Number.NaN]) expect(() => saturationAboveIce.compute({ T })).toThrow(/ T is/);
  for (const p of [610, 1.1e5, Number.NaN]) expect(() => dewPointAboveWater.compute({ p })).toThrow(/ p is/);
  for (const p of [0, 1e-9, 611, Number.NaN]) expect(() => dewPointAboveIce.compute({ p })).toThrow(/ p is/);
  for (const phi of [-0.1, 1.1, Number.NaN]) expect(() => vapourPressure.compute({ phi, p_sat: 1000 })).toThrow(/phi/);
  expect(() => dewPoint(pascal(0))).toThrow(RangeError);
});

/** Hyland and Wexler's fits of 1983 (ASHRAE Fundamentals; from memory, held above to the handbook's own table). */
function hylandWexler(T: number): number {
  const K = T + 273.15;
  const ice = -5674.5359 / K + 6.3925247 - 9.677843e-3 * K + 6.2215701e-7 * K ** 2 + 2.0747825e-9 * K ** 3 - 9.484024e-13 * K ** 4 + 4.1635019 * Math.log(K);
  const water = -5800.2206 / K + 1.3914993 - 4.8640239e-2 * K + 4.1764768e-5 * K ** 2 - 1.4452093e-8 * K ** 3 + 6.5459673 * Math.log(K);
  return Math.exp(T < 0 ? ice : water);
}
