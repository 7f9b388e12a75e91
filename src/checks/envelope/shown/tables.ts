import type { Build } from "../../../build/build.ts";
import { sayIn } from "../../say.ts";
import type { Finding, Verdict } from "../../check.ts";
import type { EnvelopeStudy } from "../../envelope.ts";
import { dampRooms } from "../moisture/rooms.ts";
import { groupsOf, type SurfaceCase, surfaceCases, verdictIfMissed } from "../moisture/surfaces.ts";
import { whereWords } from "../moisture/where.ts";

/** What the box loses and how cold its surfaces are, as tables. */
export interface HeatTables {
  readonly faces: readonly FaceRow[];
  readonly junctions: readonly JunctionRow[];
  readonly openings: readonly OpeningRow[];
  /** W/K; undefined where a face could not be solved. */
  readonly loss: number | undefined;
  /** J a year; undefined without monthly means or a heated room. */
  readonly yearlyHeat: number | undefined;
  /** Heated rooms that state how damp they are, each with what is asked of its surfaces, the least margin first. */
  readonly surfaces: readonly SurfaceRow[];
  /** Sections that are left out, in words. */
  readonly missing: readonly string[];
}

export interface FaceRow {
  readonly surface: string;
  readonly name: string;
  /** m2, without openings. */
  readonly area: number;
  /** W/(m2 K), without and with what bridges it. */
  readonly field: number;
  readonly bridged: number;
  /** What bridges add, as a share of the field. */
  readonly share: number;
  /** W/K */
  readonly loss: number;
}

export interface JunctionRow {
  readonly id: string;
  readonly name: string;
  /** W/(m K) */
  readonly psi: number;
  /** m */
  readonly length: number;
  /** W/K */
  readonly loss: number;
}

export interface OpeningRow {
  readonly opening: string;
  /** W/(m2 K) */
  readonly transmittance: number;
  /** m2 */
  readonly area: number;
  /** W/K */
  readonly loss: number;
  /** No article states a transmittance: bare steel stands for it. */
  readonly isBare: boolean;
}

/** The coldest surface of a face with its studs, of an edge or of an opening, against what asks most of it. */
export interface SurfaceRow {
  readonly room: string;
  /** In words: "left wall", "edge of left wall and roof". */
  readonly name: string;
  readonly section: string;
  /** Where on it: "beside the stud (...)", lengths in the job's units. */
  readonly words: string;
  readonly criterion: "mould" | "condensation";
  /** "January", "the winter design hour". */
  readonly when: string;
  /** °C */
  readonly temperature: number;
  readonly factor: number;
  readonly need: number;
  readonly verdict: Verdict;
}

/** The tables of a study. */
export function heatTables(build: Build, study: EnvelopeStudy, findings: readonly Finding[]): HeatTables {
  const { faces, junctions, openings, whole } = study.losses;
  return {
    faces: faces.map(({ surface, name, field, bridged, area }) => ({
      surface,
      name,
      area: area.value,
      field: field.value,
      bridged: bridged.value,
      share: bridged.value / field.value - 1,
      loss: bridged.value * area.value,
    })),
    junctions: junctions.map(({ id, name, psi, length }) => ({ id, name, psi: psi.value, length: length.value, loss: psi.value * length.value })),
    openings: openings.map(({ opening, transmittance, area, isBare }) => ({
      opening,
      transmittance: transmittance.value,
      area: area.value,
      loss: transmittance.value * area.value,
      isBare,
    })),
    loss: whole?.value,
    yearlyHeat: yearlyHeatIn(findings)?.value,
    surfaces: surfaceRows(build, study),
    missing: [...study.plan.missing, ...study.unsolved.map(({ planned }) => planned.name)],
  };
}

/** The heat of a year among the findings of the envelope check. */
export function yearlyHeatIn(findings: readonly Finding[]): Finding["working"][number] | undefined {
  return findings.find(({ check, code }) => check === "envelope" && code === "yearly heat")?.working[0];
}

function surfaceRows(build: Build, { plan, solver }: EnvelopeStudy): readonly SurfaceRow[] {
  const { rooms } = dampRooms(build);
  const cases = surfaceCases(build, groupsOf(plan), rooms, solver);
  const say = sayIn(build.job.units);
  return rooms.flatMap((room) => {
    const own = cases.filter((one) => one.room === room);
    const groups = [...new Set(own.map(({ group }) => group))];
    const tightest = groups.map((group) => own.filter((one) => one.group === group).reduce((least, one) => (one.comparison.margin < least.comparison.margin ? one : least)));
    return tightest.toSorted((a, b) => a.comparison.margin - b.comparison.margin).map((one): SurfaceRow => ({
      room: room.placed.name,
      name: one.group.name,
      section: one.where.section,
      words: whereWords(one.where, say),
      criterion: one.criterion,
      when: one.month ?? "the winter design hour",
      temperature: one.outside + one.comparison.left.value * (one.inside - one.outside),
      factor: one.comparison.left.value,
      need: one.comparison.right.value,
      verdict: verdictOf(one),
    }));
  });
}

function verdictOf(one: SurfaceCase): Verdict {
  return one.comparison.holds ? "pass" : verdictIfMissed(one);
}
