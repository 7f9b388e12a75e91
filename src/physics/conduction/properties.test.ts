import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { solveSection } from "../conduction.ts";
import { airOf, airOver, sheet, solid, studBay } from "./exampleSections.ts";
import { firstLines, halved } from "./lines.ts";
import { assembleNetwork } from "./network.ts";
import { layOut } from "./pattern.ts";
import type { Fill, Region, Section } from "./section.ts";
import type { Accuracy, SectionSolution } from "./solution.ts";
import { solveMesh } from "./solveMesh.ts";

const RUN = { seed: 20264, numRuns: 40 };
/** The second mesh is taken whatever it changes. */
const ANY: Accuracy = { coupling: 1e9, share: 1e9, mostUnknowns: 50_000 };
const PRESCRIBED = 1e-9;
const WIDTH = 0.4;
const DEPTH = 0.1;

const millimetres = (min: number, max: number) => fc.integer({ min: Math.round(min * 1000), max: Math.round(max * 1000) }).map((mm) => mm / 1000);
const conductivity = fc.double({ min: -2, max: 2.3, noNaN: true }).map((power) => 10 ** power);
const x = millimetres(0, WIDTH - 0.02);
const y = millimetres(0, DEPTH - 0.01);
const size = millimetres(0.003, 0.2);
const block = fc.tuple(x, y, size, size, conductivity).map(([x0, y0, wide, high, lambda]) =>
  solid("block", lambda, x0, y0, Math.min(x0 + wide, WIDTH), Math.min(y0 + high, DEPTH)),
);
/** A wedge with a sloped side, as beside a corrugated skin. */
const wedge = fc.tuple(x, y, size, millimetres(0.01, 0.08), conductivity).map(([x0, y0, wide, high, lambda]): Region => {
  const [x1, y1] = [Math.min(x0 + wide, WIDTH), Math.min(y0 + high, DEPTH)];
  const outer = [{ x: x0, y: y0 }, { x: x1, y: y0 }, { x: x1, y: y1 }];
  return { what: "wedge", outline: { outer, holes: [] }, fill: { kind: "solid", conductivity: lambda } };
});
const strip = fc.tuple(x, y, size, fc.boolean(), millimetres(0.001, 0.003)).map(([x0, y0, length, level, thickness]) => {
  const end = level ? { x: Math.min(x0 + length, WIDTH), y: y0 } : { x: x0, y: Math.min(y0 + length, DEPTH) };
  return sheet("strip", 50, thickness, [{ x: x0, y: y0 }, end]);
});
const resistance = fc.constantFrom(PRESCRIBED, 0.04, 0.13, 0.5);

/** A wall between two airs on one side and one on the other, with blocks, wedges and strips of sheet in it. */
const sections = fc
  .record({
    blocks: fc.array(block, { minLength: 1, maxLength: 3 }),
    // One slope: several that do not fit each other ask for very many lines.
    wedges: fc.array(wedge, { maxLength: 1 }),
    sheets: fc.array(strip, { maxLength: 3 }),
    base: conductivity,
    split: millimetres(0.02, WIDTH - 0.02),
    resistances: fc.tuple(resistance, resistance, resistance),
  })
  .map(({ blocks, wedges, sheets, base, split, resistances }): Section => ({
    window: { u0: 0, u1: WIDTH, v0: -0.02, v1: DEPTH + 0.02 },
    regions: [
      airOver("a", 0, -0.02, split, 0),
      airOver("b", split, -0.02, WIDTH, 0),
      airOver("c", 0, DEPTH, WIDTH, DEPTH + 0.02),
      solid("wall", base, 0, 0, WIDTH, DEPTH),
      ...blocks,
      ...wedges,
    ],
    sheets,
    airs: [airOf("a", resistances[0]), airOf("b", resistances[1]), airOf("c", resistances[2])],
  }));

