import fc from "fast-check";
import { expect, test } from "vitest";
import { checkWorking } from "../../test/checkWorking.ts";
import { given, type Quantity } from "../working/quantity.ts";
import { degreeDaysOf, monthDegreeDays, yearDegreeDays, yearlyHeat } from "./degreeDays.ts";

const degrees = (T: number): Quantity<"degC"> => given(T, "degC", "T", "temperature", { kind: "measured", on: "test" });
const days = (means: readonly number[], base: number): Quantity<"K d"> => degreeDaysOf(means.map(degrees), degrees(base));

// By hand: (18 - 0) x 31 + (18 - 10) x 28 + (18 - 17.5) x 30 in January, February and April; 797 K d in all.
test("months under the base count by their days, others not at all", () => {
  const means = [0, 10, 18, 17.5, 20, 25, 30, 30, 25, 20, 19, 18];
  expect(days(means, 18).value).toBeCloseTo(797, 9);
  expect(yearDegreeDays.compute({ D_month: [558, 224, 15] })).toBeCloseTo(797, 9);
  expect(checkWorking([days(means, 18)])).toBeGreaterThan(12);
});

test("a year at one temperature has 365 times the difference", () => {
  const temperature = fc.double({ min: -40, max: 40, noNaN: true });
  fc.assert(
    fc.property(temperature, temperature, (T, base) => {
      expect(days(Array.from({ length: 12 }, () => T), base).value).toBeCloseTo(365 * Math.max(0, base - T), 6);
    }),
    { seed: 20266, numRuns: 200 },
  );
});

// 24 h x 50 W/K x 3000 K d = 3600 kWh = 12.96 GJ, by hand.
test("50 W/K over 3000 degree days are 3600 kWh", () => {
  expect(yearlyHeat.compute({ H_loss: 50, D_year: 3000 }) / 3.6e6).toBeCloseTo(3600, 9);
});

test("outside the domain it throws and names the input", () => {
  expect(() => days([1, 2, 3], 18)).toThrow(/means are 3/);
  for (const n_day of [0, Number.NaN]) expect(() => monthDegreeDays.compute({ T_base: 18, T_month: 0, n_day })).toThrow(/n_day/);
  for (const H_loss of [-1, Number.NaN]) expect(() => yearlyHeat.compute({ H_loss, D_year: 1 })).toThrow(/H_loss/);
  expect(() => yearlyHeat.compute({ H_loss: 1, D_year: -1 })).toThrow(/D_year/);
});
