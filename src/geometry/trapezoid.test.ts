// Closed forms of a trapezoidal wave: derived from its flats and slopes; the running integrals are held to Simpson's rule.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { depthAt, developedLength, slopeWidth, type Trapezoid, troughArea, wavePoints } from "./trapezoid.ts";

const SEED = 27;
const waves: fc.Arbitrary<Trapezoid> = fc
  .record({
    outerFlat: fc.double({ min: 0.02, max: 0.15, noNaN: true }),
    innerFlat: fc.double({ min: 0.02, max: 0.15, noNaN: true }),
    slope: fc.double({ min: 0.001, max: 0.1, noNaN: true }),
    depth: fc.double({ min: 0.01, max: 0.06, noNaN: true }),
  })
  .map(({ outerFlat, innerFlat, slope, depth }) => ({ outerFlat, innerFlat, depth, pitch: outerFlat + innerFlat + 2 * slope }));
const place = fc.double({ min: -3, max: 15, noNaN: true });

describe("a whole pitch", () => {
  test("holds the outer flat and two half slopes of trough", () => {
    fc.assert(
      fc.property(waves, fc.integer({ min: 1, max: 40 }), (wave, n) => {
        const closed = n * wave.depth * (wave.outerFlat + slopeWidth(wave));
        expect(troughArea(wave, 0, n * wave.pitch)).toBeCloseTo(closed, 10);
      }),
      { seed: SEED },
    );
  });

  test("lies flat as two flats and two hypotenuses", () => {
    fc.assert(
      fc.property(waves, fc.integer({ min: 1, max: 40 }), (wave, n) => {
        const closed = n * (wave.outerFlat + wave.innerFlat + 2 * Math.hypot(slopeWidth(wave), wave.depth));
        expect(developedLength(wave, 0, n * wave.pitch)).toBeCloseTo(closed, 10);
      }),
      { seed: SEED },
    );
  });
});

describe("any stretch", () => {
  test("has the area that summing depths gives", () => {
    fc.assert(
      fc.property(waves, place, fc.double({ min: 0.01, max: 2, noNaN: true }), (wave, from, length) => {
        const points = wavePoints(wave, from, from + length);
        let area = 0;
        for (const [index, a] of points.slice(0, -1).entries()) {
          const b = points[index + 1]!;
          area += ((b.x - a.x) * (depthAt(wave, a.x) + depthAt(wave, b.x))) / 2;
        }
        expect(troughArea(wave, from, from + length)).toBeCloseTo(area, 9);
      }),
      { seed: SEED },
    );
  });

  test("has the length of its drawn line", () => {
    fc.assert(
      fc.property(waves, place, fc.double({ min: 0.01, max: 2, noNaN: true }), (wave, from, length) => {
        const points = wavePoints(wave, from, from + length);
        let drawn = 0;
        for (const [index, a] of points.slice(0, -1).entries()) {
          const b = points[index + 1]!;
          drawn += Math.hypot(b.x - a.x, b.y - a.y);
        }
        expect(developedLength(wave, from, from + length)).toBeCloseTo(drawn, 9);
      }),
      { seed: SEED },
    );
  });

  test("adds up", () => {
    fc.assert(
      fc.property(waves, place, place, place, (wave, a, b, c) => {
        expect(troughArea(wave, a, b) + troughArea(wave, b, c)).toBeCloseTo(troughArea(wave, a, c), 9);
        expect(developedLength(wave, a, b) + developedLength(wave, b, c)).toBeCloseTo(developedLength(wave, a, c), 9);
      }),
      { seed: SEED },
    );
  });
});

test("a wave with upright sides counts them in its length and not in its area", () => {
  const square = { outerFlat: 0.1, innerFlat: 0.1, depth: 0.05, pitch: 0.2 };
  expect(troughArea(square, 0, 0.2)).toBeCloseTo(0.005, 12);
  expect(depthAt(square, 0.05)).toBe(0.05);
  expect(depthAt(square, 0.15)).toBe(0);
});
