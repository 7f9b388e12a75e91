import { describe, expect, test } from "vitest";
import { solveSection } from "../conduction.ts";
import { totalResistance } from "../plainLayers.ts";
import { airOf, airOver, layered, sheet, solid } from "./exampleSections.ts";
import type { Section } from "./section.ts";
import type { Accuracy, SectionSolution } from "./solution.ts";

const FINE: Accuracy = { coupling: 0.002, share: 0.002, mostUnknowns: 40_000 };
/** Stands for a prescribed temperature. */
const PRESCRIBED = 1e-9;

describe("ISO 10211:2007, annex A, case 1: half of a square column; the closed form gives the same 28 values", () => {
  const SIDE = 0.8;
  // Values recomputed from the closed form; the layout is from memory. Rows from y = 7/8 down, columns from x = 1/8.
  const TABLE = [
    [9.7, 13.4, 14.7, 15.1],
    [5.3, 8.6, 10.3, 10.8],
    [3.2, 5.6, 7.0, 7.5],
    [2.0, 3.6, 4.7, 5.0],
    [1.3, 2.3, 3.0, 3.2],
    [0.7, 1.4, 1.8, 1.9],
    [0.3, 0.6, 0.8, 0.9],
  ];
  const points = TABLE.flatMap((row, fromTop) => row.map((want, at) => ({ x: (at + 1) / 8, y: (7 - fromTop) / 8, want })));
  const column: Section = {
    window: { u0: -0.1, u1: SIDE / 2, v0: -0.1, v1: SIDE + 0.1 },
    regions: [
      airOver("cold", -0.1, -0.1, SIDE / 2, SIDE),
      airOver("hot", 0, SIDE, SIDE / 2, SIDE + 0.1),
      // Cut into squares of an eighth, so that the mesh has a node at each of the points.
      ...Array.from({ length: 32 }, (_, at) => {
        const [x, y] = [((at % 4) * SIDE) / 8, (Math.floor(at / 4) * SIDE) / 8];
        return solid("column", 1, x, y, x + SIDE / 8, y + SIDE / 8);
      }),
    ],
    sheets: [],
    airs: [airOf("hot", PRESCRIBED), airOf("cold", PRESCRIBED)],
  };
  // The heat flow has no finite value here, as the temperature jumps at the corner: the first two meshes are enough.
  const solution = solved(column, { coupling: 10, share: 10, mostUnknowns: 40_000 });

  test.each(points)("x = $x a, y = $y a: $want degC", ({ x, y, want }) => {
    const got = temperatureAt(solution, { hot: 20, cold: 0 }, x * SIDE, y * SIDE);
    expect(Math.abs(got - want)).toBeLessThan(0.1);
    expect(Math.abs(got - closedForm(x, y))).toBeLessThan(0.05);
  });

  /** Separation of variables, in parts of the side. */
  function closedForm(x: number, y: number): number {
    let sum = 0;
    for (let n = 1; n < 200; n += 2) {
      const decay = Math.exp(n * Math.PI * (y - 1)) * ((1 - Math.exp(-2 * n * Math.PI * y)) / (1 - Math.exp(-2 * n * Math.PI)));
      sum += (80 / (n * Math.PI)) * Math.sin(n * Math.PI * x) * decay;
    }
    return sum;
  }
});

