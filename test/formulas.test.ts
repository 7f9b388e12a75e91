import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { AnyFormula } from "../src/working/anyFormula.ts";
import { allFormulas } from "./allFormulas.ts";
import { agrees } from "./checkWorking.ts";
import { evaluateText, namesIn, type NumberOrList } from "./evaluate.ts";
import { readNomenclature } from "./nomenclature.ts";

const SEED = 20260;
const WANTED_INPUTS = 200;
const LEAST_INPUTS = 50;
const MOST_DRAWS = 2000;

const { found, defined } = await allFormulas();
const rows = readNomenclature(readFileSync("docs/nomenclature.md", "utf8"));

test("formulas are found, and none is hidden from the walk", () => {
  expect(found.length).toBeGreaterThan(0);
  const hidden = [...defined].filter(([file, count]) => found.filter((one) => one.file === file).length !== count);
  expect(hidden, "files whose formulas are not all exported, with the count in their text").toEqual([]);
});

test("every formula has an id of its own", () => {
  const ids = found.map(({ formula }) => formula.id);
  expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([]);
});

test("a symbol stands in one row of the nomenclature", () => {
  const symbols = rows.map((row) => row.symbol);
  expect(symbols.filter((symbol, at) => symbols.indexOf(symbol) !== at)).toEqual([]);
});

describe.each(found)("$formula.id in $file", ({ formula }) => {
  test("carries its symbol, meaning, unit and source", () => {
    expect(formula.symbol).toMatch(/^\p{L}[\p{L}\p{N}_]*$/u);
    for (const text of [formula.id, formula.means, formula.unit, formula.source.work]) expect(text.trim()).not.toBe("");
  });

  test("names in its text what it takes, and takes what its text names", () => {
    expect([...namesIn(formula.text)].sort()).toEqual(Object.keys(formula.takes).sort());
  });

  test("does what its text says", () => {
    const { valid, strays } = compareWithText(formula);
    expect(strays.slice(0, 3)).toEqual([]);
    expect(valid, "random inputs inside the formula's domain").toBeGreaterThanOrEqual(LEAST_INPUTS);
  });

  test("has its symbol in the nomenclature", () => {
    const row = rows.find(({ symbol }) => symbol === formula.symbol);
    const wanted = `| ${formula.means} | \`${formula.symbol}\` | ${formula.unit} | ... | ... |`;
    expect(row, `${formula.id}: docs/nomenclature.md needs the row ${wanted}`).toBeDefined();
    expect(row?.unit, `${formula.id}: unit of \`${formula.symbol}\` in docs/nomenclature.md`).toBe(formula.unit);
  });

  test("takes its inputs in the units of the nomenclature", () => {
    for (const [name, declared] of Object.entries(formula.takes)) {
      const row = rows.find(({ symbol }) => symbol === name);
      const unit = declared.replace(/\[\]$/, "");
      if (row !== undefined) expect(row.unit, `${formula.id}: unit of \`${name}\` in docs/nomenclature.md`).toBe(unit);
    }
  });
});

interface Outcome {
  readonly valid: number;
  readonly strays: readonly { values: Readonly<Record<string, NumberOrList>>; computed: number; evaluated: number }[];
}

/** Compute against text on random inputs; inputs that the formula refuses, or has no finite answer for, do not count. */
function compareWithText(formula: AnyFormula): Outcome {
  const strays: { values: Readonly<Record<string, NumberOrList>>; computed: number; evaluated: number }[] = [];
  let valid = 0;
  for (const values of fc.sample(inputsOf(formula), { numRuns: MOST_DRAWS, seed: SEED })) {
    if (valid === WANTED_INPUTS) break;
    const computed = computedOf(formula, values);
    if (computed === undefined) continue;
    valid += 1;
    const evaluated = evaluateText(formula.text, values);
    if (!agrees(computed, evaluated)) strays.push({ values, computed, evaluated });
  }
  return { valid, strays };
}

function computedOf(formula: AnyFormula, values: Readonly<Record<string, NumberOrList>>): number | undefined {
  const compute = formula.compute as (values: Readonly<Record<string, NumberOrList>>) => number;
  try {
    const computed = compute(values);
    return Number.isFinite(computed) ? computed : undefined;
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

/** Positive numbers spread evenly over the decades 1e-3 to 1e3, half of the draws whole; lists of one length, 1 to 6. */
function inputsOf(formula: AnyFormula): fc.Arbitrary<Record<string, NumberOrList>> {
  const shape = fc.record({ length: fc.integer({ min: 1, max: 6 }), whole: fc.boolean() });
  return fc.noBias(
    shape.chain(({ length, whole }) => {
      const one = fc
        .integer({ min: whole ? 0 : -3000, max: 3000 })
        .map((thousandths) => 10 ** (thousandths / 1000))
        .map((value) => (whole ? Math.round(value) : value));
      const list = fc.array(one, { minLength: length, maxLength: length });
      const inputs = Object.entries(formula.takes).map(([name, unit]) => [name, unit.endsWith("[]") ? list : one] as const);
      return fc.record<Record<string, NumberOrList>>(Object.fromEntries(inputs));
    }),
  );
}
