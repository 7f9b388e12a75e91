import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { labelPlaces, namePlace, spread } from "./placing.ts";

const SEED = { seed: 20261125 };

describe("numbers at the side of a picture", () => {
  it("stay apart, in their order, within the picture; those with room stay where they want to be", () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 400, noNaN: true }), { minLength: 1, maxLength: 15 }), (wanted) => {
        const placed = spread(wanted, 20, 10, 390);
        const order = wanted.map((_, index) => index).sort((a, b) => wanted[a]! - wanted[b]!);
        order.slice(1).forEach((index, before) => expect(placed[index]! - placed[order[before]!]!).toBeGreaterThanOrEqual(20 - 1e-9));
        for (const one of placed) {
          expect(one).toBeGreaterThanOrEqual(10);
          expect(one).toBeLessThanOrEqual(390);
        }
      }),
      SEED,
    );
    expect(spread([50, 300, 120], 20, 10, 390)).toEqual([50, 300, 120]);
  });

  it("come closer where there are too many for the picture", () => {
    expect(spread([5, 5, 5], 20, 0, 30)).toEqual([0, 15, 30]);
    expect(spread([], 20, 0, 30)).toEqual([]);
  });
});

describe("labels of lines", () => {
  const line = (y: number, length = 200) => [[{ x: 0, y }, { x: length, y }]];

  it("lie on their lines, clear of each other and of what is taken", () => {
    const places = labelPlaces([line(0), line(4), line(100)], 40, 60, [{ x: 100, y: 100 }]);
    expect(places[0]).toEqual({ x: 100, y: 0 });
    expect(places[1]).toEqual({ x: 40, y: 4 });
    expect(places[2]).toEqual({ x: 40, y: 100 });
  });

  it("are left out where a line is short or there is no room", () => {
    expect(labelPlaces([line(0, 50), []], 40, 60, [])).toEqual([undefined, undefined]);
    expect(labelPlaces([line(0, 70), line(2, 70)], 40, 60, [])[1]).toBeUndefined();
  });
});

describe("a name within rings", () => {
  const square = (from: number, to: number) => [{ x: from, y: from }, { x: to, y: from }, { x: to, y: to }, { x: from, y: to }];

  it("stands in the middle of a square, beside a hole or a line across it", () => {
    const middle = namePlace([square(0, 100)], [], 20, 10)!;
    expect(Math.hypot(middle.x - 50, middle.y - 50)).toBeLessThan(5);
    const beside = namePlace([square(0, 100), square(35, 65).toReversed()], [], 20, 10)!;
    expect(beside.x < 25 || beside.x > 75 || beside.y < 30 || beside.y > 70).toBe(true);
    const clear = namePlace([square(0, 100)], [[{ x: 0, y: 50 }, { x: 100, y: 50 }]], 20, 10)!;
    expect(Math.abs(clear.y - 50)).toBeGreaterThan(5);
  });

  it("is left out where it has no room", () => {
    expect(namePlace([square(0, 100)], [], 150, 10)).toBeUndefined();
    expect(namePlace([], [], 10, 10)).toBeUndefined();
  });
});
