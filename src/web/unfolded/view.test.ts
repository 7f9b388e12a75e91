import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fitted, fromScreen, panned, toScreen, zoomed } from "./view.ts";

const number = fc.double({ min: -500, max: 500, noNaN: true });
const point = fc.record({ x: number, y: number });
const view = fc.record({ scale: fc.double({ min: 10, max: 5000, noNaN: true }), x: number, y: number });

describe("the view of the sheet", () => {
  it("leads back from the screen to the sheet", () => {
    fc.assert(
      fc.property(view, point, (one, at) => {
        const back = fromScreen(one, toScreen(one, at));
        expect(back.x).toBeCloseTo(at.x, 6);
        expect(back.y).toBeCloseTo(at.y, 6);
      }),
      { seed: 1 },
    );
  });

  it("keeps the point that it zooms about, whatever the factor", () => {
    fc.assert(
      fc.property(view, point, fc.double({ min: 0.001, max: 1000, noNaN: true }), (one, about, times) => {
        const before = fromScreen(one, about);
        const after = fromScreen(zoomed(one, about, times), about);
        expect(after.x).toBeCloseTo(before.x, 6);
        expect(after.y).toBeCloseTo(before.y, 6);
      }),
      { seed: 2 },
    );
  });

  it("moves the sheet by as much as the hand", () => {
    expect(toScreen(panned({ scale: 50, x: 3, y: 4 }, { x: 10, y: -5 }), { x: 1, y: 1 })).toEqual({ x: 63, y: 49 });
  });

  it("fits a rectangle whole and in the middle", () => {
    const one = fitted({ x0: -3, x1: 15, y0: -8, y1: 3 }, { width: 1000, height: 700 }, 20);
    expect(toScreen(one, { x: 6, y: -2.5 })).toEqual({ x: 500, y: 350 });
    const corner = toScreen(one, { x: -3, y: -8 });
    expect(corner.x).toBeGreaterThanOrEqual(20 - 1e-9);
    expect(corner.y).toBeGreaterThanOrEqual(20 - 1e-9);
  });
});
