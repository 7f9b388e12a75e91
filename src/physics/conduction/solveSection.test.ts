import { describe, expect, test } from "vitest";
import { cellFlux, solveSection } from "../conduction.ts";
import { airOf, airOver, layered, sheet, solid, studBay } from "./exampleSections.ts";
import { firstLines } from "./lines.ts";
import { assembleNetwork } from "./network.ts";
import { layOut } from "./pattern.ts";
import type { Section } from "./section.ts";
import type { Accuracy, NotSolved, SectionSolution } from "./solution.ts";

const ACCURACY: Accuracy = { coupling: 0.02, share: 0.01, mostUnknowns: 20_000 };
const wall = layered([[0.1, 0.04]], 0.3, 0.04, 0.13);
const R_wall = 0.04 + 0.1 / 0.04 + 0.13;

describe("what a section holds", () => {
  test("the last region over a place fills it", () => {
    const over = (...conductivities: readonly number[]) => ({
      ...wall,
      regions: [...wall.regions, ...conductivities.map((lambda) => solid("cover", lambda, 0, 0, 0.3, 0.1))],
    });
    expect(solved(over(5, 0.04)).coupling("out", "in")).toBeCloseTo(0.3 / R_wall, 9);
    expect(solved(over(0.04, 5)).coupling("out", "in")).toBeCloseTo(0.3 / (0.04 + 0.1 / 5 + 0.13), 9);
  });

  test("a hole in a region lets what lies below it show", () => {
    const frame = solid("frame", 5, 0, 0, 0.3, 0.1);
    const hole = [{ x: 0, y: 0 }, { x: 0, y: 0.1 }, { x: 0.3, y: 0.1 }, { x: 0.3, y: 0 }];
    const section = { ...wall, regions: [...wall.regions, { ...frame, outline: { ...frame.outline, holes: [hole] } }] };
    expect(solved(section).coupling("out", "in")).toBeCloseTo(0.3 / R_wall, 9);
  });

  test("no heat passes what no region covers, nor the edges of the window", () => {
    const half = { ...wall, regions: [...wall.regions.slice(0, 2), solid("half", 0.04, 0.1, 0, 0.3, 0.1)] };
    expect(solved(half).coupling("out", "in")).toBeCloseTo(0.2 / R_wall, 9);
    expect(solved({ ...wall, window: { ...wall.window, u0: 0.1 } }).coupling("out", "in")).toBeCloseTo(0.2 / R_wall, 9);
  });

  test("airs of one environment share its temperature", () => {
    const split = {
      ...wall,
      regions: [...wall.regions, airOver("more", 0.1, -0.01, 0.3, 0)],
      airs: [...wall.airs, { id: "more", environment: "out", resistance: 0.04 }],
    };
    const solution = solved(split);
    expect(solution.environments).toEqual(["out", "in"]);
    expect(solution.coupling("out", "in")).toBeCloseTo(0.3 / R_wall, 9);
    expect(new Set(solution.surface("out").map(({ air }) => air))).toEqual(new Set(["out", "more"]));
  });

  test("the surface has every node once, with shares that add up", () => {
    const solution = solved(studBay());
    for (const environment of solution.environments) {
      const points = solution.surface(environment);
      expect(new Set(points.map(({ at }) => `${at.x} ${at.y}`)).size).toBe(points.length);
      for (const { shares } of points) expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
    }
  });

  test("the first mesh of a stud bay has 300 to 1500 unknowns", () => {
    for (const phase of [0, 0.03, 0.1, 0.2]) {
      const pattern = layOut(studBay({ phase }));
      if (!pattern.ok) throw new Error(pattern.reason);
      const { active } = assembleNetwork(studBay({ phase }), pattern, firstLines(pattern));
      const unknowns = active.filter((one) => one === 1).length;
      expect(unknowns).toBeGreaterThan(250);
      expect(unknowns).toBeLessThan(1500);
    }
  });

  test("without slopes, no cell is much more than two and a half times as wide as its neighbour", () => {
    const bridged = layered([[0.002, 50], [0.1, 0.035], [0.0125, 0.25]], 0.4, 0.04, 0.13);
    const { field } = solved({ ...bridged, regions: [...bridged.regions, solid("stud", 50, 0.2, 0.002, 0.2009, 0.102)] });
    for (const lines of [field.xs, field.ys]) {
      const widths = Array.from(lines.slice(1), (line, at) => line - lines[at]!);
      const ratios = widths.slice(1).map((width, at) => Math.max(width / widths[at]!, widths[at]! / width));
      expect(Math.max(...ratios)).toBeLessThan(3);
    }
  });
});

describe("flux in cells", () => {
  test("of plain layers is the same everywhere and as the resistances say", () => {
    const { field } = solved(wall);
    const flux = cellFlux(field, [0, 20]);
    field.conductivity.forEach((lambda, cell) => {
      expect(flux.x[cell]).toBeCloseTo(0, 9);
      expect(flux.y[cell]).toBeCloseTo(lambda === 0 ? 0 : -20 / R_wall, 9);
    });
  });

  test("asks for one finite temperature of each environment", () => {
    const { field } = solved(wall);
    expect(() => cellFlux(field, [20])).toThrow(/temperatures/);
    expect(() => cellFlux(field, [20, Number.NaN])).toThrow(/temperatures\[1\]/);
  });
});

