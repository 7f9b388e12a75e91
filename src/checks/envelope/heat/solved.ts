import type { Build } from "../../../build/build.ts";
import type { Accuracy, Section, SectionSolution } from "../../../physics/conduction.ts";
import { given, type Quantity } from "../../../working/quantity.ts";
import type { CheckContext } from "../../context.ts";
import { type Films, OUTSIDE } from "../cuts/airs.ts";
import { type Planned, sectionOf } from "../sections/planned.ts";

/** A section of the build with its solution. */
export interface SolvedSection {
  readonly planned: Planned;
  readonly section: Section;
  readonly solution: SectionSolution;
  /** To the outside from all rooms, for each metre of depth. */
  readonly coupling: Quantity<"W/(m K)">;
}

/** A section that could not be solved. */
export interface UnsolvedSection {
  readonly planned: Planned;
  readonly reason: string;
}

/** Halving the mesh changes no coupling by more than 2 % and no share of temperature on a surface by more than 0.02. */
const ACCURACY: Accuracy = { coupling: 0.02, share: 0.02, mostUnknowns: 120_000 };

/** Solves planned sections, each id once; `unsolved` gathers those that fail. */
export interface Solver {
  readonly solve: (planned: Planned, films?: Films) => SolvedSection | undefined;
  readonly unsolved: () => readonly UnsolvedSection[];
}

/** A solver of one build's sections. */
export function makeSolver(build: Build, context: CheckContext): Solver {
  const solved = new Map<string, SolvedSection | UnsolvedSection>();
  return {
    solve(planned, films = "heat flow") {
      const key = `${films} ${planned.id}`;
      const known = solved.get(key) ?? solveOne(build, context, planned, films);
      solved.set(key, known);
      return "solution" in known ? known : undefined;
    },
    unsolved: () => [...solved.values()].flatMap((one) => ("solution" in one ? [] : [one])),
  };
}

function solveOne(build: Build, context: CheckContext, planned: Planned, films: Films): SolvedSection | UnsolvedSection {
  const section = sectionOf(build, planned, films);
  const solution = context.solve(section, ACCURACY);
  return solution.ok ? { planned, section, solution, coupling: couplingOf(planned, solution) } : { planned, reason: solution.reason };
}

function couplingOf({ name }: Planned, solution: SectionSolution): Quantity<"W/(m K)"> {
  const { environments, quality } = solution;
  const inside = environments.filter((one) => one !== OUTSIDE);
  const value = environments.includes(OUTSIDE) ? inside.reduce((sum, one) => sum + solution.coupling(OUTSIDE, one), 0) : 0;
  return given(value, "W/(m K)", "L_2D", `coupling of rooms and outside, ${name}`, {
    kind: "solver",
    method: "steady plane conduction by linear finite elements, mesh halved until two agree",
    size: `${quality.unknowns} unknowns; the last halving changed couplings by ${quality.couplingChange.toPrecision(2)} of their value`,
    residual: quality.imbalance,
  });
}
