import { comparisonText } from "./comparisonText.ts";
import { elided, rangeText, wordsText } from "./elide.ts";
import { labelledText, listText, numericText } from "./formulaText.ts";
import type { FormulaStep, GivenStep, Working } from "./steps.ts";
import { type ValueStyle, valueText } from "./valueText.ts";

/** A row of a working on screen or paper: rounded for reading, many alike on one row. */
export interface WorkingRow {
  readonly symbol: string;
  readonly means: string;
  /** The formula in the labels of what went in; "" for a given. */
  readonly formula: string;
  /** The same with numbers put in; "" for a given. */
  readonly numbers: string;
  /** What each list of the formula holds: "m = [m_1, m_2]". */
  readonly lists: readonly string[];
  readonly value: string;
  readonly source: string;
}

export interface WorkingView {
  readonly results: readonly { readonly symbol: string; readonly means: string; readonly value: string }[];
  readonly compared: readonly { readonly text: string; readonly holds: boolean }[];
  readonly given: readonly WorkingRow[];
  readonly worked: readonly WorkingRow[];
}

/** Sets out a working for reading: what was asked for, what was compared, the givens, then every formula after its inputs. */
export function workingView({ results, steps }: Working, style: ValueStyle): WorkingView {
  const givens = steps.filter((step) => step.kind === "given");
  const formulas = steps.filter((step) => step.kind === "formula");
  const values = [...givens, ...formulas];
  return {
    results: results.flatMap((label) => {
      const step = values.find((one) => one.label === label);
      return step === undefined ? [] : [{ symbol: label, means: step.means, value: valueText(step.value, step.unit, style) }];
    }),
    compared: steps.filter((step) => step.kind === "comparison").map((step) => ({ text: comparisonText(step, style), holds: step.holds })),
    given: elided(givens, ({ symbol, unit }) => `${symbol} ${unit}`).map(({ all }) => givenRow(all, style)),
    worked: elided(formulas, ({ formula, symbol }) => `${formula} ${symbol}`).map(({ first, all }) => formulaRow(first, all, style)),
  };
}

function givenRow(all: readonly GivenStep[], style: ValueStyle): WorkingRow {
  return {
    symbol: wordsText(all.map(({ label }) => label)),
    means: alike(all.map(({ means }) => means)),
    formula: "",
    numbers: "",
    lists: [],
    value: valuesText(all, style),
    source: alike(all.map(({ source }) => source)),
  };
}

/** The first of many alike stands with its numbers; the value is the range of all. */
function formulaRow(first: FormulaStep, all: readonly FormulaStep[], style: ValueStyle): WorkingRow {
  return {
    symbol: wordsText(all.map(({ label }) => label)),
    means: alike(all.map(({ means }) => means)),
    formula: labelledText(first),
    numbers: numericText(first, style),
    lists: first.inputs.filter(({ isList }) => isList).map(listText),
    value: valuesText(all, style),
    source: first.source,
  };
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
