import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { insideSurfaceResistance, layerResistance, meanThickness, outsideSurfaceResistance, totalResistance, transmittance } from "./plainLayers.ts";

const RUN = { seed: 20262, numRuns: 500 };
const R_si = insideSurfaceResistance("horizontal").value;
const R_se = outsideSurfaceResistance().value;
const layer = (d: number, lambda: number): number => layerResistance.compute({ d, lambda });
const through = (...R_layer: readonly number[]): number => totalResistance.compute({ R_si, R_layer, R_se });
/** Upper limit of ISO 6946 from plain paths side by side: their transmittances by share of area. */
const sideBySide = (...paths: readonly (readonly [share: number, resistance: number])[]): number =>
  1 / paths.reduce((sum, [share, R_tot]) => sum + share * transmittance.compute({ R_tot }), 0);

describe("published", () => {
  // Scottish Government, Tables of U-values and thermal conductivity, 6.B.2 and 6.B.3; figures seen. The upper limit takes
  // each path as plain layers, which is all that these formulas do. The source prints rounded steps, hence 0.005.
  test("timber-framed wall 6.B.2: upper limit 3.435", () => {
    const path = (middle: number): number => through(layer(0.102, 0.77), 0.18, layer(0.009, 0.13), middle, layer(0.0125, 0.21));
    const upper = sideBySide([0.85, path(layer(0.14, 0.04))], [0.15, path(layer(0.14, 0.12))]);
    expect(Math.abs(upper - 3.435)).toBeLessThan(0.005);
  });

  test("block wall 6.B.3: upper limit 3.617", () => {
    const path = (block: number, lining: number): number => through(layer(0.102, 0.77), 0.18, block, lining, layer(0.0125, 0.21));
    const blocks = [[0.933, layer(0.125, 0.11)], [0.067, layer(0.125, 0.88)]] as const;
    const linings = [[0.882, layer(0.089, 0.038)], [0.118, layer(0.089, 0.13)]] as const;
    const upper = sideBySide(...blocks.flatMap(([a, block]) => linings.map(([b, lining]) => [a * b, path(block, lining)] as const)));
    expect(Math.abs(upper - 3.617)).toBeLessThan(0.005);
  });

  // Derived: gypsum 12.5 mm, mineral wool 100 mm, steel 2 mm; recomputed by hand from the layers.
  test("a steel box with wool: R 3.07718, U 0.32497", () => {
    const R_tot = through(layer(0.002, 50), layer(0.1, 0.035), layer(0.0125, 0.25));
    expect(R_tot).toBeCloseTo(3.07718, 5);
    expect(transmittance.compute({ R_tot })).toBeCloseTo(0.32497, 5);
  });

  // ISO 6946 table; 0.13 and 0.04 seen in the examples above, 0.10 and 0.17 from memory (unverified).
  test("surface resistances by direction of heat flow", () => {
    expect(insideSurfaceResistance("horizontal").value).toBe(0.13);
    expect(outsideSurfaceResistance().value).toBe(0.04);
    const unverified = [insideSurfaceResistance("up"), insideSurfaceResistance("down")];
    expect(unverified.map(({ value }) => value)).toEqual([0.1, 0.17]);
    for (const { origin } of unverified) expect(origin).toMatchObject({ from: { source: { standing: "memory" } } });
  });
});

describe("identity", () => {
  test("a layer split in two keeps its resistance, and a thicker one has more", () => {
    const size = fc.double({ min: 0.001, max: 1, noNaN: true });
    fc.assert(
      fc.property(size, size, fc.double({ min: 0.01, max: 100, noNaN: true }), (a, b, lambda) => {
        expect(layer(a, lambda) + layer(b, lambda)).toBeCloseTo(layer(a + b, lambda), 9);
        expect(through(layer(a + b, lambda))).toBeGreaterThan(through(layer(a, lambda)));
      }),
      RUN,
    );
  });

  test("a fill of even thickness has that thickness on average", () => {
    expect(meanThickness.compute({ V: 0.5 * 0.075, A: 0.5 })).toBeCloseTo(0.075, 15);
  });
});

test("outside the domain it throws and names the input", () => {
  expect(() => layer(-0.001, 1)).toThrow(/ d is/);
  expect(() => layer(0.1, 0)).toThrow(/lambda/);
  expect(() => layer(Number.NaN, 1)).toThrow(RangeError);
  expect(() => transmittance.compute({ R_tot: 0 })).toThrow(/R_tot/);
  expect(() => meanThickness.compute({ V: 1, A: 0 })).toThrow(/A is/);
});
