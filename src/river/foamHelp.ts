import type { SurfaceId } from "../build/surface.ts";
import { type CheckContext, makeContext } from "../checks/checks.ts";
import { barrierOf, type CriterionAnswer, SURFACE_CRITERIA } from "../checks/foamAnswers.ts";
import { catalogue } from "../catalogue/catalogue.ts";
import { inch } from "../catalogue/imperial.ts";
import type { JobFile } from "../job/file.ts";
import { FACES, type BuildUp, type Job } from "../job/job.ts";
import type { PriceBook } from "../job/priceBook.ts";
import { readJobValue } from "../job/read.ts";
import type { Currency } from "../units/money.ts";
import { leastThickness, type LeastThickness } from "./foamHelp/least.ts";
import { curveOf, foamRange } from "./foamHelp/range.ts";
import { answersOf, buildChanged, type Change, quickFindings, type Subject, type Variant, variantOf } from "./foamHelp/variant.ts";

export type { LeastThickness } from "./foamHelp/least.ts";
export type { Variant } from "./foamHelp/variant.ts";

/** What foam is asked to do. */
export type FoamCriterion = CriterionAnswer["criterion"] | "own vapour barrier";

export interface FoamNeed {
  readonly criterion: FoamCriterion;
  /** "not asked" where no heated room states its humidity, or the site its months. */
  readonly least: LeastThickness | { readonly kind: "not asked" };
}

/** How much foam a build-up needs, and what else would help, as plain data. */
export interface FoamHelp {
  readonly buildUp: string;
  /** Names of the faces that have it. */
  readonly faces: readonly string[];
  /** In words. */
  readonly foam: string;
  readonly present: number;
  /** Thicknesses that were looked at, m: from one pass to the plane of the boards. */
  readonly least: number;
  readonly greatest: number;
  readonly needs: readonly FoamNeed[];
  /** By thickness, ascending; the present one among them. */
  readonly curve: readonly Variant[];
  /** Other framing, with the present thickness. */
  readonly variants: readonly Variant[];
  readonly currency: Currency;
  readonly leavesOut: string;
}

/** How far the help has come; `of` may grow. */
export interface FoamProgress {
  readonly done: number;
  readonly of: number;
}

/** Why there is no help for a build-up. */
export class NoFoamHelp extends Error {}

const LEAVES_OUT =
  "edges of the box, openings and partitions, where posts, rails and frames decide: the envelope check judges them by their own sections; clips or screws that hold studs off the sheet; what a thicker lining takes from the room";

/**
 * How much foam a build-up needs, by solving its faces' sections at one thickness after another, each change going through the job,
 * the build and its cuts. Every step yields how far it has come, so that the caller can wait, show it, or stop.
 * Throws NoFoamHelp for a job that cannot be read or a build-up without foam or faces, StageError where a stage could not compute.
 */
export function* foamHelp(file: JobFile, book: PriceBook, name: string, context: CheckContext = makeContext()): Generator<FoamProgress, FoamHelp> {
  const { job, buildUp, foam, faces } = subjectOf(file, name);
  const subject: Subject = { file, book, buildUp: name, faces, context };
  const base = buildChanged(subject, {});
  if (!base.ok) throw new NoFoamHelp("the job file has issues");
  const known = quickFindings(base.build, context);
  const range = foamRange(buildUp);
  const thicknesses = curveOf(range, foam.thickness, job.units);
  const changes = framingChanges(buildUp, foam.thickness);
  const expected = thicknesses.length + changes.length + SURFACE_CRITERIA.length * LOOKS_FOR_EACH;
  let done = 0;
  const step = (): FoamProgress => {
    done += 1;
    return { done, of: Math.max(expected, done + 1) };
  };

  const answered = new Map<number, ReadonlyMap<string, boolean>>();
  const holdsAt = (thickness: number): ReadonlyMap<string, boolean> => {
    const before = answered.get(thickness);
    if (before !== undefined) return before;
    const built = buildChanged(subject, { foam: thickness });
    const answers = built.ok ? answersOf(subject, built.build).answers : [];
    const holds = new Map(answers.map(({ criterion, comparison }) => [criterion, comparison.holds]));
    answered.set(thickness, holds);
    return holds;
  };
  const needs: FoamNeed[] = [];
  for (const criterion of SURFACE_CRITERIA) {
    if (!holdsAt(range.greatest).has(criterion)) {
      needs.push({ criterion, least: { kind: "not asked" } });
      continue;
    }
    const search = leastThickness(range.least, range.greatest, (thickness) => holdsAt(thickness).get(criterion) === true);
    let look = search.next();
    for (; look.done !== true; look = search.next()) yield step();
    needs.push({ criterion, least: look.value });
  }
  needs.push({ criterion: "own vapour barrier", least: barrierNeed(job, foam.row, range) });

  const curve: Variant[] = [];
  for (const thickness of thicknesses) {
    yield step();
    curve.push(variantOf(subject, "", { foam: thickness }, known));
  }
  const variants: Variant[] = [];
  for (const { what, change } of changes) {
    yield step();
    variants.push(variantOf(subject, what, change, known));
  }
  return {
    buildUp: name,
    faces: base.build.surfaces.filter(({ id }) => faces.includes(id)).map((surface) => surface.name),
    foam: catalogue.foams.get(foam.row).what,
    present: foam.thickness,
    ...range,
    needs,
    curve,
    variants,
    currency: book.currency,
    leavesOut: LEAVES_OUT,
  };
}

