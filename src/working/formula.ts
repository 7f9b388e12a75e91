import type { AnyFormula, Takes } from "./anyFormula.ts";
import type { Quantity } from "./quantity.ts";

type ValueOf<Declared extends string> = Declared extends `${string}[]` ? readonly number[] : number;
type QuantityOf<Declared extends string> = Declared extends `${infer U}[]`
  ? readonly Quantity<U>[]
  : Quantity<Declared>;

/** Plain numbers for a formula's inputs. */
export type Values<T extends Takes> = { readonly [Name in keyof T]: ValueOf<T[Name]> };
/** Quantities for a formula's inputs, each in its declared unit. */
export type Inputs<T extends Takes> = { readonly [Name in keyof T]: QuantityOf<T[Name]> };

/** A formula whose inputs and unit the compiler knows: plain numbers go into `compute`, quantities through `apply`. */
export interface Formula<T extends Takes = Takes, U extends string = string> extends AnyFormula {
  readonly unit: U;
  readonly takes: T;
  readonly compute: (values: Values<T>) => number;
}

/** Declares a formula; the types of `takes` bind `compute` and every use. */
export function defineFormula<const T extends Takes, const U extends string>(formula: Formula<T, U>): Formula<T, U> {
  return formula;
}

/**
 * Applies a formula to quantities. A missing input or one in another unit is a compile error.
 * Throws RangeError where the result is not a finite number. `means` replaces the formula's own meaning where the
 * use is narrower ("mass of the left wall" for "mass").
 */
export function apply<T extends Takes, U extends string>(
  formula: Formula<T, U>,
  inputs: Inputs<T>,
  as: { readonly symbol?: string; readonly means?: string } = {},
): Quantity<U> {
  const quantities = inputs as Readonly<Record<string, Quantity | readonly Quantity[]>>;
  const values: Record<string, number | readonly number[]> = {};
  for (const name of Object.keys(formula.takes)) {
    const input = quantities[name];
    if (input === undefined) throw new RangeError(`${formula.id}: input ${name} is missing`);
    values[name] = isList(input) ? input.map((one) => one.value) : input.value;
  }
  const value = formula.compute(values as Values<T>);
  if (!Number.isFinite(value)) throw new RangeError(`${formula.id} gave ${value} from ${JSON.stringify(values)}`);
  return {
    value,
    unit: formula.unit,
    symbol: as.symbol ?? formula.symbol,
    means: as.means ?? formula.means,
    origin: { kind: "formula", formula, inputs: quantities },
  };
}

function isList(input: Quantity | readonly Quantity[]): input is readonly Quantity[] {
  return Array.isArray(input);
}
