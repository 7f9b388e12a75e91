/**
 * How far a source can be trusted.
 * - `seen`: the figure was read in a copy of the source.
 * - `recomputed`: seen, and computed again by independent means.
 * - `derived`: pure arithmetic or a closed form from stated inputs.
 * - `memory`: from memory of the named work, to be confirmed against the bought edition.
 * - `practice`: common practice of the trade; no published source.
 * - `typical`: a usual value of made articles; measure the one in hand.
 * - `invented`: made up for the demo; never relied on outside it.
 */
export type Standing = "seen" | "recomputed" | "derived" | "memory" | "practice" | "typical" | "invented";

/** Where a fact comes from: a published work with edition and clause, or an honest word in its place. */
export interface Source {
  readonly work: string;
  readonly clause?: string;
  readonly standing: Standing;
}

/** Makes a source; `work` names the standard, handbook or practice with its edition. */
export function source(work: string, standing: Standing, clause?: string): Source {
  return clause === undefined ? { work, standing } : { work, standing, clause };
}

/** Common practice of the trade, where no published source is known. */
export const commonPractice: Source = source("common practice", "practice");

const STANDING_WORDS: Readonly<Record<Standing, string>> = {
  seen: "",
  recomputed: "recomputed",
  derived: "derived",
  memory: "from memory, to be confirmed",
  practice: "",
  typical: "typical, measure the one in hand",
  invented: "invented for the demo",
};

/** One line of text for a source, with its standing where that is a caution. */
export function sourceText(from: Source): string {
  const clause = from.clause === undefined ? "" : `, ${from.clause}`;
  const standing = STANDING_WORDS[from.standing];
  return `${from.work}${clause}${standing === "" ? "" : ` (${standing})`}`;
}
