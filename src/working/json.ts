import type { Comparison } from "./comparison.ts";
import type { Quantity } from "./quantity.ts";
import { type Working, workingOf } from "./steps.ts";

/**
 * The serialisable form of a working: plain data, numbers unrounded, lists whole; JSON and back gives an equal value.
 * Throws RangeError where a number is not finite, which JSON would turn into null.
 */
export function workingJson(roots: readonly Quantity[], comparisons: readonly Comparison[] = []): Working {
  const working = workingOf(roots, comparisons);
  for (const step of working.steps) {
    const numbers = step.kind === "comparison" ? [step.margin, step.tolerance] : [step.value];
    const name = step.kind === "comparison" ? `${step.left.label} ${step.relation} ${step.right.label}` : step.label;
    if (!numbers.every(Number.isFinite)) throw new RangeError(`${name} holds ${numbers.join(", ")}`);
  }
  return working;
}
