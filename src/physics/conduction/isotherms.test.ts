import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Vec2 } from "../../geometry/vector.ts";
import { isotherms, nodeTemperatures, solveSection } from "../conduction.ts";
import { layered, studBay } from "./exampleSections.ts";
import type { Field, SectionSolution } from "./solution.ts";

/** A field of whole cells over [-1, 1] in both directions, with no value where `isSolid` says so. */
function fieldOver(cells: number, value: (at: Vec2) => number, isSolid: (centre: Vec2) => boolean = () => true): Field & { readonly values: Float64Array } {
  const lines = Float64Array.from({ length: cells + 1 }, (_, at) => (2 * at) / cells - 1);
  const nodes = Array.from({ length: (cells + 1) ** 2 }, (_, k) => ({ x: lines[k % (cells + 1)]!, y: lines[Math.floor(k / (cells + 1))]! }));
  const halves = Uint8Array.from({ length: cells ** 2 }, (_, cell) => {
    const at = (k: number): number => (2 * k + 1) / cells - 1;
    return isSolid({ x: at(cell % cells), y: at(Math.floor(cell / cells)) }) ? 3 : 0;
  });
  const values = Float64Array.from(nodes, value);
  return { xs: lines, ys: lines, active: new Uint8Array(nodes.length).fill(1), shares: [values], conductivity: Float64Array.from(halves), slope: new Int8Array(cells ** 2), halves, values };
}

function solved(section: Parameters<typeof solveSection>[0]): SectionSolution {
  const solution = solveSection(section, { coupling: 0.02, share: 0.01, mostUnknowns: 100_000 });
  if (!solution.ok) throw new Error(solution.reason);
  return solution;
}

const isClosed = (line: readonly Vec2[]): boolean => line.length > 3 && line[0] === line[line.length - 1];

// Closed form: around a pipe the temperature falls with the logarithm of the radius, so isotherms are circles.
describe("around a pipe", () => {
  const radius = ({ x, y }: Vec2): number => Math.hypot(x, y);
  const temperature = (at: Vec2): number => 20 * Math.log(Math.max(radius(at), 0.05));
  const worst = (cells: number): number => {
    const field = fieldOver(cells, temperature);
    const [isotherm] = isotherms(field, field.values, [20 * Math.log(0.6)]);
    expect(isotherm!.lines).toHaveLength(1);
    expect(isClosed(isotherm!.lines[0]!)).toBe(true);
    return Math.max(...isotherm!.lines[0]!.map((at) => Math.abs(radius(at) - 0.6)));
  };

  test("an isotherm is one closed circle, four times as true on cells half as wide", () => {
    const errors = [20, 40, 80].map(worst);
    expect(errors[0]).toBeLessThan(0.01);
    expect(Math.log2(errors[0]! / errors[2]!) / 2).toBeGreaterThan(1.7);
  });

  test("its length is that of the circle", () => {
    const field = fieldOver(80, temperature);
    const [line] = isotherms(field, field.values, [20 * Math.log(0.6)])[0]!.lines;
    const length = line!.slice(1).reduce((sum, { x, y }, k) => sum + Math.hypot(x - line![k]!.x, y - line![k]!.y), 0);
    expect(length / (2 * Math.PI * 0.6)).toBeCloseTo(1, 3);
  });

  test("where no solid lies there is no line: half a section gives half a circle with two ends", () => {
    const field = fieldOver(40, temperature, ({ x }) => x > 0);
    const { lines } = isotherms(field, field.values, [20 * Math.log(0.6)])[0]!;
    expect(lines).toHaveLength(1);
    expect(isClosed(lines[0]!)).toBe(false);
    expect([lines[0]![0]!.x, lines[0]!.at(-1)!.x]).toEqual([0, 0]);
    expect(lines[0]!.every(({ x }) => x >= 0)).toBe(true);
  });
});

