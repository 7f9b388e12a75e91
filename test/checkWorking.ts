import type { Quantity } from "../src/working/quantity.ts";
import { evaluateText, type NumberOrList } from "./evaluate.ts";

const RELATIVE = 1e-12;

/** True where two numbers agree to 1e-12 of the larger one. */
export function agrees(a: number, b: number): boolean {
  return Math.abs(a - b) <= RELATIVE * Math.max(Math.abs(a), Math.abs(b));
}

/**
 * Walks a working and evaluates every formula step again from its text. Throws Error at the first step whose value the
 * text does not give, whose input is missing or in another unit than declared, or that is not a finite number with a
 * symbol, a meaning and a unit. Gives the number of formula steps checked.
 */
export function checkWorking(roots: readonly Quantity[]): number {
  const met = new Set<Quantity>();
  let checked = 0;
  const check = (quantity: Quantity): void => {
    if (met.has(quantity)) return;
    met.add(quantity);
    checkNamed(quantity);
    if (quantity.origin.kind === "given") return;
    for (const input of Object.values(quantity.origin.inputs).flat()) check(input);
    checkFormula(quantity);
    checked += 1;
  };
  roots.forEach(check);
  return checked;
}

function checkNamed({ symbol, means, unit, value }: Quantity): void {
  const name = `${symbol} (${means})`;
  if (!/^\p{L}[\p{L}\p{N}_]*$/u.test(symbol)) throw new Error(`${name}: the symbol is not a name that a formula can hold`);
  if (means.trim() === "" || unit.trim() === "") throw new Error(`${name}: meaning or unit is empty`);
  if (!Number.isFinite(value)) throw new Error(`${name} is ${value}`);
}

function checkFormula({ origin, symbol, value, unit }: Quantity): void {
  if (origin.kind === "given") return;
  const { formula, inputs } = origin;
  const values: Record<string, NumberOrList> = {};
  for (const [name, declared] of Object.entries(formula.takes)) {
    const input = inputs[name];
    if (input === undefined) throw new Error(`${formula.id}: input ${name} is missing`);
    const isList = declared.endsWith("[]");
    if (isList === "origin" in input) throw new Error(`${formula.id}: input ${name} is declared as ${declared}`);
    const wanted = isList ? declared.slice(0, -2) : declared;
    const stray = [input].flat().find((one) => one.unit !== wanted);
    if (stray !== undefined) throw new Error(`${formula.id}: ${name} takes ${wanted} and got ${stray.symbol} in ${stray.unit}`);
    values[name] = "origin" in input ? input.value : input.map((one) => one.value);
  }
  if (unit !== formula.unit) throw new Error(`${formula.id} gives ${formula.unit} and stands as ${unit}`);
  const again = evaluateText(formula.text, values);
  if (!agrees(again, value)) {
    throw new Error(`${formula.id}: ${symbol} is ${value}, but "${formula.text}" gives ${again} from ${JSON.stringify(values)}`);
  }
}
