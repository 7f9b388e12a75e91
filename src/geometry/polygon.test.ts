// Areas and centres of cut rectangles: derived, by adding and taking away rectangles.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cutRects, isRect, polygonArea, polygonBounds, polygonCentre, rectPolygon } from "./polygon.ts";
import { rectArea } from "./rect.ts";

const board = { u0: 0, u1: 1.2, v0: 0, v1: 2.4 };

describe("a rectangle with rectangles taken out", () => {
  test("keeps a window as a hole", () => {
    const [one, ...more] = cutRects(board, [{ u0: 0.3, u1: 0.9, v0: 1, v1: 1.6 }]);
    expect(more).toEqual([]);
    expect(one?.holes).toHaveLength(1);
    expect(polygonArea(one!)).toBeCloseTo(1.2 * 2.4 - 0.36, 12);
    expect(isRect(one!)).toBe(false);
  });

  test("falls in two where the cut goes right through", () => {
    const pieces = cutRects(board, [{ u0: 0.5, u1: 0.7, v0: -1, v1: 3 }]);
    expect(pieces.map(polygonArea).map((area) => area.toFixed(6))).toEqual(["1.200000", "1.200000"]);
    expect(pieces.every(isRect)).toBe(true);
  });

  test("is whole where no cut reaches it, and nothing where one covers it", () => {
    expect(cutRects(board, [{ u0: 1.2, u1: 2, v0: 0, v1: 2 }])).toEqual([rectPolygon(board)]);
    expect(cutRects(board, [{ u0: -1, u1: 2, v0: -1, v1: 3 }])).toEqual([]);
  });

  test("has the area and the centre that moments give, for any one cut inside", () => {
    const inside = fc
      .tuple(fc.double({ min: 0.1, max: 0.5, noNaN: true }), fc.double({ min: 0.1, max: 1, noNaN: true }))
      .map(([u, v]) => ({ u0: u, u1: u + 0.4, v0: v, v1: v + 0.7 }));
    fc.assert(
      fc.property(inside, (cut) => {
        const [piece] = cutRects(board, [cut]);
        const area = rectArea(board) - rectArea(cut);
        expect(polygonArea(piece!)).toBeCloseTo(area, 10);
        const centre = polygonCentre(piece!);
        expect(centre.x * area).toBeCloseTo(rectArea(board) * 0.6 - rectArea(cut) * (cut.u0 + 0.2), 9);
        expect(centre.y * area).toBeCloseTo(rectArea(board) * 1.2 - rectArea(cut) * (cut.v0 + 0.35), 9);
        expect(polygonBounds(piece!)).toEqual(board);
      }),
      { seed: 5 },
    );
  });
});

test("a polygon without area has no centre", () => {
  expect(() => polygonCentre({ outer: [{ x: 0, y: 0 }, { x: 1, y: 0 }, { x: 2, y: 0 }], holes: [] })).toThrow(RangeError);
});
