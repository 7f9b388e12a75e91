import { expect, test } from "vitest";
import { airThicknessOf, equivalentAir, layerPermeance, permeanceOf, VAPOUR_CLASS_EDGES, vapourClassOf, vapourFlow, type VapourLayer } from "./layer.ts";

const foam: VapourLayer = { what: "foam", thickness: 0.05, conductivity: 0.024, mu: 60 };
const steel: VapourLayer = { what: "steel", thickness: 0.002, conductivity: 50, mu: null };
const film: VapourLayer = { what: "film", thickness: 0.0002, conductivity: 0.33, airThickness: 50 };

// 2e-10 / (60 x 0.05 m) = 66.7 ng/(s m2 Pa), by hand: 1.17 US perm.
test("50 mm of foam with a factor of 60 is 3 m of air, 66.7 ng/(s m2 Pa), class III by a little", () => {
  expect(airThicknessOf(foam)).toBe(3);
  expect(permeanceOf(foam)).toBeCloseTo(66.667e-12, 15);
  expect(vapourClassOf(permeanceOf(foam))).toBe("III");
  expect(vapourClassOf(permeanceOf({ ...foam, thickness: 0.06 }))).toBe("II");
});

test("steel lets nothing through; a film counts by its own figure", () => {
  expect(airThicknessOf(steel)).toBeUndefined();
  expect(permeanceOf(steel)).toBe(0);
  expect(vapourClassOf(permeanceOf(steel))).toBe("I");
  expect(permeanceOf(film)).toBeCloseTo(4e-12, 18);
  expect(vapourClassOf(permeanceOf(film))).toBe("I");
  expect(vapourClassOf(permeanceOf({ ...film, airThickness: 0.1 }))).toBe("open");
});

// NIST SP 811, B.8: perm (0 °C) is 5.721 35 E-11 kg/(Pa s m2).
test("classes end at 0.1, 1 and 10 US perm, the edge within the class", () => {
  const edges = VAPOUR_CLASS_EDGES.map(({ permeance }) => permeance.value);
  [0.1, 1, 10].forEach((perms, nth) => expect(Math.abs(edges[nth]! / (perms * 5.72135e-11) - 1)).toBeLessThan(2e-6));
  expect(edges.map(vapourClassOf)).toEqual(["I", "II", "III"]);
  expect(edges.map((one) => vapourClassOf(one * 1.0001))).toEqual(["II", "III", "open"]);
});

test("outside the domain it throws and names the input", () => {
  for (const mu of [0.9, Number.NaN]) expect(() => equivalentAir.compute({ mu, d: 1 })).toThrow(/mu/);
  for (const d of [0, -1, Number.NaN]) expect(() => equivalentAir.compute({ mu: 1, d })).toThrow(/ d is/);
  expect(() => layerPermeance.compute({ delta_0: 2e-10, s_d: 0 })).toThrow(/s_d/);
  expect(() => vapourFlow.compute({ delta_0: 2e-10, p_1: 1, p_2: 0, s_d: 0 })).toThrow(/s_d/);
  for (const airThickness of [0, Infinity, Number.NaN]) expect(() => permeanceOf({ ...film, airThickness })).toThrow(/film/);
  for (const permeance of [-1, Number.NaN]) expect(() => vapourClassOf(permeance)).toThrow(/permeance/);
});
