import type { Comparison } from "./comparison.ts";
import { elided, LONGEST_LIST, rangeText, wordsText } from "./elide.ts";
import { numberText } from "./numberText.ts";
import type { Quantity } from "./quantity.ts";
import { type ComparisonStep, type FormulaStep, type GivenStep, type Step, type StepInput, workingOf } from "./steps.ts";
import { substitute } from "./substitute.ts";
import { differenceUnit, pairText, USUAL_DIGITS, type ValueStyle, valueText } from "./valueText.ts";

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

/**
 * One line for a comparison: both sides, whether the relation holds, and by how much. The sides get as many digits as
 * it takes for the rounded numbers to say the same as the verdict.
 */
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

/** The formula with the labels of what was put in; a list keeps its name there, and `whereText` says what it holds. */
function symbolicText(step: FormulaStep): string {
  return `${step.label} = ${substitute(step.text, (name) => {
    const input = inputNamed(step, name);
    return input === undefined || input.isList ? undefined : input.labels[0];
  })}`;
}

function numericText(step: FormulaStep, style: ValueStyle): string {
  return substitute(step.text, (name) => {
    const input = inputNamed(step, name);
    if (input === undefined) return undefined;
    const numbers = input.values.map((value) => numberText(value, style.digits ?? USUAL_DIGITS));
    return input.isList ? `[${wordsText(numbers)}]` : numbers[0];
  });
}

function whereText(step: FormulaStep, style: ValueStyle): string {
  const lists = step.inputs
    .filter((input) => input.isList)
    .map((input) => `${input.name} = [${wordsText(input.labels)}]${sumText(input, step, style)}`);
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

function inputNamed(step: FormulaStep, name: string): StepInput | undefined {
  return step.inputs.find((input) => input.name === name);
}

function comparisonLines(step: ComparisonStep, style: ValueStyle): readonly string[] {
  return [`${step.left.means} against ${step.right.means}`, `  ${comparisonText(step, style)}`];
}

function comparisonText(step: ComparisonStep, style: ValueStyle): string {
  const [left, right] = pairText(step.left.value, step.right.value, step.unit, style, !step.holds);
  return `${step.left.label} ${step.relation} ${step.right.label}: ${left} ${step.relation} ${right}: ${verdictText(step, style)}`;
}

/** Sides that differ by less than this share of their size differ by the last digits of floating arithmetic alone. */
const LAST_DIGITS = 1e-12;

function verdictText({ unit, left, right, holds, margin, tolerance }: ComparisonStep, style: ValueStyle): string {
  const size = valueText(Math.abs(margin), differenceUnit(unit), style);
  if (!holds) return `does not hold, by ${size}`;
  if (Math.abs(margin) <= LAST_DIGITS * Math.max(Math.abs(left.value), Math.abs(right.value))) return "holds, at the limit";
  if (margin > 0) return `holds, with ${size} to spare`;
  return `holds within the tolerance of ${valueText(tolerance, differenceUnit(unit), style)}, missed by ${size}`;
}
