import fc from "fast-check";
import { expect, test } from "vitest";
import type { Sweep } from "../../build/build.ts";
import { cornersOf, nearestInSweep, outlineOf } from "./sector.ts";

const RUN = { seed: 20265, numRuns: 400 };
const quarter: Sweep = { hinge: { x: 0, y: 0, z: 0 }, radius: 1, from: 0, to: Math.PI / 2, height: 2, inside: true };
const square = (x: number, y: number, size: number) => cornersOf({ x: { from: x, to: x + size }, y: { from: y, to: y + size } });

// Closed forms: distances from the origin to squares.
test("nearest point of a square inside, across and beside the sweep", () => {
  expect(nearestInSweep(quarter, square(0.3, 0.4, 1))).toBeCloseTo(0.5, 12);
  expect(nearestInSweep(quarter, square(-0.5, 0.4, 1))).toBeCloseTo(0.4, 12);
  expect(nearestInSweep(quarter, square(-0.5, -0.5, 1))).toBe(0);
  expect(nearestInSweep(quarter, square(-1, 0.2, 1))).toBeUndefined();
  expect(nearestInSweep(quarter, square(0.2, -1, 0.5))).toBeUndefined();
});

test("the sweep decides, wherever the hinge and however it is turned", () => {
  const spot = fc.record({ x: fc.double({ min: -2, max: 2, noNaN: true }), y: fc.double({ min: -2, max: 2, noNaN: true }) });
  fc.assert(
    fc.property(spot, fc.double({ min: -3, max: 3, noNaN: true }), fc.double({ min: 0.2, max: Math.PI, noNaN: true }), spot, (hinge, from, turn, at) => {
      const sweep: Sweep = { ...quarter, hinge: { ...hinge, z: 0 }, from, to: from + turn };
      const r = Math.hypot(at.x - hinge.x, at.y - hinge.y);
      const angle = (Math.atan2(at.y - hinge.y, at.x - hinge.x) - from + 6 * Math.PI) % (2 * Math.PI);
      const size = 1e-3;
      fc.pre(r > 0.05 && Math.abs(angle - turn) * r > 2 * size && angle * r > 2 * size && (2 * Math.PI - angle) * r > 2 * size);
      const near = nearestInSweep(sweep, square(at.x - size / 2, at.y - size / 2, size));
      if (angle > turn) expect(near).toBeUndefined();
      else expect(Math.abs((near ?? Infinity) - r)).toBeLessThan(size);
    }),
    RUN,
  );
});

test("the outline holds the whole sector and little more", () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: Math.PI / 2, noNaN: true }), (angle) => {
      const outer = Math.max(...outlineOf(quarter).map((point) => point.x * Math.cos(angle) + point.y * Math.sin(angle)));
      expect(outer).toBeGreaterThanOrEqual(1 - 1e-12);
      expect(outer).toBeLessThan(1.0002);
    }),
    RUN,
  );
});