/** About how often a criterion makes the search look. */
const LOOKS_FOR_EACH = 8;

function subjectOf(file: JobFile, name: string): { readonly job: Job; readonly buildUp: BuildUp; readonly foam: NonNullable<BuildUp["foam"]>; readonly faces: readonly SurfaceId[] } {
  const read = readJobValue(file);
  if (!read.ok) throw new NoFoamHelp("the job file has issues");
  const { job } = read;
  const foamed = Object.entries(job.buildUps).filter(([, one]) => one.foam !== undefined).map(([own]) => own);
  const buildUp = job.buildUps[name];
  if (buildUp?.foam === undefined) throw new NoFoamHelp(`there is no build-up "${name}" with foam; those with foam: ${foamed.join(", ") || "none"}`);
  const faces = FACES.filter((face) => face !== "floor" && job.faces[face].buildUp === name);
  if (faces.length === 0) throw new NoFoamHelp(`no face has the build-up "${name}"`);
  return { job, buildUp, foam: buildUp.foam, faces };
}

function barrierNeed(job: Job, row: string, { least, greatest }: { readonly least: number; readonly greatest: number }): LeastThickness {
  const foam = catalogue.foams.get(row);
  if (!foam.closedCell) return { kind: "none" };
  const barrier = barrierOf(foam, job.codes.use === "bunk room").value;
  if (barrier <= least) return { kind: "any", failsAgain: undefined };
  return barrier <= greatest ? { kind: "found", thickness: barrier, failsAgain: undefined } : { kind: "none" };
}

/** Studs that stand this much apart stand alike, m. */
const SAME_PLACE = 1e-3;

/**
 * Other ways to frame the same foam: studs against the sheet, half an inch and an inch off it with foam behind them, studs at another
 * pitch, and studs as far off as the foam is thick, so that it runs through behind them and the space between them stays air.
 */
function framingChanges({ studs }: BuildUp, foam: number): readonly { readonly what: string; readonly change: Change }[] {
  if (studs === undefined) return [];
  const standOffs = [
    { what: "studs against the sheet", standOff: 0 },
    { what: "studs 1/2 in off the sheet, foam behind them", standOff: inch / 2 },
    { what: "studs 1 in off the sheet, foam behind them", standOff: inch },
    { what: "studs in front of the foam, which runs through behind them", standOff: foam },
  ];
  const pitches = [
    { what: "studs at 16 in", pitch: 16 * inch },
    { what: "studs at 24 in", pitch: 24 * inch },
  ];
  const isOther = (a: number, b: number): boolean => Math.abs(a - b) > SAME_PLACE;
  return [
    ...standOffs.filter(({ standOff }) => isOther(standOff, studs.standOff)).map(({ what, standOff }) => ({ what, change: { standOff } })),
    ...pitches.filter(({ pitch }) => isOther(pitch, studs.pitch)).map(({ what, pitch }) => ({ what, change: { pitch } })),
  ];
}
