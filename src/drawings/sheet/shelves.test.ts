import fc from "fast-check";
import { expect, test } from "vitest";
import type { Rect } from "../../geometry/rect.ts";
import { overlaps, rectHeight } from "../../geometry/rect.ts";
import type { Block, PlacedBlock } from "./shelves.ts";
import { column, levelled, shelve } from "./shelves.ts";

const RUN = { seed: 20270203, numRuns: 400 };
const AREA: Rect = { u0: 0.02, u1: 0.41, v0: 0.04, v1: 0.28 };
const blocks = fc.array(
  fc.record({ w: fc.double({ min: 0.01, max: 0.15, noNaN: true }), h: fc.double({ min: 0.005, max: 0.06, noNaN: true }) }).map(
    ({ w, h }): Block => ({ shapes: [], bounds: { u0: -w / 3, u1: w - w / 3, v0: -h, v1: 0 } }),
  ),
  { minLength: 1, maxLength: 12 },
);

test("shelved blocks lie in the area, apart, each once, with as much room above as below", () => {
  fc.assert(
    fc.property(blocks, (given) => {
      const pages = shelve(given, AREA);
      expect(pages.flat().map(({ block }) => block)).toEqual(given);
      for (const page of pages) {
        const rects = page.map(rectOf);
        expect(rects.every(inArea)).toBe(true);
        expect(clash(rects)).toBe(false);
        const [top, foot] = [Math.max(...rects.map(({ v1 }) => v1)), Math.min(...rects.map(({ v0 }) => v0))];
        const shelves = new Set(rects.map(({ v1 }) => v1.toFixed(9))).size;
        if (shelves === 1) expect(AREA.v1 - top).toBeCloseTo(foot - AREA.v0, 9);
      }
    }),
    RUN,
  );
});

test("levelled blocks keep their order, apart and above the foot, and start at their level where there is room", () => {
  const levels = fc.array(fc.option(fc.double({ min: 0, max: 0.3, noNaN: true }), { nil: undefined }), { minLength: 12, maxLength: 12 });
  fc.assert(
    fc.property(blocks, levels, (given, wanted) => {
      const stack = column(given, AREA);
      if (stack === undefined) return;
      const rects = levelled(stack.places, wanted, AREA.v0).map(rectOf);
      expect(rects.every(inArea)).toBe(true);
      for (const [index, rect] of rects.entries()) {
        const above = rects[index - 1];
        if (above !== undefined) expect(rect.v1).toBeLessThan(above.v0);
      }
    }),
    RUN,
  );
  const two: readonly Block[] = [0.03, 0.03].map((h) => ({ shapes: [], bounds: { u0: 0, u1: 0.1, v0: -h, v1: 0 } }));
  const stack = column(two, AREA);
  const tops = levelled(stack?.places ?? [], [0.25, 0.15], AREA.v0).map((place) => rectOf(place).v1);
  expect(tops[0]).toBeCloseTo(0.25, 12);
  expect(tops[1]).toBeCloseTo(0.15, 12);
});

function rectOf({ block: { bounds }, by }: PlacedBlock): Rect {
  return { u0: bounds.u0 + by.x, u1: bounds.u1 + by.x, v0: bounds.v0 + by.y, v1: bounds.v1 + by.y };
}

function inArea(rect: Rect): boolean {
  const slack = 1e-9;
  return rect.u0 >= AREA.u0 - slack && rect.u1 <= AREA.u1 + slack && rect.v0 >= AREA.v0 - slack && rect.v1 <= AREA.v1 + slack && rectHeight(rect) > 0;
}

function clash(rects: readonly Rect[]): boolean {
  return rects.some((a, index) => rects.slice(index + 1).some((b) => overlaps(a, b)));
}
