import fc from "fast-check";
import { expect, test } from "vitest";
import { intervalsOverlap, subtractIntervals } from "./interval.ts";
import { grow, intersect, overlaps, rectArea, rectAt, rectDistance } from "./rect.ts";

test("a rectangle without area is refused", () => {
  expect(() => rectAt(0, 0, 0, 1)).toThrow(RangeError);
  expect(() => rectAt(0, 0, 1, Number.NaN)).toThrow(RangeError);
});

test("rectangles that touch do not overlap and are no distance apart", () => {
  const a = rectAt(0, 0, 1, 1);
  expect(overlaps(a, rectAt(1, 0, 1, 1))).toBe(false);
  expect(intersect(a, rectAt(0.5, 0.5, 1, 1))).toEqual({ u0: 0.5, u1: 1, v0: 0.5, v1: 1 });
  expect(rectDistance(a, rectAt(1, 0, 1, 1))).toBe(0);
  expect(rectDistance(a, rectAt(4, 5, 1, 1))).toBe(5);
  expect(rectArea(grow(a, 0.5))).toBe(4);
});

test("what is left of a stretch and what was taken make up the whole", () => {
  const stretch = fc
    .tuple(fc.double({ min: -1, max: 11, noNaN: true }), fc.double({ min: 0.01, max: 5, noNaN: true }))
    .map(([from, length]) => ({ from, to: from + length }));
  fc.assert(
    fc.property(fc.array(stretch, { maxLength: 8 }), (taken) => {
      const left = subtractIntervals({ from: 0, to: 10 }, taken);
      for (const one of left) expect(taken.some((cut) => intervalsOverlap(cut, one))).toBe(false);
      // Sampled at a thousand places: each is left or taken, never both.
      for (let k = 0; k < 1000; k += 1) {
        const at = (k + 0.5) / 100;
        const isLeft = left.some(({ from, to }) => from < at && at < to);
        const isTaken = taken.some(({ from, to }) => from - 1e-4 < at && at < to + 1e-4);
        expect(isLeft || isTaken).toBe(true);
      }
    }),
    { seed: 11 },
  );
});