describe("on random sections", () => {
  test("shares lie between 0 and 1 and add up to 1, and the heat balances", () => {
    fc.assert(
      fc.property(sections, (section) => {
        const { field, quality } = solved(section);
        let [least, most, worstSum] = [1, 0, 0];
        field.active.forEach((active, k) => {
          if (active === 0) return;
          const shares = field.shares.map((values) => values[k]!);
          least = Math.min(least, ...shares);
          most = Math.max(most, ...shares);
          worstSum = Math.max(worstSum, Math.abs(shares.reduce((sum, share) => sum + share, 0) - 1));
        });
        expect(least).toBeGreaterThanOrEqual(-1e-12);
        expect(most).toBeLessThanOrEqual(1 + 1e-12);
        expect(worstSum).toBeLessThan(1e-9);
        // A prescribed temperature is a film that passes so much that the last digit of a share shows in the heat flow.
        const prescribed = section.airs.some((air) => air.resistance === PRESCRIBED);
        expect(quality.imbalance).toBeLessThan(prescribed ? 1e-6 : 1e-9);
      }),
      RUN,
    );
  });

  test("between two environments, a mesh with halved cells never passes more: the heat is found from above", () => {
    fc.assert(
      fc.property(sections, (random) => {
        const section = { ...random, airs: random.airs.map((air) => (air.id === "c" ? air : { ...air, environment: "outside" })) };
        const pattern = layOut(section);
        if (!pattern.ok) throw new Error(pattern.reason);
        const { x, y } = firstLines(pattern);
        const first = solveMesh(assembleNetwork(section, pattern, { x, y })).couplings[0]![1]!;
        const second = solveMesh(assembleNetwork(section, pattern, { x: halved(x), y: halved(y) })).couplings[0]![1]!;
        expect(second).toBeLessThanOrEqual(first * (1 + 1e-9));
      }),
      RUN,
    );
  });

  test("what passes from one environment to another passes the other way alike", () => {
    fc.assert(
      fc.property(sections, (section) => {
        const pattern = layOut(section);
        if (!pattern.ok) throw new Error(pattern.reason);
        const { couplings } = solveMesh(assembleNetwork(section, pattern, firstLines(pattern)));
        const greatest = Math.max(...couplings.flat());
        couplings.forEach((flows, from) => {
          flows.forEach((flow, to) => expect(Math.abs(flow - couplings[to]![from]!)).toBeLessThan(1e-10 * greatest));
        });
      }),
      RUN,
    );
  });

  test("twice the lengths and resistances change nothing; twice the conductivities and half the resistances double the couplings", () => {
    fc.assert(
      fc.property(sections, (section) => {
        const was = solved(section);
        const larger = solved(scaled(section, { lengths: 2, conductivities: 1 }));
        const conducting = solved(scaled(section, { lengths: 1, conductivities: 2 }));
        for (const [from, to] of [["a", "b"], ["a", "c"], ["b", "c"]] as const) {
          expect(relative(larger.coupling(from, to), was.coupling(from, to))).toBeLessThan(1e-7);
          expect(relative(conducting.coupling(from, to), 2 * was.coupling(from, to))).toBeLessThan(1e-7);
        }
      }),
      RUN,
    );
  });

  test("between two environments, more conductivity anywhere never passes less", () => {
    fc.assert(
      fc.property(sections, fc.nat(), fc.double({ min: 1.01, max: 100, noNaN: true }), (random, pick, factor) => {
        const section = { ...random, airs: random.airs.map((air) => (air.id === "c" ? air : { ...air, environment: "outside" })) };
        const solids = section.regions.flatMap(({ fill }, at) => (fill.kind === "solid" ? [at] : []));
        const chosen = solids[pick % solids.length];
        const better = section.regions.map((region, at) => (at === chosen ? { ...region, fill: conducts(region.fill, factor) } : region));
        const was = solved(section).coupling("outside", "c");
        expect(solved({ ...section, regions: better }).coupling("outside", "c")).toBeGreaterThanOrEqual(was * (1 - 1e-9));
      }),
      RUN,
    );
  });
});

test("a mirrored section has the mirrored mesh, couplings and surface shares", () => {
  for (const phase of [0, 0.03, 0.1, 0.2]) {
    const section = studBay({ phase });
    const one = solved(section);
    const other = solved(mirrored(section));
    expect(relative(one.coupling("out", "in"), other.coupling("out", "in"))).toBeLessThan(1e-9);
    const shares = (solution: SectionSolution) => new Map(solution.surface("in").map(({ at, shares }) => [at.x.toFixed(7), shares[0]!]));
    const mirroredShares = shares(other);
    for (const [place, share] of shares(one)) {
      const facing = mirroredShares.get((WIDTH - Number(place)).toFixed(7));
      expect(facing).toBeDefined();
      expect(Math.abs(facing! - share)).toBeLessThan(1e-9);
    }
  }
});

test("the same section gives the same answer to the last digit", () => {
  expect(solved(studBay()).field).toEqual(solved(studBay()).field);
});

function solved(section: Section): SectionSolution {
  const solution = solveSection(section, ANY);
  if (!solution.ok) throw new Error(solution.reason);
  return solution;
}

function relative(got: number, want: number): number {
  return Math.abs(got / want - 1);
}

function conducts(fill: Fill, factor: number): Fill {
  return fill.kind === "solid" ? { ...fill, conductivity: fill.conductivity * factor } : fill;
}

/** Resistances take the factor that keeps the films in proportion to the solids. */
function scaled(section: Section, { lengths, conductivities }: { readonly lengths: number; readonly conductivities: number }): Section {
  const { u0, u1, v0, v1 } = section.window;
  const point = ({ x, y }: { readonly x: number; readonly y: number }) => ({ x: x * lengths, y: y * lengths });
  return {
    window: { u0: u0 * lengths, u1: u1 * lengths, v0: v0 * lengths, v1: v1 * lengths },
    regions: section.regions.map((region) => ({
      ...region,
      outline: { outer: region.outline.outer.map(point), holes: [] },
      fill: conducts(region.fill, conductivities),
    })),
    sheets: section.sheets.map((one) => ({
      ...one,
      points: one.points.map(point),
      thickness: one.thickness * lengths,
      conductivity: one.conductivity * conductivities,
    })),
    airs: section.airs.map((air) => ({ ...air, resistance: (air.resistance * lengths) / conductivities })),
  };
}

function mirrored(section: Section): Section {
  const point = ({ x: at, y: up }: { readonly x: number; readonly y: number }) => ({ x: WIDTH - at, y: up });
  return {
    ...section,
    regions: section.regions.map((region) => ({ ...region, outline: { outer: region.outline.outer.map(point).toReversed(), holes: [] } })),
    sheets: section.sheets.map((one) => ({ ...one, points: one.points.map(point) })),
  };
}
