import type { AnyFormula } from "./anyFormula.ts";
import type { Source } from "./source.ts";

/** Where a value that was not computed here comes from. */
export type Given =
  | { readonly kind: "job"; readonly path: string; readonly typed?: string }
  | { readonly kind: "catalogue"; readonly row: string; readonly field: string; readonly source: Source }
  | { readonly kind: "priceBook"; readonly path: string }
  | { readonly kind: "part"; readonly id: string; readonly field: string }
  | { readonly kind: "measured"; readonly on: string }
  | { readonly kind: "constant"; readonly source: Source }
  | { readonly kind: "solver"; readonly method: string; readonly size: string; readonly residual: number };

/** A value's way back: a given, or a formula with the quantities put in. */
export type Origin =
  | { readonly kind: "given"; readonly from: Given }
  | {
      readonly kind: "formula";
      readonly formula: AnyFormula;
      readonly inputs: Readonly<Record<string, Quantity | readonly Quantity[]>>;
    };

/** A value that knows where it came from. `unit` is an SI unit symbol as a literal type. */
export interface Quantity<U extends string = string> {
  readonly value: number;
  readonly unit: U;
  readonly symbol: string;
  readonly means: string;
  readonly origin: Origin;
}

/**
 * A quantity that is given: from the job, the catalogue, a part, a solver's run.
 * Throws RangeError where the value is not a finite number.
 */
export function given<U extends string>(
  value: number,
  unit: U,
  symbol: string,
  means: string,
  from: Given,
): Quantity<U> {
  if (!Number.isFinite(value)) throw new RangeError(`${symbol} (${means}) is ${value}, not a finite number`);
  return { value, unit, symbol, means, origin: { kind: "given", from } };
}
