import type { Comparison, Relation } from "./comparison.ts";
import type { AnyFormula } from "./anyFormula.ts";
import { givenText } from "./givenText.ts";
import type { Quantity } from "./quantity.ts";
import { sourceText } from "./source.ts";

/** One quantity of a working. `label` is its symbol, numbered where another quantity of the working has the same one. */
interface ValueStep {
  readonly label: string;
  readonly symbol: string;
  readonly means: string;
  readonly value: number;
  readonly unit: string;
  readonly source: string;
}

/** A quantity that was not computed here. */
export interface GivenStep extends ValueStep {
  readonly kind: "given";
}

/** What was put into a formula under one of its names: one quantity, or a list of them. */
export interface StepInput {
  readonly name: string;
  readonly isList: boolean;
  readonly unit: string;
  readonly labels: readonly string[];
  readonly values: readonly number[];
}

/** A quantity that a formula gave. `text` is the formula in its own names, which `inputs` binds to labels and numbers. */
export interface FormulaStep extends ValueStep {
  readonly kind: "formula";
  readonly formula: string;
  readonly text: string;
  readonly inputs: readonly StepInput[];
}

/** One side of a comparison, by the label of its own step. */
export interface StepSide {
  readonly label: string;
  readonly means: string;
  readonly value: number;
}

/** A decision, after the steps of both its sides. */
export interface ComparisonStep {
  readonly kind: "comparison";
  readonly left: StepSide;
  readonly relation: Relation;
  readonly right: StepSide;
  readonly unit: string;
  readonly holds: boolean;
  readonly margin: number;
  readonly tolerance: number;
}

/** A line of a working; plain data, numbers unrounded. */
export type Step = GivenStep | FormulaStep | ComparisonStep;

/** A flattened working: all its steps, and the labels of the quantities that were asked for. */
export interface Working {
  readonly results: readonly string[];
  readonly steps: readonly Step[];
}

/**
 * Flattens a working: every quantity once (the same object, not an equal one), inputs before what uses them, the
 * comparisons last in the order given. Throws RangeError where a formula's input is missing.
 */
export function workingOf(roots: readonly Quantity[], comparisons: readonly Comparison[] = []): Working {
  const sides = comparisons.flatMap(({ left, right }) => [left, right]);
  const ordered = inputsFirst([...roots, ...sides]);
  const labels = labelsOf(ordered);
  return {
    results: roots.map((root) => labelIn(labels, root)),
    steps: [
      ...ordered.map((quantity) => valueStep(quantity, labels)),
      ...comparisons.map((comparison) => comparisonStep(comparison, labels)),
    ],
  };
}

/** The steps of a working alone, as `workingOf` orders them. */
export function stepsOf(roots: readonly Quantity[], comparisons: readonly Comparison[] = []): readonly Step[] {
  return workingOf(roots, comparisons).steps;
}

function inputsFirst(roots: readonly Quantity[]): readonly Quantity[] {
  const met = new Set<Quantity>();
  const ordered: Quantity[] = [];
  const visit = (quantity: Quantity): void => {
    if (met.has(quantity)) return;
    met.add(quantity);
    for (const { quantities } of boundInputs(quantity)) quantities.forEach(visit);
    ordered.push(quantity);
  };
  roots.forEach(visit);
  return ordered;
}

interface BoundInput {
  readonly name: string;
  readonly isList: boolean;
  readonly unit: string;
  readonly quantities: readonly Quantity[];
}

/** What a quantity's formula took, in the formula's own order; nothing for a given. */
function boundInputs(quantity: Quantity): readonly BoundInput[] {
  if (quantity.origin.kind === "given") return [];
  const { formula, inputs } = quantity.origin;
  return Object.entries(formula.takes).map(([name, declared]) => {
    const input = inputs[name];
    if (input === undefined) throw new RangeError(`${formula.id}: input ${name} is missing`);
    const isList = declared.endsWith("[]");
    const unit = isList ? declared.slice(0, -2) : declared;
    return { name, isList, unit, quantities: "origin" in input ? [input] : input };
  });
}

/**
 * A label of its own for every quantity. A symbol met once is its own label; the others are numbered in order. The names
 * under which formulas take lists stay in the printed text, so no quantity may carry one of them as its label.
 */
function labelsOf(ordered: readonly Quantity[]): ReadonlyMap<Quantity, string> {
  const listNames = new Set(
    ordered.flatMap((quantity) => boundInputs(quantity).flatMap(({ name, isList }) => (isList ? [name] : []))),
  );
  const bySymbol = new Map<string, Quantity[]>();
  for (const quantity of ordered) {
    const same = bySymbol.get(quantity.symbol);
    if (same === undefined) bySymbol.set(quantity.symbol, [quantity]);
    else same.push(quantity);
  }
  const taken = new Set([...listNames, ...bySymbol.keys()]);
  const labels = new Map<Quantity, string>();
  for (const [symbol, quantities] of bySymbol) {
    const isClear = quantities.length === 1 && !listNames.has(symbol);
    let number = 0;
    for (const quantity of quantities) {
      let label = symbol;
      while (!isClear && taken.has(label)) {
        number += 1;
        label = `${symbol}_${number}`;
      }
      taken.add(label);
      labels.set(quantity, label);
    }
  }
  return labels;
}

function valueStep(quantity: Quantity, labels: ReadonlyMap<Quantity, string>): GivenStep | FormulaStep {
  const { symbol, means, value, unit, origin } = quantity;
  const label = labelIn(labels, quantity);
  if (origin.kind === "given") {
    return { kind: "given", label, symbol, means, value, unit, source: givenText(origin.from) };
  }
  const formula: AnyFormula = origin.formula;
  const inputs = boundInputs(quantity).map(({ name, isList, unit: inUnit, quantities }) => ({
    name,
    isList,
    unit: inUnit,
    labels: quantities.map((one) => labelIn(labels, one)),
    values: quantities.map((one) => one.value),
  }));
  const source = sourceText(formula.source);
  return { kind: "formula", label, symbol, means, value, unit, source, formula: formula.id, text: formula.text, inputs };
}

function comparisonStep(comparison: Comparison, labels: ReadonlyMap<Quantity, string>): ComparisonStep {
  const { left, relation, right, holds, margin, tolerance } = comparison;
  const side = (quantity: Quantity): StepSide => ({
    label: labelIn(labels, quantity),
    means: quantity.means,
    value: quantity.value,
  });
  return { kind: "comparison", left: side(left), relation, right: side(right), unit: left.unit, holds, margin, tolerance };
}

function labelIn(labels: ReadonlyMap<Quantity, string>, quantity: Quantity): string {
  const label = labels.get(quantity);
  if (label === undefined) throw new Error(`${quantity.symbol} (${quantity.means}) has no label`);
  return label;
}
