import { expect, test } from "vitest";
import * as limits from "./limits.ts";

// In millimetres (degrees, shares) as docs/checks/fit.md and docs/checks/mass.md state them; an inch is 25.4 mm exactly
// (international yard and pound agreement, 1959). Common practice but for: headroom of IRC R305.1, seams of GA-216 and
// eccentricity of ISO 3874, all three from memory.
test.each([
  ["LEAST_STRIP", 50.8],
  ["LEAST_BETWEEN_HOLES", 101.6],
  ["LARGEST_UNFRAMED", 203.2],
  ["GREATEST_SHIM", 25.4],
  ["FREE_BEFORE_AIR", 304.8],
  ["FREE_BEFORE_DOOR", 914.4],
  ["LEAST_HEADROOM", 2133.6],
  ["LEAST_STAGGER", 254],
  ["SEAM_TOLERANCE", 1],
  ["MOST_OVERHANG", 25.4],
  ["MOST_INTO_STEEL", 1],
  ["LONGEST_OPEN_EDGE", 50.8],
] as const)("%s is %s mm", (name, millimetres) => {
  expect(limits[name].value * 1000).toBeCloseTo(millimetres, 9);
});

test("a leaf opens square, and mass lies within a twentieth of the middle", () => {
  expect((limits.LEAST_DOOR_ANGLE.value * 180) / Math.PI).toBeCloseTo(90, 9);
  expect(limits.GREATEST_ECCENTRICITY.value).toBe(0.05);
});
