import { describe, expect, it } from "vitest";
import { inch, poundPerFoot } from "./imperial.ts";
import { catalogue } from "./catalogue.ts";
import { hollowArea, steelPerMetre } from "./steel.ts";

const { sections } = catalogue;
const pounds = (id: string): number => sections.get(id).massPerLength / poundPerFoot;

describe("folded sections", () => {
  // Section tables of the US stud makers' association, in a public data file, seen.
  const studs: readonly [string, number][] = [
    ["stud-1-5-8-33mil", 0.49],
    ["stud-2-1-2-18mil", 0.33],
    ["stud-2-1-2-33mil", 0.6],
  ];

  it.each(studs)("%s weighs %s lb/ft", (id, weight) => {
    expect(Math.abs(pounds(id) - weight)).toBeLessThan(0.0051);
  });

  it("each stud stands inside its track", () => {
    const studs = sections.rows.filter(({ shape }) => shape === "stud");
    expect(studs.length).toBeGreaterThan(0);
    for (const stud of studs) {
      const track = sections.get(stud.id.replace("stud", "track"));
      expect(track.depth - 2 * track.thickness, stud.id).toBeCloseTo(stud.depth, 12);
      expect(track.thickness).toBe(stud.thickness);
    }
  });

  it("hats weigh what a US maker's list says", () => {
    // 7/8 in furring channel, 25 gauge, 0.275 lb/ft reckoned at 0.0179 in; seen.
    const hat = sections.get("hat-7-8-18mil");
    expect(pounds("hat-7-8-18mil") * ((0.0179 * inch) / hat.thickness)).toBeCloseTo(0.275, 2);
  });
});

describe("hollow sections and angles", () => {
  it("hollow sections weigh what their nominal geometry says", () => {
    // The listed weight uses nominal thickness with the same corners: 490 lb/ft3, AISC. The list keeps three or four digits.
    const hollow = sections.rows.filter(({ shape }) => shape === "hollow");
    expect(hollow.length).toBeGreaterThanOrEqual(12);
    for (const { id, depth, width, thickness, massPerLength } of hollow) {
      const reckoned = steelPerMetre(hollowArea(depth, width, thickness));
      expect(Math.abs(massPerLength / reckoned - 1), id).toBeLessThan(0.003);
    }
  });

  it("design thickness is 0.93 of nominal, as the list rounds it", () => {
    // AISC shapes database v16, seen.
    const design = (id: string): number => 0.93 * (sections.get(id).thickness / inch);
    expect(Math.abs(design("hss-3x3x3-16") - 0.174)).toBeLessThan(0.00051);
    expect(Math.abs(design("hss-4x4x1-4") - 0.233)).toBeLessThan(0.00051);
  });

  it("angles weigh what their listed area says", () => {
    // AISC shapes database v16, seen: area in in2 of L2x2x3/16 and L3x3x1/4; listed weights are rounded to two digits.
    expect(Math.abs(pounds("angle-2x2x3-16") / (0.722 * 3.4) - 1)).toBeLessThan(0.01);
    expect(Math.abs(pounds("angle-3x3x1-4") / (1.44 * 3.4) - 1)).toBeLessThan(0.01);
  });

  it("flat bars weigh 3.4 lb/ft for one square inch", () => {
    // The trade's rule, 489.6 lb/ft3.
    expect(pounds("flat-1-1-2x1-8") / (1.5 * 0.125)).toBeCloseTo(3.4, 1);
  });
});
