import type { Build } from "../../../build/build.ts";
import type { Finding, Verdict } from "../../check.ts";
import type { EnvelopeStudy } from "../../envelope.ts";
import { dampRooms } from "../moisture/rooms.ts";
import { surfaceCases, verdictIfMissed } from "../moisture/surfaces.ts";
import type { Planned } from "../sections/planned.ts";
import { coldestThen, type ColdestThen } from "./coldest.ts";
import { airsThen } from "./hour.ts";

/** A section in the list. */
export interface SectionRow {
  readonly id: string;
  readonly name: string;
  readonly kind: SectionKind;
  /** Ids of the surfaces, openings and parts that it shows. */
  readonly about: readonly string[];
  /** At the winter design hour; undefined where it shows no heated room. */
  readonly coldest: ColdestThen | undefined;
  /** The gravest of what its surfaces miss, or "pass"; undefined where nothing is asked of them. */
  readonly verdict: Verdict | undefined;
  /** Ids of the findings that name this section. */
  readonly findings: readonly string[];
  readonly unknowns: number;
  /** Greatest relative change of a coupling when the mesh was last halved. */
  readonly change: number;
}

export type SectionKind = "face" | "junction" | "opening" | "partition";

/** A planned section with its kind. */
interface Listed {
  readonly planned: Planned;
  readonly kind: SectionKind;
}

/** The sections that a study shows, faces first: those that could be solved. */
export function sectionRows(build: Build, { plan, solver }: EnvelopeStudy, findings: readonly Finding[]): readonly SectionRow[] {
  const listed = listedIn(build, plan);
  const verdictOf = verdicts(build, listed, solver);
  const airs = airsThen(build, "design");
  return listed.flatMap(({ planned, kind }): readonly SectionRow[] => {
    const solved = solver.solve(planned, "mould");
    if (solved === undefined) return [];
    const { id, name, about } = planned;
    const { unknowns, couplingChange } = solved.solution.quality;
    return [
      {
        id,
        name,
        kind,
        about,
        coldest: airs === undefined ? undefined : coldestThen(build, solved, airs),
        verdict: verdictOf(id),
        findings: findings.filter(({ facts }) => facts["section"] === name).map((finding) => finding.id),
        unknowns,
        change: couplingChange,
      },
    ];
  });
}

/** The planned section of that id among those listed. */
export function plannedOf({ plan }: EnvelopeStudy, id: string): Planned | undefined {
  return allOf(plan).find((planned) => planned.id === id);
}

function allOf({ faces, junctions }: EnvelopeStudy["plan"]): readonly Planned[] {
  return [...faces.flatMap(({ field, kinds }) => [field, ...kinds.map(({ planned }) => planned)]), ...junctions.map(({ main }) => main)];
}

function listedIn({ openings, surfaces }: Build, plan: EnvelopeStudy["plan"]): readonly Listed[] {
  const ofOpenings = new Set(openings.map(({ opening }) => opening.id));
  const partitions = new Set<string>(surfaces.filter(({ kind }) => kind === "partition").map(({ id }) => id));
  const junctions = new Set(plan.junctions.map(({ id }) => id));
  return allOf(plan).map((planned) => {
    const [first] = planned.about as [string];
    if (!junctions.has(planned.id)) return { planned, kind: "face" };
    return { planned, kind: ofOpenings.has(first) ? "opening" : partitions.has(first) ? "partition" : "junction" };
  });
}

/** What each section's own surfaces are held to, by its id. */
function verdicts(build: Build, listed: readonly Listed[], solver: EnvelopeStudy["solver"]): (id: string) => Verdict | undefined {
  const groups = listed.map(({ planned }) => ({ id: planned.id, name: planned.name, about: planned.about, planned: [planned] }));
  const cases = surfaceCases(build, groups, dampRooms(build).rooms, solver);
  return (id) => {
    const own = cases.filter(({ group }) => group.id === id);
    const missed = own.filter(({ comparison }) => !comparison.holds).map(verdictIfMissed);
    if (missed.length === 0) return own.length === 0 ? undefined : "pass";
    return missed.includes("stop") ? "stop" : "watch";
  };
}