// Closed form: T = x y, a saddle; the levels of either sign are a pair of hyperbolas that never cross.
test("beside a saddle two lines keep apart", () => {
  const field = fieldOver(21, ({ x, y }) => x * y);
  for (const level of [0.001, -0.001]) {
    const { lines } = isotherms(field, field.values, [level])[0]!;
    expect(lines).toHaveLength(2);
    for (const line of lines) {
      expect(new Set(line.map(({ x }) => Math.sign(x))).size).toBe(1);
      for (const { x, y } of line) expect(x * y).toBeCloseTo(level, 2);
    }
  }
});

// Closed form: through plain layers the temperature is linear in each, so an isotherm is a straight line at a known depth.
test("in plain layers an isotherm lies where the resistances say", () => {
  const layers = [[0.05, 0.04], [0.02, 0.13]] as const;
  const section = layered(layers, 0.3, 0.04, 0.13);
  const { field, environments } = solved(section);
  const total = 0.04 + 0.05 / 0.04 + 0.02 / 0.13 + 0.13;
  const temperatures = nodeTemperatures(field, environments.map((one) => (one === "in" ? 20 : -10)));
  const [isotherm] = isotherms(field, temperatures, [5]);
  const depth = ((15 / 30) * total - 0.04) * 0.04;
  expect(isotherm!.lines).toHaveLength(1);
  for (const { y } of isotherm!.lines[0]!) expect(y).toBeCloseTo(depth, 9);
  const ends = [isotherm!.lines[0]![0]!.x, isotherm!.lines[0]!.at(-1)!.x].toSorted((a, b) => a - b);
  expect(ends[0]).toBeCloseTo(0, 12);
  expect(ends[1]).toBeCloseTo(0.3, 12);
});

// Identity: the lines that a linear field cuts through triangles are straight, and end where the solid does.
test("across a corrugated skin a linear temperature has straight isotherms that end on the skin or at the window", () => {
  const section = studBay();
  const { field } = solved(section);
  const linear = Float64Array.from(field.active, (_, k) => 30 * field.xs[k % field.xs.length]! + 200 * field.ys[Math.floor(k / field.xs.length)]!);
  expect(field.slope.some((one) => one > 0) && field.slope.some((one) => one < 0)).toBe(true);
  const skin = section.sheets.find(({ what }) => what === "skin")!.points;
  const { u0, u1 } = section.window;
  for (const { temperature, lines } of isotherms(field, linear, [-4, -1, 3])) {
    expect(lines.length).toBeGreaterThan(0);
    for (const { x, y } of lines.flat()) expect(30 * x + 200 * y).toBeCloseTo(temperature, 9);
    for (const end of lines.flatMap((line) => [line[0]!, line.at(-1)!])) {
      const beyond = Math.min(end.x - u0, u1 - end.x, ...skin.slice(1).map((b, k) => offLine(end, skin[k]!, b)));
      expect(Math.abs(beyond)).toBeLessThan(1e-9);
    }
  }
});

/** Distance from a segment. */
function offLine(at: Vec2, a: Vec2, b: Vec2): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const part = Math.min(1, Math.max(0, ((at.x - a.x) * dx + (at.y - a.y) * dy) / (dx * dx + dy * dy)));
  return Math.hypot(at.x - a.x - part * dx, at.y - a.y - part * dy);
}

test("between the temperatures of the airs there is a line, beyond them none", () => {
  const { field, environments } = solved(studBay());
  fc.assert(
    fc.property(fc.double({ min: -40, max: 10, noNaN: true }), fc.double({ min: 1, max: 40, noNaN: true }), (outside, more) => {
      const temperatures = nodeTemperatures(field, environments.map((one) => (one === "in" ? outside + more : outside)));
      const [middle, above, below] = isotherms(field, temperatures, [outside + more / 2, outside + 1.001 * more, outside - 0.001 * more]);
      expect(middle!.lines.length).toBeGreaterThan(0);
      expect(above!.lines).toEqual([]);
      expect(below!.lines).toEqual([]);
    }),
    { seed: 7, numRuns: 20 },
  );
});

test("a level that is not a number is refused", () => {
  const field = fieldOver(4, ({ x }) => x);
  expect(() => isotherms(field, field.values, [0, Number.NaN])).toThrow(/levels\[1\]/);
});
