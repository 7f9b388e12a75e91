import type { Comparison } from "../working/comparison.ts";
import type { Quantity } from "../working/quantity.ts";
import type { Source } from "../working/source.ts";
import type { Finding, Verdict } from "./check.ts";
import type { Say } from "./say.ts";

/** A check's table: for each code the facts that it takes and the sentence made from them. */
export type Sentences = Readonly<Record<string, (facts: never, say: Say) => string>>;

/** What a code's sentence is made from; nothing for a sentence that takes no facts. */
type FactsOf<T extends Sentences, C extends keyof T> = Parameters<T[C]> extends [] ? Readonly<Record<string, never>> : Parameters<T[C]>[0];

/** What a finding carries besides its code and facts. */
export interface FindingBody {
  readonly verdict: Verdict;
  /** Place and thing behind the check's id: "opening-in-sheet/D1". */
  readonly at: string;
  readonly about: readonly string[];
  /** Quantities asked for, besides the two sides of the comparison. */
  readonly working?: readonly Quantity[];
  readonly comparison?: Comparison;
}

/** Makes a finding of one check; a code takes only its own facts. */
export type MakeFinding<T extends Sentences> = <C extends keyof T & string>(code: C, facts: FactsOf<T, C>, body: FindingBody) => Finding;

/** The maker of a check's findings: sentence from the table, sources from the working. */
export function findingMaker<T extends Sentences>(check: string, table: T, say: Say): MakeFinding<T> {
  return (code, facts, { verdict, at, about, working = [], comparison }) => {
    const sentence = table[code] as (facts: unknown, say: Say) => string;
    const roots = comparison === undefined ? working : [...new Set([...working, comparison.left])];
    const sides = comparison === undefined ? [] : [comparison.left, comparison.right];
    return {
      id: `${check}/${at}`,
      check,
      verdict,
      code,
      facts,
      says: sentence(facts, say),
      about,
      working: roots,
      ...(comparison === undefined ? {} : { comparison }),
      sources: sourcesOf([...roots, ...sides]),
    };
  };
}

/** The sources behind a working, each once; plain geometry and statics need none. */
function sourcesOf(roots: readonly Quantity[]): readonly Source[] {
  const met = new Set<Quantity>();
  const found = new Map<string, Source>();
  const visit = (quantity: Quantity): void => {
    if (met.has(quantity)) return;
    met.add(quantity);
    const { origin } = quantity;
    if (origin.kind === "formula") {
      note(origin.formula.source);
      for (const input of Object.values(origin.inputs)) (Array.isArray(input) ? input : [input as Quantity]).forEach(visit);
    } else if (origin.from.kind === "catalogue" || origin.from.kind === "constant") {
      note(origin.from.source);
    }
  };
  const note = (from: Source): void => {
    if (from.standing === "derived") return;
    const key = `${from.work}|${from.clause ?? ""}`;
    if (!found.has(key)) found.set(key, from);
  };
  roots.forEach(visit);
  return [...found.values()];
}

/** The comparison with the least room left; undefined for none. */
export function tightest<T extends { readonly comparison: Comparison }>(cases: readonly T[]): T | undefined {
  return cases.reduce<T | undefined>(
    (least, one) => (least === undefined || one.comparison.margin < least.comparison.margin ? one : least),
    undefined,
  );
}
