import type { Comparison } from "../working/comparison.ts";
import { elided, rangeText, wordsText } from "../working/elide.ts";
import { numberText } from "../working/numberText.ts";
import type { Quantity } from "../working/quantity.ts";
import { renderComparison } from "../working/render.ts";
import { type FormulaStep, type GivenStep, type StepInput, workingOf } from "../working/steps.ts";
import { USUAL_DIGITS, type ValueStyle, valueText } from "../working/valueText.ts";

/** A row of a printed working. `formula` and `inputs` are empty for a given. */
export interface WorkingRow {
  readonly symbol: string;
  readonly means: string;
  readonly formula: string;
  /** What was put in under each name of the formula: "L = L_2 = 2.4 m". */
  readonly inputs: readonly string[];
  readonly value: string;
  readonly source: string;
}

/** A working set out for print: rounded for reading, many alike on one row. */
export interface WorkingTable {
  readonly rows: readonly WorkingRow[];
  /** The comparison in one line with both sides and the room left; empty where nothing was compared. */
  readonly compared: string;
}

/** Sets out a working: givens first, then each formula after what goes into it, then the comparison. */
export function workingTable(
  roots: readonly Quantity[],
  comparison: Comparison | undefined,
  style: ValueStyle,
): WorkingTable {
  const { steps } = workingOf(roots, comparison === undefined ? [] : [comparison]);
  const givens = steps.filter((step) => step.kind === "given");
  const formulas = steps.filter((step) => step.kind === "formula");
  return {
    rows: [
      ...elided(givens, ({ symbol, unit }) => `${symbol} ${unit}`).map(({ all }) => givenRow(all, style)),
      ...elided(formulas, ({ formula, symbol }) => `${formula} ${symbol}`).map(({ first, all }) => formulaRow(first, all, style)),
    ],
    compared: comparison === undefined ? "" : renderComparison(comparison, style),
  };
}

function givenRow(all: readonly GivenStep[], style: ValueStyle): WorkingRow {
  return {
    symbol: wordsText(all.map(({ label }) => label)),
    means: alike(all.map(({ means }) => means)),
    formula: "",
    inputs: [],
    value: valuesText(all, style),
    source: alike(all.map(({ source }) => source)),
  };
}

/** The first of many alike stands with its numbers; the value column holds the range of all. */
function formulaRow(first: FormulaStep, all: readonly FormulaStep[], style: ValueStyle): WorkingRow {
  return {
    symbol: wordsText(all.map(({ label }) => label)),
    means: alike(all.map(({ means }) => means)),
    formula: first.text,
    inputs: first.inputs.map((input) => inputText(input, style)),
    value: valuesText(all, style),
    source: first.source,
  };
}

function inputText(input: StepInput, style: ValueStyle): string {
  const { name, labels, values, unit, isList } = input;
  if (isList) {
    const list = wordsText(labels);
    if (values.length === 0) return `${name} = [ ]`;
    return `${name} = [${list}] = [${wordsText(values.map((value) => numberText(value, style.digits ?? USUAL_DIGITS)))}]`;
  }
  const [label, value] = [labels[0], values[0]];
  if (label === undefined || value === undefined) throw new RangeError(`nothing was put in for ${name}`);
  return `${name}${label === name ? "" : ` = ${label}`} = ${valueText(value, unit, style)}`;
}

function valuesText(all: readonly (GivenStep | FormulaStep)[], style: ValueStyle): string {
  const [first] = all;
  if (first === undefined) throw new RangeError("a row of a working for no step");
  return all.length === 1 ? valueText(first.value, first.unit, style) : rangeText(all.map(({ value }) => value), first.unit, style);
}

function alike(texts: readonly string[]): string {
  const [first = ""] = texts;
  return texts.every((text) => text === first) ? first : `${first}, and others`;
}
