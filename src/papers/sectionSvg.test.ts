// Pictures by construction: derived, from a section drawn by hand.
import { describe, expect, test } from "vitest";
import type { HeatPicture } from "../checks/heatShown.ts";
import { materialLooks } from "./materialLooks.ts";
import { dotsAlong, placeInAir, placeOnLines } from "./sectionLabels.ts";
import { sectionSvg } from "./sectionSvg.ts";

const rect = (x0: number, y0: number, x1: number, y1: number) => [{ x: x0, y: y0 }, { x: x1, y: y0 }, { x: x1, y: y1 }, { x: x0, y: y1 }];

/** Foam 0.1 m thick over 0.4 m, outside air below it and a room above, a steel skin at its foot. */
const wall: HeatPicture = {
  id: "left/field",
  name: "field of the left wall",
  hour: "design",
  window: { u0: 0, u1: 0.4, v0: -0.05, v1: 0.2 },
  axes: { x: { x: 1, y: 0, z: 0 }, y: { x: 0, y: 1, z: 0 } },
  outlines: [
    { what: "foam on the left wall", points: rect(0, 0, 0.4, 0.1), closed: true },
    { what: "skin", points: [{ x: 0, y: 0 }, { x: 0.4, y: 0 }], closed: false },
  ],
  isotherms: [{ temperature: 10, lines: [[{ x: 0, y: 0.06 }, { x: 0.4, y: 0.06 }]] }],
  dewPoint: { temperature: 9.3, lines: [[{ x: 0, y: 0.05 }, { x: 0.4, y: 0.05 }]] },
  environments: [
    { name: "outside", temperature: -10, rings: [rect(0, -0.05, 0.4, 0)] },
    { name: "<room> & co", temperature: 20, rings: [rect(0, 0.1, 0.4, 0.2)] },
  ],
  coldest: { environment: "R1", room: "room", factor: 0.9, temperature: 17, at: { x: 0.1, y: 0.1 }, words: "(here)" },
  conductivities: { "foam on the left wall": 0.03 },
  thicknesses: { skin: 0.002 },
};
const drawn = (change: Partial<HeatPicture> = {}) => {
  const picture = { ...wall, ...change };
  return sectionSvg(picture, materialLooks([picture]), "metric");
};
/** Centre of the mark at the coldest point, mm. */
const mark = (svg: string): readonly [number, number] => {
  const [, x, y] = /<circle cx="([^"]+)" cy="([^"]+)" r="1.15"/.exec(svg)!;
  return [Number(x), Number(y)];
};

describe("a section on paper", () => {
  test("is to scale, as large as its place allows", () => {
    const { width, height, scale } = drawn();
    expect(scale).toBe("1:5");
    expect(width).toBeCloseTo(80, 9);
    expect(height - 6).toBeCloseTo(50, 9);
    expect(drawn().svg).toContain("100 mm at 1:5");
  });

  test("has the room above and the outside at its foot, seen from above", () => {
    expect(mark(drawn().svg)).toEqual([20, 20]);
  });

  test("is mirrored where its axes would show it from below", () => {
    expect(mark(drawn({ axes: { x: { x: -1, y: 0, z: 0 }, y: { x: 0, y: 1, z: 0 } } }).svg)).toEqual([60, 20]);
  });

  test("stands upright as in the box: a roof has its outside above, a wall cut upright its top above", () => {
    expect(mark(drawn({ axes: { x: { x: 1, y: 0, z: 0 }, y: { x: 0, y: 0, z: -1 } } }).svg)).toEqual([20, 30]);
    // Turned, 0.25 m wide and 0.4 m tall: x of the section is up.
    const upright = drawn({ axes: { x: { x: 0, y: 0, z: 1 }, y: { x: 0, y: 1, z: 0 } } });
    expect([upright.width, upright.height - 6]).toEqual([50, 80]);
    expect(mark(upright.svg)).toEqual([30, 60]);
  });

  test("names airs, dew point, isotherms and the coldest surface, all as text", () => {
    const { svg } = drawn();
    for (const text of ["outside -10 °C", "&lt;room&gt; &amp; co 20 °C", "dew point 9.3 °C", ">10°<", "17.0 °C"]) expect(svg).toContain(text);
  });

  test("draws the dew point heavier than an isotherm, and steel never thinner than can be seen", () => {
    const { svg } = drawn();
    expect(svg).toMatch(/stroke-width="0.6" stroke-dasharray/);
    expect(svg).toMatch(/stroke="#111111" stroke-width="0.4"\/>/);
    expect(drawn({ thicknesses: { skin: 0.0005 } }).svg).toMatch(/stroke="#111111" stroke-width="0.35"\/>/);
  });

  test("is refused with a material that has no look", () => {
    expect(() => sectionSvg(wall, new Map(), "metric")).toThrow(/foam on the left wall has no look/);
  });
});

test("a material looks the same on every face, enclosed air is one material, others differ", () => {
  const conductivities = { "foam on the left wall": 0.03, "foam on the roof": 0.03, "air in the post": 0.1, "air behind the boards, roof": 0.2, "gypsum": 0.25, "plywood": 0.12, "steel plate": 50 };
  const looks = materialLooks([{ ...wall, conductivities }]);
  expect(looks.get("foam on the left wall")).toEqual(looks.get("foam on the roof"));
  expect(looks.get("air in the post")).toEqual(looks.get("air behind the boards, roof"));
  expect(new Set([...looks.values()].map(({ fill, hatch }) => `${fill} ${hatch}`)).size).toBe(5);
});

describe("places for texts", () => {
  const boxAt = ({ x, y }: { readonly x: number; readonly y: number }) => ({ u0: x - 5, u1: x + 5, v0: y - 1, v1: y + 1 });

  test("in air lie wholly inside it, also beside a hole, or nowhere", () => {
    const box = placeInAir([rect(0, 0, 40, 10), rect(10, 0, 30, 10).toReversed()], boxAt, () => true);
    expect(box).toBeUndefined();
    const beside = placeInAir([rect(0, 0, 40, 10), rect(15, 0, 30, 10).toReversed()], boxAt, () => true)!;
    expect(beside.u0).toBeGreaterThanOrEqual(0);
    expect(beside.u1).toBeLessThanOrEqual(15);
  });

  test("on a line lie at its middle, further along where that is taken, and never on a line shorter than the text", () => {
    const line = [{ x: 0, y: 0 }, { x: 100, y: 0 }];
    expect(placeOnLines([line], boxAt, () => true)).toEqual(boxAt({ x: 50, y: 0 }));
    expect(placeOnLines([line], boxAt, ({ u0 }) => u0 > 50)).toEqual(boxAt({ x: 60, y: 0 }));
    expect(placeOnLines([[{ x: 0, y: 0 }, { x: 8, y: 0 }]], boxAt, () => true)).toBeUndefined();
  });

  test("are kept off lines by dots that leave no wider gap than asked", () => {
    const dots = dotsAlong([{ x: 0, y: 0 }, { x: 10, y: 0 }, { x: 10, y: 3 }], 0.8);
    expect(dots[0]).toEqual({ x: 0, y: 0 });
    expect(dots.at(-1)).toEqual({ x: 10, y: 3 });
    for (const [k, b] of dots.slice(1).entries()) expect(Math.hypot(b.x - dots[k]!.x, b.y - dots[k]!.y)).toBeLessThanOrEqual(0.8);
  });
});
