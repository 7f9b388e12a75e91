import { wordsText } from "./elide.ts";
import { numberText } from "./numberText.ts";
import type { FormulaStep, StepInput } from "./steps.ts";
import { substitute } from "./substitute.ts";
import { USUAL_DIGITS, type ValueStyle } from "./valueText.ts";

/** The formula with the labels of what was put in; a list keeps its name there, and `listTexts` says what it holds. */
export function labelledText(step: FormulaStep): string {
  return substitute(step.text, (name) => {
    const input = inputNamed(step, name);
    return input === undefined || input.isList ? undefined : input.labels[0];
  });
}

/** The formula with numbers put in. */
export function numericText(step: FormulaStep, style: ValueStyle): string {
  return substitute(step.text, (name) => {
    const input = inputNamed(step, name);
    if (input === undefined) return undefined;
    const numbers = input.values.map((value) => numberText(value, style.digits ?? USUAL_DIGITS));
    return input.isList ? `[${wordsText(numbers)}]` : numbers[0];
  });
}

/** What a list of a formula holds, by label: "m = [m_1, m_2]". */
export function listText({ name, labels }: StepInput): string {
  return `${name} = [${wordsText(labels)}]`;
}

function inputNamed(step: FormulaStep, name: string): StepInput | undefined {
  return step.inputs.find((input) => input.name === name);
}
