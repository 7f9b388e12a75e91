import type { Choices, Conflict } from "../../job/merge.ts";

export type Side = "mine" | "theirs";

/** The places in conflict for which no side is chosen yet. */
export function openConflicts(conflicts: readonly Conflict[], choices: Choices): readonly Conflict[] {
  return conflicts.filter(({ path }) => !Object.hasOwn(choices, path));
}

/** The same choices with a side for one place. */
export function choose(choices: Choices, path: string, side: Side): Choices {
  return { ...choices, [path]: side };
}

/** One side for every place in conflict. */
export function chooseAll(conflicts: readonly Conflict[], side: Side): Choices {
  return Object.fromEntries(conflicts.map(({ path }) => [path, side]));
}

/** What is still to be decided, in a sentence. */
export function openWords(open: number): string {
  if (open === 0) return "Every place in conflict has a side.";
  return open === 1 ? "One place in conflict has no side yet." : `${open} places in conflict have no side yet.`;
}
