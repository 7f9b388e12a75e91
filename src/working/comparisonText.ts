import type { ComparisonStep } from "./steps.ts";
import { differenceUnit, pairText, type ValueStyle, valueText } from "./valueText.ts";

/**
 * One line for a comparison: both sides, whether the relation holds, and by how much. The sides get as many digits as
 * it takes for the rounded numbers to say the same as the verdict.
 */
export function comparisonText(step: ComparisonStep, style: ValueStyle): string {
  const [left, right] = pairText(step.left.value, step.right.value, step.unit, style, !step.holds);
  const sign = step.relation === "<=" ? "≤" : "≥";
  return `${step.left.label} ${sign} ${step.right.label}: ${left} ${sign} ${right}: ${verdictText(step, style)}`;
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