describe("what is not solved says why", () => {
  const airs = wall.regions.slice(0, 2);

  test.each<[string, Section, RegExp]>([
    ["nothing at all", { ...wall, regions: [] }, /neither solid nor sheet/],
    ["air alone", { ...wall, regions: airs }, /neither solid nor sheet/],
    ["solid that touches no air", { ...wall, regions: [solid("alone", 1, 0, 0, 0.3, 0.1)] }, /touches no air/],
    ["a part that touches no air", { ...wall, regions: [...wall.regions, airOver("in", 0, 0.08, 0.3, 0.1)], sheets: [sheet("loose", 50, 0.001, [{ x: 0, y: 0.15 }, { x: 0.1, y: 0.15 }])], window: { ...wall.window, v1: 0.2 } }, /\(0, 0\.15\) m touches no air/],
  ])("%s", (_, section, reason) => {
    expect(refused(section).reason).toMatch(reason);
  });

  test("more unknowns than allowed: the change that was reached is named", () => {
    const { reason } = refused(studBay(), { coupling: 1e-6, share: 1e-6, mostUnknowns: 12_000 });
    expect(reason).toMatch(/^the last two meshes differ by 0\.0\d+ of a coupling and 0\.0\d+ of a share/);
    expect(refused(studBay(), { ...ACCURACY, mostUnknowns: 1000 }).reason).toMatch(/^no two meshes could be compared/);
    expect(refused(studBay(), { ...ACCURACY, mostUnknowns: 100 }).reason).toMatch(/^the first mesh has/);
  });

  test("slopes that ask for lines without end", () => {
    const wedge = (x: number, rise: number) => ({
      what: "wedge",
      outline: { outer: [{ x, y: 0 }, { x: x + 0.29, y: 0 }, { x: x + 0.29, y: rise }], holes: [] },
      fill: { kind: "solid", conductivity: 1 } as const,
    });
    const wedges = [0.0001, 0.0003, 0.0007, 0.0013].map((x, at) => wedge(x, 0.0999 - 0.0007 * at));
    expect(refused({ ...wall, regions: [...wall.regions, ...wedges] }).reason).toMatch(/lines on one axis/);
  });
});

describe("outside the domain it throws and names the input", () => {
  test.each<[string, Section, RegExp]>([
    ["a window without area", { ...wall, window: { u0: 0, u1: 0, v0: 0, v1: 1 } }, /window/],
    ["a window that is not finite", { ...wall, window: { ...wall.window, v1: Number.NaN } }, /window\.v1/],
    ["conductivity", { ...wall, regions: [...wall.regions, solid("foam", 0, 0, 0, 1, 1)] }, /regions\[3\] \(foam\): conductivity is 0/],
    ["an outline of two points", { ...wall, regions: [{ ...solid("foam", 1, 0, 0, 1, 1), outline: { outer: [{ x: 0, y: 0 }, { x: 1, y: 0 }], holes: [] } }] }, /three points/],
    ["an unknown air", { ...wall, airs: wall.airs.slice(1) }, /air out is not one/],
    ["an air twice", { ...wall, airs: [...wall.airs, airOf("in", 1)] }, /id in stands twice/],
    ["resistance", { ...wall, airs: [airOf("in", 0), airOf("out", 0.04)] }, /resistance of in is 0/],
    ["thickness", { ...wall, sheets: [sheet("skin", 50, -1, [{ x: 0, y: 0 }, { x: 1, y: 0 }])] }, /sheets\[0\] \(skin\): thickness/],
    ["a sheet of one point", { ...wall, sheets: [sheet("skin", 50, 0.001, [{ x: 0, y: 0 }])] }, /two points/],
    ["a point", { ...wall, sheets: [sheet("skin", 50, 0.001, [{ x: 0, y: Number.NaN }, { x: 1, y: 0 }])] }, /y of a point/],
  ])("%s", (_, section, message) => {
    expect(() => solveSection(section, ACCURACY)).toThrow(RangeError);
    expect(() => solveSection(section, ACCURACY)).toThrow(message);
  });

  test("accuracy and environments", () => {
    expect(() => solveSection(wall, { ...ACCURACY, coupling: 0 })).toThrow(/accuracy\.coupling/);
    expect(() => solveSection(wall, { ...ACCURACY, mostUnknowns: Number.NaN })).toThrow(/accuracy\.mostUnknowns/);
    expect(() => solved(wall).coupling("out", "attic")).toThrow(/attic/);
    expect(() => solved(wall).coupling("out", "out")).toThrow(/itself/);
    expect(() => solved(wall).surface("attic")).toThrow(/attic/);
  });
});

function solved(section: Section): SectionSolution {
  const solution = solveSection(section, ACCURACY);
  if (!solution.ok) throw new Error(solution.reason);
  return solution;
}

function refused(section: Section, accuracy = ACCURACY): NotSolved {
  const solution = solveSection(section, accuracy);
  if (solution.ok) throw new Error("the section was solved");
  return solution;
}
