import { type Accuracy, type NotSolved, type Section, type SectionSolution, solveSection } from "../physics/conduction.ts";

/** What checks share beside the build: work that is worth remembering from one build to the next. */
export interface CheckContext {
  /** Solves a section, or gives the answer of before for the same section and accuracy. */
  readonly solve: (section: Section, accuracy: Accuracy) => SectionSolution | NotSolved;
}

/** Sections kept at most: some four times those of the largest box with all its openings. */
const MOST_KEPT = 400;

/** A context that remembers solved sections by their content, the longest unused forgotten first; `solve` takes those it does not know. */
export function makeContext(most = MOST_KEPT, solve: CheckContext["solve"] = solveSection): CheckContext {
  const kept = new Map<string, SectionSolution | NotSolved>();
  return {
    solve(section, accuracy) {
      const key = keyOf(section, accuracy);
      const known = kept.get(key);
      const answer = known ?? solve(section, accuracy);
      kept.delete(key);
      kept.set(key, answer);
      const oldest = kept.size > most ? kept.keys().next().value : undefined;
      if (oldest !== undefined) kept.delete(oldest);
      return answer;
    },
  };
}

/** The content of a section without the names of what it shows. */
function keyOf({ window, regions, sheets, airs }: Section, accuracy: Accuracy): string {
  return JSON.stringify([
    window,
    regions.map(({ outline, fill }) => [outline, fill]),
    sheets.map(({ points, conductivity, thickness }) => [points, conductivity, thickness]),
    airs,
    accuracy,
  ]);
}
