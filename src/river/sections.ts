import type { CheckContext, Finding } from "../checks/checks.ts";
import { type EnvelopeStudy, studyEnvelope } from "../checks/envelope.ts";
import { type HeatTables, heatTables, type Hour, pictureOf, plannedOf, type SectionPicture, type SectionRow, sectionRows, yearlyHeatIn } from "../checks/heatShown.ts";
import type { System } from "../units/format.ts";
import type { Quantity } from "../working/quantity.ts";
import type { Checked } from "./river.ts";

export type { HeatTables, Hour, Outline, PictureGrid, SectionPicture, SectionRow } from "../checks/heatShown.ts";

/** A number of the heat tables whose working can be asked for: of the whole box, or of a surface, a junction, an opening by its id. */
export type HeatOf =
  | { readonly kind: "heat loss" | "yearly heat" }
  | { readonly kind: "field transmittance" | "face transmittance" | "junction transmittance" | "opening transmittance"; readonly id: string };

/** Sections of one build: each list, table and picture is made when it is first asked for. */
export interface SectionsView {
  readonly rows: () => readonly SectionRow[];
  /** Isotherms in steps of the unit system. Undefined where there is no such section, or the site does not state that month. */
  readonly picture: (id: string, hour: Hour, system: System) => SectionPicture | undefined;
  readonly tables: () => HeatTables;
  /** What the working of a number starts from; undefined where there is none of that id. */
  readonly roots: (of: HeatOf) => readonly Quantity[] | undefined;
}

/**
 * The sections of a build that was checked with this context, which remembers their solutions. Temperatures are those with
 * the surface resistances of the rule against mould, as the findings on cold surfaces have them.
 */
export function sectionsView({ build, findings }: Checked, context: CheckContext): SectionsView {
  const study = once(() => studyEnvelope(build, context));
  return {
    rows: once(() => sectionRows(build, study(), findings)),
    picture: (id, hour, system) => {
      const planned = plannedOf(study(), id);
      const solved = planned === undefined ? undefined : study().solver.solve(planned, "mould");
      return solved === undefined ? undefined : pictureOf(build, solved, hour, system);
    },
    tables: once(() => heatTables(build, study(), findings)),
    roots: (of) => {
      const root = rootIn(study(), findings, of);
      return root === undefined ? undefined : [root];
    },
  };
}

const KINDS: ReadonlySet<string> = new Set<HeatOf["kind"]>([
  "heat loss", "yearly heat", "field transmittance", "face transmittance", "junction transmittance", "opening transmittance",
]);

/** True for a number of the heat tables. */
export function isOfHeat(of: { readonly kind: string }): of is HeatOf {
  return KINDS.has(of.kind);
}

function rootIn({ losses: { faces, junctions, openings, whole } }: EnvelopeStudy, findings: readonly Finding[], of: HeatOf): Quantity | undefined {
  switch (of.kind) {
    case "yearly heat":
      return yearlyHeatIn(findings);
    case "heat loss":
      return whole;
    case "field transmittance":
      return faces.find(({ surface }) => surface === of.id)?.field;
    case "face transmittance":
      return faces.find(({ surface }) => surface === of.id)?.bridged;
    case "junction transmittance":
      return junctions.find(({ id }) => id === of.id)?.psi;
    case "opening transmittance":
      return openings.find(({ opening }) => opening === of.id)?.transmittance;
  }
}

/** The answer of the first call, given again. */
function once<T extends object>(make: () => T): () => T {
  let made: T | undefined;
  return () => (made ??= make());
}
