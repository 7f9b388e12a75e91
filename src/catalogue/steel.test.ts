import { describe, expect, it } from "vitest";
import { inch, poundPerFoot } from "./imperial.ts";
import { hollowArea, steelPerMetre, stripWidth } from "./steel.ts";

describe("hollow sections", () => {
  // AISC shapes database v16: area in in2 at the design thickness, seen.
  const listed: readonly [depth: number, width: number, design: number, area: number][] = [
    [2, 2, 0.116, 0.84],
    [2, 2, 0.174, 1.19],
    [2, 2, 0.233, 1.51],
    [3, 2, 0.116, 1.07],
    [3, 2, 0.174, 1.54],
    [3, 3, 0.116, 1.3],
    [3, 3, 0.174, 1.89],
    [3, 3, 0.233, 2.44],
    [4, 4, 0.233, 3.37],
    [6, 4, 0.233, 4.3],
  ];

  it.each(listed)("gives the listed area of %s x %s x %s in", (depth, width, design, area) => {
    const found = hollowArea(depth * inch, width * inch, design * inch) / inch ** 2;
    // The list keeps three digits: half a unit in the last place of 0.84 is 0.6 %, of 1.89 0.3 %.
    expect(Math.abs(found - area)).toBeLessThanOrEqual(Math.max(0.003 * area, 0.0055));
  });

  it("refuses a wall too thick for its own corners", () => {
    expect(() => hollowArea(0.04, 0.04, 0.01)).toThrow(RangeError);
    expect(() => hollowArea(0.05, 0.05, Number.NaN)).toThrow(RangeError);
    expect(() => hollowArea(0.05, 0.05, 0)).toThrow(RangeError);
  });
});

describe("strip of folded sections", () => {
  it("is the flat width where there is no fold", () => {
    expect(stripWidth([0.1], 0.002, 0.003)).toBe(0.1);
  });

  it("has the length of a quarter circle at each fold", () => {
    // Two legs of 20 mm, 2 mm sheet, inside radius 4 mm: straight 20 - 6 on each, arc of middle radius 5 mm.
    expect(stripWidth([0.02, 0.02], 0.002, 0.004)).toBeCloseTo(2 * 0.014 + (Math.PI / 2) * 0.005, 12);
  });

  // Section tables of the US stud makers' association, in a public data file, seen: area in in2 and weight in lb/ft.
  const studs: readonly [name: string, web: number, flange: number, lip: number, thickness: number, area: number, weight: number][] = [
    ["1-5/8 x 1-1/4 in, 33 mil", 1.625, 1.25, 0.1875, 0.0346, 0.145, 0.49],
    ["2-1/2 x 1-1/4 in, 18 mil", 2.5, 1.25, 0.1875, 0.0188, 0.097, 0.33],
    ["2-1/2 x 1-1/4 in, 33 mil", 2.5, 1.25, 0.1875, 0.0346, 0.176, 0.6],
    ["3-5/8 x 1-5/8 in, 33 mil", 3.625, 1.625, 0.5, 0.0346, 0.262, 0.89],
  ];

  it.each(studs)("gives the listed area and weight of %s", (_, web, flange, lip, thickness, area, weight) => {
    const elements = [lip, flange, web, flange, lip].map((inches) => inches * inch);
    const radius = (3 / 32 - thickness / 2) * inch;
    const found = stripWidth(elements, thickness * inch, radius) * thickness * inch;
    // Half a unit in the last digit that the tables print.
    expect(Math.abs(found / inch ** 2 - area)).toBeLessThan(0.0011);
    expect(Math.abs(steelPerMetre(found) / poundPerFoot - weight)).toBeLessThan(0.0051);
  });
});
