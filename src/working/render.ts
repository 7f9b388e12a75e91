import type { Comparison } from "./comparison.ts";
import { comparisonText } from "./comparisonText.ts";
import { elided, LONGEST_LIST, rangeText, wordsText } from "./elide.ts";
import { labelledText, listText, numericText } from "./formulaText.ts";
import type { Quantity } from "./quantity.ts";
import { type ComparisonStep, type FormulaStep, type GivenStep, type Step, type StepInput, workingOf } from "./steps.ts";
import { type ValueStyle, valueText } from "./valueText.ts";

/**
 * How a working is laid out:
 * - `whole`: the givens as a table, every formula with its numbers and value, every comparison;
 * - `givens`: that table alone;
 * - `symbolic`: the formulas alone, without numbers;
 * - `oneLine`: a line for each quantity asked for and each comparison.
 */
export type Form = "whole" | "givens" | "symbolic" | "oneLine";

export interface RenderOptions extends ValueStyle {
  readonly form?: Form;
}

/** Lines of plain text that show a working. Rounded for reading; `workingJson` holds the unrounded numbers. */
export function renderWorking(
  roots: readonly Quantity[],
  comparisons: readonly Comparison[],
  options: RenderOptions,
): readonly string[] {
  const { results, steps } = workingOf(roots, comparisons);
  const givens = steps.filter((step) => step.kind === "given");
  const formulas = steps.filter((step) => step.kind === "formula");
  const compared = steps.filter((step) => step.kind === "comparison");
  switch (options.form ?? "whole") {
    case "givens":
      return givensTable(givens, options);
    case "symbolic":
      return formulas.map((step) => `${symbolicText(step)}${whereText(step, options)}`);
    case "oneLine":
      return [
        ...results.map((label) => oneLine(label, steps, options)),
        ...compared.map((step) => comparisonText(step, options)),
      ];
    case "whole":
      return [
        ...section("Given", givensTable(givens, options)),
        ...section("Worked out", formulaLines(formulas, options)),
        ...section("Compared", compared.flatMap((step) => comparisonLines(step, options))),
      ];
  }
}

/** One line for a comparison of its own. */
export function renderComparison(comparison: Comparison, options: RenderOptions): string {
  const step = workingOf([], [comparison]).steps.at(-1);
  if (step?.kind !== "comparison") throw new Error("a working with a comparison must end in it");
  return comparisonText(step, options);
}

function section(title: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : [title, ...lines.map((line) => `  ${line}`)];
}

function givensTable(givens: readonly GivenStep[], style: ValueStyle): readonly string[] {
  const rows = elided(givens, (step) => `${step.symbol} ${step.unit}`).map(({ first, all }) => {
    const others = all.length === 1 ? "" : " and others";
    const meansAlike = all.every((step) => step.means === first.means);
    const sourceAlike = all.every((step) => step.source === first.source);
    return [
      wordsText(all.map((step) => step.label)),
      `${first.means}${meansAlike ? "" : others}`,
      all.length === 1 ? valueText(first.value, first.unit, style) : rangeText(all.map((step) => step.value), first.unit, style),
      `${first.source}${sourceAlike ? "" : others}`,
    ];
  });
  const widths = [0, 1, 2].map((column) => Math.max(...rows.map((row) => row[column]?.length ?? 1)));
  return rows.map((row) => row.map((cell, column) => cell.padEnd(widths[column] ?? 1)).join("  ").trimEnd());
}

/** Every formula step; of many alike the first, with a line that stands for the others. */
function formulaLines(formulas: readonly FormulaStep[], style: ValueStyle): readonly string[] {
  return elided(formulas, (step) => `${step.formula} ${step.symbol}`).flatMap(({ first, all }) => {
    const likewise = all.slice(1);
    const labels = likewise.map((step) => step.label);
    const values = likewise.map((step) => step.value);
    return [
      `${first.means} [${first.source}]`,
      ...longForm(first, style).map((line) => `  ${line}`),
      ...(likewise.length === 0 ? [] : [`  likewise ${wordsText(labels)}: ${rangeText(values, first.unit, style)}`]),
    ];
  });
}

/** Symbol = formula = numbers = value with its unit, a line for each sign of equality. */
function longForm(step: FormulaStep, style: ValueStyle): readonly string[] {
  const indent = " ".repeat(step.label.length);
  return [
    `${symbolicText(step)}${whereText(step, style)}`,
    `${indent} = ${numericText(step, style)}`,
    `${indent} = ${valueText(step.value, step.unit, style)}`,
  ];
}

function oneLine(label: string, steps: readonly Step[], style: ValueStyle): string {
  const step = steps.find((one) => one.kind !== "comparison" && one.label === label);
  if (step === undefined || step.kind === "comparison") throw new Error(`${label} is no step of its working`);
  const value = valueText(step.value, step.unit, style);
  return step.kind === "given" ? `${label} = ${value}` : `${symbolicText(step)} = ${numericText(step, style)} = ${value}`;
}

function symbolicText(step: FormulaStep): string {
  return `${step.label} = ${labelledText(step)}`;
}

function whereText(step: FormulaStep, style: ValueStyle): string {
  const lists = step.inputs
    .filter((input) => input.isList)
    .map((input) => `${listText(input)}${sumText(input, step, style)}`);
  return lists.length === 0 ? "" : ` with ${lists.join(", ")}`;
}

/** What an elided list comes to, so that a reader can still check the line. */
function sumText(input: StepInput, step: FormulaStep, style: ValueStyle): string {
  if (input.values.length <= LONGEST_LIST) return "";
  const isSummed = new RegExp(`sum\\(\\s*${input.name}\\s*\\)`, "u").test(step.text);
  const range = rangeText(input.values, input.unit, style);
  if (!isSummed) return ` (${range})`;
  const total = input.values.reduce((sum, value) => sum + value, 0);
  return ` (${range}, sum ${valueText(total, input.unit, style)})`;
}

function comparisonLines(step: ComparisonStep, style: ValueStyle): readonly string[] {
  return [`${step.left.means} against ${step.right.means}`, `  ${comparisonText(step, style)}`];
}