describe("ISO 10211:2007, annex A, case 2: four materials with a web of aluminium", () => {
  // Expected values and coordinates as seen in a public test case of a general finite element library; recomputed by finite volumes.
  const POINTS = [
    ["A", 0, 0.0475, 7.1],
    ["B", 0.5, 0.0475, 0.8],
    ["C", 0, 0.0415, 7.9],
    ["D", 0.015, 0.0415, 6.3],
    ["E", 0.5, 0.0415, 0.8],
    ["F", 0, 0.0365, 16.4],
    ["G", 0.015, 0.0365, 16.3],
    ["H", 0, 0, 16.8],
    ["I", 0.5, 0, 18.3],
  ] as const;
  const FLOW = 9.5;
  const common = [
    airOver("in", 0, -0.01, 0.5, 0.0015),
    airOver("out", 0, 0.0475, 0.5, 0.06),
    solid("insulation", 0.029, 0, 0.0015, 0.5, 0.0475),
    solid("concrete", 1.15, 0, 0.0415, 0.5, 0.0475),
    solid("wood", 0.12, 0, 0.0365, 0.015, 0.0415),
  ];
  const rest = { window: { u0: 0, u1: 0.5, v0: -0.01, v1: 0.06 }, airs: [airOf("in", 0.11), airOf("out", 0.06)] };

  describe("aluminium as it is", () => {
    const aluminium = [
      solid("plate", 230, 0, 0, 0.5, 0.0015),
      solid("web", 230, 0, 0, 0.0015, 0.0365),
      solid("flange", 230, 0, 0.035, 0.015, 0.0365),
    ];
    const solution = solved({ ...rest, regions: [...common, ...aluminium], sheets: [] }, FINE);

    test.each(POINTS)("point %s at (%d, %d): %d degC", (_, x, y, want) => {
      expect(Math.abs(temperatureAt(solution, { in: 20, out: 0 }, x, y) - want)).toBeLessThan(0.1);
    });

    test("heat flow: 9.5 W/m", () => {
      expect(Math.abs(20 * solution.coupling("in", "out") - FLOW)).toBeLessThan(0.1);
    });
  });

  describe("aluminium as sheets along the faces that touch insulation and wood", () => {
    const aluminium = sheet("aluminium", 230, 0.0015, [
      { x: 0.5, y: 0.0015 },
      { x: 0, y: 0.0015 },
      { x: 0, y: 0.0365 },
      { x: 0.015, y: 0.0365 },
    ]);
    const solution = solved({ ...rest, regions: common, sheets: [aluminium] }, FINE);

    test.each(POINTS)("point %s at (%d, %d): %d degC", (_, x, y, want) => {
      // The sheet has one temperature over its thickness: its place stands for the plate's lower face.
      expect(Math.abs(temperatureAt(solution, { in: 20, out: 0 }, x, Math.max(y, 0.0015)) - want)).toBeLessThan(0.1);
    });

    test("heat flow: 9.5 W/m", () => {
      expect(Math.abs(20 * solution.coupling("in", "out") - FLOW)).toBeLessThan(0.1);
    });
  });
});

describe("ISO 6946", () => {
  test("plain layers: the resistances in series, to rounding", () => {
    const layers = [[0.002, 50], [0.1, 0.035], [0.0125, 0.25]] as const;
    const solution = solved(layered(layers, 0.6, 0.04, 0.13), FINE);
    const R_tot = totalResistance.compute({ R_si: 0.13, R_layer: layers.map(([d, lambda]) => d / lambda), R_se: 0.04 });
    expect(Math.abs((solution.coupling("out", "in") / 0.6) * R_tot - 1)).toBeLessThan(1e-9);
    for (const { shares } of solution.surface("in")) expect(Math.abs((shares[1] as number) - (1 - 0.13 / R_tot))).toBeLessThan(1e-9);
  });

  // Scottish Government, Tables of U-values and thermal conductivity, 6.B.2; figures seen: limits 3.304 and 3.435. The source
  // gives shares of area, not sizes: the true resistance lies between the limits for every size.
  test.each([0.2, 0.4, 0.8])("timber-framed wall 6.B.2 with studs %d m apart: between the lower and the upper limit", (pitch) => {
    const stud = 0.15 * pitch;
    const wall = layered([[0.102, 0.77], [0.05, 0.05 / 0.18], [0.009, 0.13], [0.14, 0.04], [0.0125, 0.21]], pitch, 0.04, 0.13);
    const solution = solved({ ...wall, regions: [...wall.regions, solid("stud", 0.12, 0, 0.161, stud, 0.301)] }, FINE);
    const R = pitch / solution.coupling("out", "in");
    expect(R).toBeGreaterThan(3.304);
    expect(R).toBeLessThan(3.435);
  });
});

function solved(section: Section, accuracy: Accuracy): SectionSolution {
  const solution = solveSection(section, accuracy);
  if (!solution.ok) throw new Error(solution.reason);
  return solution;
}

/** Temperature between the nodes around a point, degC. */
function temperatureAt({ field, environments }: SectionSolution, temperatures: Readonly<Record<string, number>>, x: number, y: number): number {
  const i = cellAt(field.xs, x);
  const j = cellAt(field.ys, y);
  const partX = (x - field.xs[i]!) / (field.xs[i + 1]! - field.xs[i]!);
  const partY = (y - field.ys[j]!) / (field.ys[j + 1]! - field.ys[j]!);
  const k = j * field.xs.length + i;
  const corners = [
    [k, (1 - partX) * (1 - partY)],
    [k + 1, partX * (1 - partY)],
    [k + field.xs.length, (1 - partX) * partY],
    [k + field.xs.length + 1, partX * partY],
  ] as const;
  return environments.reduce(
    (sum, environment, at) => sum + temperatures[environment]! * corners.reduce((share, [node, part]) => share + part * field.shares[at]![node]!, 0),
    0,
  );
}

function cellAt(lines: Float64Array, at: number): number {
  const after = lines.findIndex((line) => line > at + 1e-9);
  return (after === -1 ? lines.length - 1 : after) - 1;
}
