import type { Source } from "./source.ts";

/** Inputs of a formula by name: an SI unit symbol, with `[]` behind it for a list of any length. */
export type Takes = Readonly<Record<string, string>>;

/**
 * A relation with its text beside its compute function; its inputs are not known to the compiler, as a working holds it.
 * `text` is shown to people and evaluated by an independent evaluator in tests; it uses
 * + - * / ^, parentheses, sum(), min(), max(), sqrt(), abs(), ceil(), floor(), round(), exp(), ln(), sin(), cos(), tan(),
 * the number pi and the names in `takes`. Lists of one length are worked on element by element: sum(d / lambda).
 */
export interface AnyFormula {
  readonly id: string;
  readonly symbol: string;
  readonly means: string;
  readonly unit: string;
  readonly text: string;
  readonly takes: Takes;
  readonly source: Source;
  readonly compute: (values: never) => number;
}
