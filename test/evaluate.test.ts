import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { join, relative } from "node:path";
import { describe, expect, test } from "vitest";
import type { Quantity } from "../src/working/quantity.ts";
import { allFormulas } from "./allFormulas.ts";
import { checkWorking } from "./checkWorking.ts";
import { evaluateText, namesIn, type NumberOrList } from "./evaluate.ts";
import { upperLimit } from "./exampleWall.ts";
import { readNomenclature } from "./nomenclature.ts";

const TEXTS: readonly [string, Record<string, NumberOrList>, number][] = [
  ["a - b - c", { a: 10, b: 3, c: 2 }, 5],
  ["a / b / c", { a: 12, b: 3, c: 2 }, 2],
  ["-a ^ 2", { a: 3 }, -9],
  ["a ^ b ^ c", { a: 2, b: 3, c: 2 }, 512],
  ["sum(d / lambda)", { d: [1, 2], lambda: [2, 4] }, 1],
  ["sum(a * (x - x_0) ^ 2)", { a: [1, 2], x: [3, 5], x_0: 1 }, 36],
  ["sum(m)", { m: [] }, 0],
  ["max(a, b) - min(c)", { a: 1, b: 4, c: [3, 2] }, 2],
  ["sqrt(a) + abs(b)", { a: 9, b: -2 }, 5],
  ["ceil(a) * floor(b) + round(c)", { a: 3.0000000000000004, b: 2.9999999999999996, c: 2.5 }, 11],
  ["ln(exp(a)) + sin(b) + cos(b) + tan(b)", { a: 3, b: 0 }, 4],
  ["2 * pi * r", { r: 0.5 }, 3.141592653589793],
  ["1e3 * e", { e: 2 }, 2000],
];

describe("evaluating a text", () => {
  test.each(TEXTS)("%s", (text, values, wanted) => {
    expect(evaluateText(text, values)).toBeCloseTo(wanted, 14);
  });

  test.each([
    ["2 a", "a product without its sign"],
    ["a % b", "the operator %"],
    ["a > b ? a : b", "a part of kind ConditionalNode"],
    ["a = 2", "a part of kind AssignmentNode"],
    ["[a, b]", "a part of kind ArrayNode"],
    ["gamma(a)", "the function gamma()"],
    ["eachAdd(a, b)", "the function eachAdd()"],
    ["round(a, b)", "round() with more than one argument"],
    ["max()", "max() without an argument"],
  ])("refuses %s", (text, reason) => {
    expect(() => evaluateText(text, { a: 1, b: 2 })).toThrow(reason);
  });

  test("refuses a name without a value, even one that the library knows", () => {
    expect(() => evaluateText("a * e", { a: 1 })).toThrow("has no value for e");
  });

  test("refuses lists of different lengths, and results that are no finite number", () => {
    expect(() => evaluateText("sum(a * b)", { a: [1, 2], b: [1] })).toThrow("lists of 2 and 1 numbers");
    expect(() => evaluateText("sqrt(a)", { a: -1 })).toThrow("gives NaN");
    expect(() => evaluateText("a ^ 0.5", { a: -1 })).toThrow("gives NaN");
    expect(() => evaluateText("1 / a", { a: 0 })).toThrow("gives Infinity");
    expect(() => evaluateText("a", { a: [1] })).toThrow("gives 1");
  });

  test("names are those that want a value", () => {
    expect(namesIn("sum(d / lambda) + pi * max(r_1, d) + 1e3")).toEqual(["d", "lambda", "r_1"]);
  });
});

describe("checking a working", () => {
  const root = upperLimit();
  const withOrigin = (change: object): Quantity => ({ ...root, origin: { ...root.origin, ...change } });

  test("counts each formula step once", () => {
    expect(checkWorking([root, root])).toBe(5);
  });

  test("a value that its text does not give is found", () => {
    expect(() => checkWorking([{ ...root, value: root.value * (1 + 1e-11) }])).toThrow('but "1 / sum(f / R_path)" gives');
  });

  test("a wrong value deep inside is found", () => {
    const { origin } = root;
    if (origin.kind === "given") throw new Error("the example's root must be computed");
    const [first, ...others] = origin.inputs["R_path"] as readonly Quantity[];
    const inputs = { ...origin.inputs, R_path: [{ ...first!, value: first!.value + 1 }, ...others] };
    expect(() => checkWorking([withOrigin({ inputs })])).toThrow("example.pathResistance: R_path is");
  });

  test("a missing input, another unit and a symbol that is no name are found", () => {
    expect(() => checkWorking([withOrigin({ inputs: {} })])).toThrow("example.upperResistance: input f is missing");
    expect(() => checkWorking([{ ...root, unit: "W" }])).toThrow("gives m2K/W and stands as W");
    expect(() => checkWorking([{ ...root, symbol: "R upper" }])).toThrow("is not a name");
    expect(() => checkWorking([{ ...root, means: " " }])).toThrow("meaning or unit is empty");
    expect(() => checkWorking([{ ...root, value: NaN }])).toThrow("is NaN");
  });
});

describe("finding the formulas", () => {
  const formula = (id: string): string => `{ id: "${id}", text: "a", takes: { a: "m" }, compute: ({ a }) => a }`;

  test("exports, lists and records are searched, re-exports count once, and hidden ones show in the count", async () => {
    const folder = mkdtempSync("test/walk-");
    try {
      writeFileSync(join(folder, "some.ts"), [
        "const defineFormula = (formula) => formula;",
        `export const one = defineFormula(${formula("one")});`,
        `export const list = [defineFormula(${formula("two")})];`,
        `export const record = { three: defineFormula(${formula("three")}) };`,
        `const hidden = defineFormula(${formula("hidden")});`,
        "export const id = hidden.id;",
      ].join("\n"));
      writeFileSync(join(folder, "door.ts"), `export { one } from "./some.ts";`);
      writeFileSync(join(folder, "some.test.ts"), "throw new Error('tests are not walked');");
      const { found, defined } = await allFormulas([relative(".", folder)]);
      expect(found.map((one) => one.formula.id).sort()).toEqual(["one", "three", "two"]);
      expect([...defined.values()]).toEqual([4]);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });
});

describe("reading the nomenclature", () => {
  test("rows with a symbol in backticks, headings and rules left out", () => {
    const text = "# Names\n| name | symbol | unit | meaning | sign |\n|---|---|---|---|---|\n| mass | `m` | kg | mass of a part | above zero |\n";
    expect(readNomenclature(text)).toEqual([{ name: "mass", symbol: "m", unit: "kg", meaning: "mass of a part", sign: "above zero" }]);
  });

  test("a row without a unit is refused", () => {
    expect(() => readNomenclature("| mass | `m` | | mass of a part | |")).toThrow("`m` has no unit");
  });
});
