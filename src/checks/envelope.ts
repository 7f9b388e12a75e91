import type { Build } from "../build/build.ts";
import type { CheckContext } from "./context.ts";
import { type Losses, lossesOf } from "./envelope/heat/losses.ts";
import { makeSolver, type SolvedSection, type Solver, type UnsolvedSection } from "./envelope/heat/solved.ts";
import { type SectionPlan, sectionPlan } from "./envelope/sections/sections.ts";

export type { Losses } from "./envelope/heat/losses.ts";
export type { SolvedSection, UnsolvedSection } from "./envelope/heat/solved.ts";

/** A build's sections with their solutions, and what its faces and junctions lose. */
export interface EnvelopeStudy {
  readonly plan: SectionPlan;
  readonly sections: readonly SolvedSection[];
  readonly unsolved: readonly UnsolvedSection[];
  readonly losses: Losses;
  /** Solves a planned section with either surface resistance. */
  readonly solver: Solver;
}

/**
 * Cuts a build into sections, solves them and gathers what they say; asked again for the same build with the same context, it
 * gives the same study. Throws RangeError for a build that cannot be cut.
 */
export function studyEnvelope(build: Build, context: CheckContext): EnvelopeStudy {
  const known = STUDIES.get(context) ?? new WeakMap<Build, EnvelopeStudy>();
  STUDIES.set(context, known);
  const study = known.get(build) ?? studyOf(build, context);
  known.set(build, study);
  return study;
}

/** Studies live no longer than their context and their build. */
const STUDIES = new WeakMap<CheckContext, WeakMap<Build, EnvelopeStudy>>();

function studyOf(build: Build, context: CheckContext): EnvelopeStudy {
  const plan = sectionPlan(build);
  const solver = makeSolver(build, context);
  const losses = lossesOf(build, plan, solver);
  const mains = [...plan.faces.flatMap(({ field, kinds }) => [field, ...kinds.map(({ planned }) => planned)]), ...plan.junctions.map(({ main }) => main)];
  return { plan, sections: mains.flatMap((planned) => solver.solve(planned) ?? []), unsolved: solver.unsolved(), losses, solver };
}
