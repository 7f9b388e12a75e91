import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { centreHeight, cornerLoad, eccentricity, eccentricityShare, massCentre, massMoment, massSum, STANDARD_GRAVITY } from "./rigidBody.ts";

const RUN = { seed: 20261, numRuns: 500 };
const g_n = STANDARD_GRAVITY;
const S_x = 5.853;
const P_y = 2.259;
const coordinate = fc.double({ min: -15, max: 15, noNaN: true });
const cloud = fc.array(fc.record({ m: fc.double({ min: 0.001, max: 5000, noNaN: true }), x: coordinate, y: coordinate }), { minLength: 1, maxLength: 60 });
const CORNERS = [[-1, -1], [-1, 1], [1, -1], [1, 1]] as const;

const centreOf = (masses: readonly number[], places: readonly number[]): number => {
  const m_sum = massSum.compute({ m: masses });
  return massCentre.compute({ S_m: [massMoment.compute({ m: masses, x: places })], m_sum });
};
const loadsOf = (m_sum: number, e_x: number, e_y: number): readonly number[] =>
  CORNERS.map(([s_x, s_y]) => cornerLoad.compute({ m_sum, g_n, s_x, s_y, e_x, e_y, S_x, P_y }));

// No published figures for a box's corner loads: the cases below are closed forms of statics.
describe("closed forms", () => {
  test("a mass in the middle loads four corners alike", () => {
    expect(loadsOf(4000, 0, 0)).toEqual([1000 * g_n, 1000 * g_n, 1000 * g_n, 1000 * g_n]);
  });

  test("a mass over the line between two corners leaves the other two empty", () => {
    const [a, b, c, d] = loadsOf(1000, S_x / 2, 0);
    expect([a, b]).toEqual([0, 0]);
    expect([c, d]).toEqual([500 * g_n, 500 * g_n]);
  });

  test("a mass over a corner lifts the one across", () => {
    const [across, , , over] = loadsOf(1000, S_x / 2, P_y / 2);
    expect(across).toBeCloseTo(-250 * g_n, 9);
    expect(over).toBeCloseTo(750 * g_n, 9);
  });

  test("two equal masses have their centre half-way", () => {
    expect(centreOf([7, 7], [1, 4])).toBeCloseTo(2.5, 15);
  });

  test("the middle of a length has no eccentricity, and the sign follows the axis", () => {
    expect(eccentricity.compute({ x_cm: 3, L_e: 6 })).toBe(0);
    expect(eccentricity.compute({ x_cm: 2.5, L_e: 6 })).toBe(-0.5);
    expect(eccentricityShare.compute({ e_cm: -0.3, L_e: 6 })).toBeCloseTo(0.05, 15);
    expect(centreHeight.compute({ x_cm: 1, h_floor: 0.17 })).toBeCloseTo(1.17, 15);
  });
});

describe("balance of random clouds of parts", () => {
  test("corner loads carry the weight and both moments to 1e-9", () => {
    fc.assert(
      fc.property(cloud, (parts) => {
        const masses = parts.map(({ m }) => m);
        const m_sum = massSum.compute({ m: masses });
        const e_x = centreOf(masses, parts.map(({ x }) => x));
        const e_y = centreOf(masses, parts.map(({ y }) => y));
        const loads = loadsOf(m_sum, e_x, e_y);
        const moment = (arm: (corner: (typeof CORNERS)[number]) => number): number =>
          loads.reduce((sum, load, index) => sum + load * arm(CORNERS[index]!), 0);
        const scale = m_sum * g_n * 15;
        expect(Math.abs(loads.reduce((sum, load) => sum + load, 0) - m_sum * g_n)).toBeLessThan(1e-9 * scale);
        // Moments of the parts themselves, taken one by one about the middle of the supports.
        const wanted = (of: (part: { x: number; y: number }) => number): number => parts.reduce((sum, part) => sum + part.m * g_n * of(part), 0);
        expect(Math.abs(moment(([s]) => (s * S_x) / 2) - wanted(({ x }) => x))).toBeLessThan(1e-9 * scale);
        expect(Math.abs(moment(([, s]) => (s * P_y) / 2) - wanted(({ y }) => y))).toBeLessThan(1e-9 * scale);
      }),
      RUN,
    );
  });

  test("the centre lies between the outermost parts, and moves with all of them", () => {
    fc.assert(
      fc.property(cloud, coordinate, (parts, shift) => {
        const masses = parts.map(({ m }) => m);
        const places = parts.map(({ x }) => x);
        const centre = centreOf(masses, places);
        expect(centre).toBeGreaterThanOrEqual(Math.min(...places) - 1e-9);
        expect(centre).toBeLessThanOrEqual(Math.max(...places) + 1e-9);
        expect(centreOf(masses, places.map((x) => x + shift))).toBeCloseTo(centre + shift, 9);
      }),
      RUN,
    );
  });
});

describe("domain", () => {
  test("no mass has no centre, and no distance carries nothing", () => {
    expect(() => massCentre.compute({ S_m: [1], m_sum: 0 })).toThrow(/m_sum/);
    expect(() => massMoment.compute({ m: [1, 2], x: [1] })).toThrow(RangeError);
    expect(() => eccentricityShare.compute({ e_cm: 1, L_e: 0 })).toThrow(/L_e/);
    expect(() => cornerLoad.compute({ m_sum: 1, g_n, s_x: 1, s_y: 1, e_x: 0, e_y: 0, S_x: 0, P_y })).toThrow(RangeError);
  });
});
