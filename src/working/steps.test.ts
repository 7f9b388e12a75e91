import fc from "fast-check";
import { expect, test } from "vitest";
import { upperLimit, woolLayers } from "../../test/exampleWall.ts";
import { compare } from "./comparison.ts";
import { apply, defineFormula } from "./formula.ts";
import { workingJson } from "./json.ts";
import { given, type Quantity } from "./quantity.ts";
import { commonPractice } from "./source.ts";
import { stepsOf, workingOf } from "./steps.ts";

const plus = defineFormula({
  id: "test.plus",
  symbol: "n",
  means: "sum of two counts",
  unit: "1",
  text: "a + b",
  takes: { a: "1", b: "1" },
  source: commonPractice,
  compute: ({ a, b }) => a + b,
});

const total = defineFormula({
  id: "test.total",
  symbol: "n",
  means: "sum of counts",
  unit: "1",
  text: "sum(n)",
  takes: { n: "1[]" },
  source: commonPractice,
  compute: ({ n }) => n.reduce((sum, one) => sum + one, 0),
});

const counted = (value: number, symbol = "n"): Quantity<"1"> => given(value, "1", symbol, "count", { kind: "measured", on: "the bench" });

test("inputs stand before what uses them, each quantity once", () => {
  const shared = counted(2, "a");
  const twice = apply(plus, { a: shared, b: shared });
  const steps = stepsOf([apply(plus, { a: twice, b: shared }), twice]);
  expect(steps.map((step) => step.kind === "comparison" || [step.label, step.value])).toEqual([["a", 2], ["n_1", 4], ["n_2", 6]]);
});

test("equal but different quantities of one symbol are numbered apart", () => {
  const [a, b, sum] = stepsOf([apply(plus, { a: counted(1, "k"), b: counted(1, "k") })]);
  expect(a).toMatchObject({ label: "k_1", symbol: "k" });
  expect(b).toMatchObject({ label: "k_2", symbol: "k" });
  expect(sum).toMatchObject({ label: "n", inputs: [{ name: "a", labels: ["k_1"] }, { name: "b", labels: ["k_2"] }] });
});

test("numbering steps over symbols that are there already", () => {
  const labels = workingOf([counted(1, "k"), counted(2, "k_1"), counted(3, "k")]).results;
  expect(labels).toEqual(["k_2", "k_1", "k_3"]);
});

test("no quantity carries the name under which a formula takes a list", () => {
  expect(workingOf([apply(total, { n: [counted(1, "k")] })]).results).toEqual(["n_1"]);
});

test("a formula step binds the names of its text to labels and numbers, in the formula's order", () => {
  expect(stepsOf([woolLayers()]).at(-1)).toMatchObject({
    kind: "formula",
    formula: "example.layersResistance",
    text: "sum(d / lambda)",
    source: "ISO 6946, combined method (from memory, to be confirmed)",
    inputs: [
      { name: "d", isList: true, unit: "m", labels: ["d_1", "d_2", "d_3", "d_4"], values: [0.102, 0.009, 0.14, 0.0125] },
      { name: "lambda", isList: true, unit: "W/(m K)", values: [0.77, 0.13, 0.04, 0.21] },
    ],
  });
});

test("comparisons come last, after the steps of both sides", () => {
  const steps = stepsOf([], [compare(counted(3, "a"), "<=", counted(4, "b"))]);
  expect(steps.map((step) => step.kind)).toEqual(["given", "given", "comparison"]);
  expect(steps[2]).toEqual({
    kind: "comparison",
    left: { label: "a", means: "count", value: 3 },
    relation: "<=",
    right: { label: "b", means: "count", value: 4 },
    unit: "1",
    holds: true,
    margin: 1,
    tolerance: 0,
  });
});

test("an input that is missing is named", () => {
  const broken: Quantity = { ...counted(1), origin: { kind: "formula", formula: plus, inputs: { a: counted(1) } } };
  expect(() => stepsOf([broken])).toThrow(new RangeError("test.plus: input b is missing"));
});

test("every kind of given says where it comes from", () => {
  const from = { kind: "solver", method: "finite elements", size: "1,204 nodes", residual: 3.21e-13 } as const;
  const sources = [
    given(0.05, "m", "d", "foam", { kind: "job", path: "faces.left.foam", typed: "2 in" }),
    given(0.05, "m", "d", "foam", { kind: "job", path: "faces.left.foam" }),
    given(50, "W/(m K)", "lambda", "steel", { kind: "catalogue", row: "steel", field: "conductivity", source: commonPractice }),
    given(3, "1", "p", "price", { kind: "priceBook", path: "boards.plywood" }),
    given(2, "kg", "m", "stud", { kind: "part", id: "left/stud-3", field: "mass" }),
    given(2, "m", "l", "post", { kind: "measured", on: "the box in the yard" }),
    given(9.80665, "m/s2", "g", "gravity", { kind: "constant", source: commonPractice }),
    given(1, "W/(m2 K)", "U", "wall", from),
  ].flatMap((quantity) => stepsOf([quantity]).map((step) => step.kind === "comparison" || step.source));
  expect(sources).toEqual([
    'job, faces.left.foam, typed as "2 in"',
    "job, faces.left.foam",
    "catalogue, steel, conductivity: common practice",
    "price book, boards.plywood",
    "part left/stud-3, mass",
    "measured on the box in the yard",
    "common practice",
    "finite elements; 1,204 nodes; residual 3.2e-13",
  ]);
});

test("labels never clash, whatever the symbols", () => {
  const symbol = fc.constantFrom("n", "n_1", "n_2", "n_1_1", "a", "b");
  const counts = fc.array(symbol, { minLength: 1, maxLength: 12 }).map((symbols) => symbols.map((one, at) => counted(at, one)));
  fc.assert(
    fc.property(counts, (n) => {
      const labels = stepsOf([apply(total, { n })]).map((step) => step.kind === "comparison" || step.label);
      expect(new Set(labels).size).toBe(n.length + 1);
      expect(labels).not.toContain("n");
    }),
    { seed: 6946 },
  );
});

test("JSON keeps every number of a long list, unrounded, and reads back equal", () => {
  const n = Array.from({ length: 40 }, (_, at) => counted(at / 3));
  const working = workingJson([apply(total, { n })], [compare(counted(1 / 3), "<=", counted(2 / 3))]);
  expect(JSON.parse(JSON.stringify(working))).toEqual(working);
  expect(working.steps.filter((step) => step.kind === "formula")[0]?.inputs[0]?.values).toEqual(n.map((one) => one.value));
  expect(working.results).toEqual(["n_41"]);
});

test("JSON of a whole working reads back equal", () => {
  const working = workingJson([upperLimit()]);
  expect(JSON.parse(JSON.stringify(working))).toEqual(working);
});

test("JSON refuses a number that it cannot hold", () => {
  expect(() => workingJson([{ ...counted(1, "k"), value: NaN }])).toThrow(new RangeError("k holds NaN"));
});
