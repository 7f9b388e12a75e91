import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { PictureGrid, SectionPicture } from "../../river/sections.ts";
import { gridPoint } from "./gridPoint.ts";
import { frameIn } from "./frame.ts";
import { materialRows } from "./materials.ts";
import { bandOf, bandsOf, shade } from "./shade.ts";

const SEED = { seed: 20261125 };
const WINDOW = { u0: 0, u1: 0.3, v0: 0, v1: 0.2 };

/** A field that is linear in place, whose triangles and bilinear cells have to give it back exactly. */
const linear = (x: number, y: number): number => -10 + 40 * x + 100 * y;

/** Three by two cells: one of foam, one cut by a rising slope with its lower half solid, one by a falling one with its upper half, air above. */
const GRID: PictureGrid = (() => {
  const [xs, ys] = [Float64Array.of(0, 0.1, 0.15, 0.3), Float64Array.of(0, 0.12, 0.2)];
  const temperature = new Float64Array(12);
  ys.forEach((y, j) => xs.forEach((x, i) => (temperature[j * 4 + i] = linear(x, y))));
  return {
    xs,
    ys,
    active: Uint8Array.of(1, 1, 1, 1, 1, 1, 1, 1, 0, 0, 0, 0),
    temperature,
    flux: { x: Float64Array.of(3, 0, 0, 0, 0, 0), y: Float64Array.of(4, 0, 0, 0, 0, 0) },
    what: ["foam", "board"],
    whatAt: Int16Array.of(0, 1, 1, -1, -1, -1),
    slope: Int8Array.of(0, 1, -1, 0, 0, 0),
    halves: Uint8Array.of(3, 1, 2, 0, 0, 0),
  };
})();

const PICTURE: SectionPicture = {
  id: "a",
  name: "a",
  hour: "design",
  window: WINDOW,
  axes: { x: { x: 1, y: 0, z: 0 }, y: { x: 0, y: 1, z: 0 } },
  outlines: [{ what: "sheet", points: [{ x: 0, y: 0.12 }, { x: 0.1, y: 0.12 }], closed: false }],
  grid: GRID,
  isotherms: [],
  dewPoint: undefined,
  environments: [],
  coldest: undefined,
};

describe("a point of a section", () => {
  it("has the temperature of a linear field, in whole cells and in halves", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 0.3, noNaN: true }), fc.double({ min: 0, max: 0.119, noNaN: true }), (x, y) => {
        const found = gridPoint({ ...PICTURE, outlines: [] }, { x, y }, 0);
        const below = (x < 0.15 ? (x - 0.1) / 0.05 : 1 - (x - 0.15) / 0.15) - y / 0.12;
        // On a slope itself either side will do.
        fc.pre(Math.abs(below) > 1e-9 && Math.abs(x - 0.1) > 1e-9 && Math.abs(x - 0.15) > 1e-9);
        const isSolid = x < 0.1 || (x < 0.15 ? below > 0 : below < 0);
        expect(found !== undefined).toBe(isSolid);
        if (found !== undefined) expect(found.temperature).toBeCloseTo(linear(x, y), 9);
      }),
      SEED,
    );
  });

  it("names its material and the size of its flux, and nothing in air or beyond the window", () => {
    expect(gridPoint(PICTURE, { x: 0.05, y: 0.05 }, 0.001)).toMatchObject({ what: "foam", flux: 5 });
    expect(gridPoint(PICTURE, { x: 0.14, y: 0.02 }, 0.001)?.what).toBe("board");
    expect(gridPoint(PICTURE, { x: 0.05, y: 0.15 }, 0.001)).toBeUndefined();
    expect(gridPoint(PICTURE, { x: 0.31, y: 0.05 }, 0.001)).toBeUndefined();
  });

  it("belongs to the solid beside it where it lies on a surface", () => {
    expect(gridPoint({ ...PICTURE, outlines: [] }, { x: 0.05, y: 0.12 }, 0.01)?.temperature).toBeCloseTo(linear(0.05, 0.12), 3);
    expect(gridPoint({ ...PICTURE, outlines: [] }, { x: 0.05, y: 0.1201 }, 0.01)).toBeUndefined();
  });

  it("is on a sheet where one is near, at the temperature of the nearest node", () => {
    expect(gridPoint(PICTURE, { x: 0.09, y: 0.121 }, 0.002)).toEqual({ what: "sheet", temperature: linear(0.1, 0.12), flux: undefined });
    expect(gridPoint(PICTURE, { x: 0.09, y: 0.121 }, 0.0005)).toBeUndefined();
  });
});

describe("the materials of a section", () => {
  it("are each named once, with the least and greatest temperature of their nodes", () => {
    expect(materialRows(PICTURE).map(({ number, what, lowest, highest, mostFlux }) => [number, what, lowest, highest, mostFlux])).toEqual([
      [1, "foam", linear(0, 0), linear(0.1, 0.12), 5],
      [2, "board", linear(0.1, 0), linear(0.3, 0.12), 0],
      [3, "sheet", linear(0, 0.12), linear(0.1, 0.12), undefined],
    ]);
  });

  it("are pointed at where they are seen, as far right as they reach", () => {
    const anchors = materialRows(PICTURE).map(({ anchor: { x, y } }) => [x, y]);
    expect(anchors.flat().map((one) => Number(one.toFixed(9)))).toEqual([0.05, 0.06, 0.225, 0.06, 0.1, 0.12]);
  });
});

describe("the shades of a picture", () => {
  const bands = bandsOf([-5, 0], [[0, 0, 200], [200, 100, 0]]);

  it("spread the scale from cold to warm over the bands", () => {
    expect(bands.colours).toEqual([[0, 0, 200], [100, 50, 100], [200, 100, 0]]);
    expect([-6, -5, -0.1, 0, 9].map((temperature) => bandOf(bands.levels, temperature))).toEqual([0, 1, 1, 2, 2]);
    expect(bandsOf([], [[0, 0, 200], [200, 100, 0]]).colours).toEqual([[100, 50, 100]]);
  });

  it.each([
    { isTurned: false, isDown: false },
    { isTurned: false, isDown: true },
    { isTurned: true, isDown: false },
  ])("are those of the temperature under each pixel, and clear in air, lying %j", (lie) => {
    const frame = frameIn(WINDOW, lie, 300, 300);
    const pixels = shade(GRID, frame, frame.width, frame.height, bands);
    const at = (x: number, y: number): readonly number[] => {
      const [h, v] = lie.isTurned ? [y, x] : [x, y];
      const [height] = [lie.isTurned ? WINDOW.u1 : WINDOW.v1];
      const [column, row] = [Math.floor(h * frame.scale), Math.floor((lie.isDown ? v : height - v) * frame.scale)];
      return [...pixels.slice((row * frame.width + column) * 4, (row * frame.width + column) * 4 + 4)];
    };
    expect(at(0.02, 0.02)).toEqual([0, 0, 200, 255]);
    expect(at(0.02, 0.07)).toEqual([100, 50, 100, 255]);
    expect(at(0.08, 0.11)).toEqual([200, 100, 0, 255]);
    expect(at(0.05, 0.16)).toEqual([0, 0, 0, 0]);
    expect(at(0.11, 0.1)).toEqual([0, 0, 0, 0]);
  });
});
