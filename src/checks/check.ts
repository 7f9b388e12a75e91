import type { Build } from "../build/build.ts";
import type { Comparison } from "../working/comparison.ts";
import type { Quantity } from "../working/quantity.ts";
import type { Source } from "../working/source.ts";
import type { CheckContext } from "./context.ts";

export type Verdict = "pass" | "watch" | "stop" | "note";

/** What a check found. Numbers stay unrounded; the sentence is made from `code` and `facts` by the check's own table. */
export interface Finding {
  /** Stable: check, place, thing: "fit/opening-in-sheet/D1". */
  readonly id: string;
  readonly check: string;
  readonly verdict: Verdict;
  readonly code: string;
  readonly facts: Readonly<Record<string, string | number>>;
  /** One sentence, lengths in the job's units. */
  readonly says: string;
  /** Ids of the parts, openings, items and surfaces that it is about. */
  readonly about: readonly string[];
  readonly working: readonly Quantity[];
  readonly comparison?: Comparison;
  readonly sources: readonly Source[];
}

/**
 * A check asks one question of a build. Pure; same build, same findings, same order. What it solves it asks of the
 * context, or of a fresh one where none is given.
 */
export interface Check {
  readonly id: string;
  readonly asks: string;
  /** Job paths that it needs; where one is missing it gives a note that says so. */
  readonly needs: readonly string[];
  readonly leavesOut: string;
  readonly decides: string;
  /** Solves so much that a hand on the drawing should not wait for it: the screen shows all other answers first. */
  readonly isSlow?: true;
  run(build: Build, context?: CheckContext): readonly Finding[];
}
