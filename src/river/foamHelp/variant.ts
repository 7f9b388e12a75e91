import { assemble } from "../../build/assemble.ts";
import type { Build } from "../../build/build.ts";
import type { SurfaceId } from "../../build/surface.ts";
import { type CheckContext, type Finding, runChecks } from "../../checks/checks.ts";
import { studyEnvelope } from "../../checks/envelope.ts";
import { type CriterionAnswer, faceAnswers, type FaceAnswers, yearlyHeatOf } from "../../checks/foamAnswers.ts";
import { isObject, type JobFile, type JsonObject } from "../../job/file.ts";
import { issueText } from "../../job/issue.ts";
import type { PriceBook } from "../../job/priceBook.ts";
import { readJobValue } from "../../job/read.ts";
import { priceJob } from "../../price/priceJob.ts";
import { takeOffBuild } from "../../takeoff/takeOffBuild.ts";
import { inStage } from "../stageError.ts";

/** What a variant changes in a build-up, m; the rest stays. */
export interface Change {
  readonly foam?: number;
  readonly standOff?: number;
  readonly pitch?: number;
}

/** A build-up of the job changed, with what comes of it. */
export interface Variant {
  /** In words: "studs 1 in off the sheet". Empty for the thicknesses of the curve. */
  readonly name: string;
  readonly foam: number;
  readonly standOff: number | undefined;
  readonly pitch: number | undefined;
  /** What speaks against it that does not speak against the job as it is, in words; for a job that cannot be built these alone are known. */
  readonly objections: readonly { readonly verdict: "stop" | "watch"; readonly says: string }[];
  readonly numbers: VariantNumbers | undefined;
}

export interface VariantNumbers {
  /** The coldest surface of the faces' own sections; undefined where no room is heated. */
  readonly coldest: { readonly factor: number; readonly room: string; readonly section: string } | undefined;
  /** The tightest case of each criterion that is asked: the temperature factor that it needs, and whether every surface has it. */
  readonly criteria: readonly (Omit<CriterionAnswer, "comparison"> & { readonly holds: boolean; readonly need: number })[];
  /** Of each face with the build-up, its studs counted. */
  readonly faces: readonly { readonly surface: string; readonly name: string; readonly transmittance: number }[];
  /** Of the whole box, W/K; undefined where a face could not be cut. */
  readonly loss: number | undefined;
  /** J; undefined where no room is heated or no month is stated. */
  readonly yearlyHeat: number | undefined;
  readonly priceCents: number;
  /** Sections of the faces that could not be cut or solved. */
  readonly leftOut: readonly string[];
}

/** The job that variants start from. */
export interface Subject {
  readonly file: JobFile;
  readonly book: PriceBook;
  readonly buildUp: string;
  /** Faces that have the build-up. */
  readonly faces: readonly SurfaceId[];
  readonly context: CheckContext;
}

/** Builds a change, or says why it cannot be read. */
export function buildChanged({ file, buildUp }: Pick<Subject, "file" | "buildUp">, change: Change): { readonly ok: true; readonly build: Build } | { readonly ok: false; readonly issues: readonly string[] } {
  const read = readJobValue(changed(file, buildUp, change));
  if (!read.ok) return { ok: false, issues: read.issues.map(issueText) };
  return { ok: true, build: inStage("build", () => assemble(read.job)) };
}

/** The faces' surfaces alone, which is quick. */
export function answersOf({ faces, context }: Subject, build: Build): FaceAnswers {
  return inStage("findings", () => faceAnswers(build, faces, context));
}

/** Everything that is told of a variant. `known` are the findings of the job as it is. */
export function variantOf(subject: Subject, name: string, change: Change, known: readonly Finding[]): Variant {
  const built = buildChanged(subject, change);
  const typed = { name, ...sizesOf(subject, change) };
  if (!built.ok) return { ...typed, objections: built.issues.map((says) => ({ verdict: "stop" as const, says })), numbers: undefined };
  const { build } = built;
  const before = new Set(known.map(({ id }) => id));
  const objections = quickFindings(build, subject.context).flatMap(({ id, verdict, says }) =>
    (verdict === "stop" || verdict === "watch") && !before.has(id) ? [{ verdict, says }] : [],
  );
  return { ...typed, objections, numbers: numbersOf(subject, build) };
}

/** Stops and watches by the quick checks. */
export function quickFindings(build: Build, context: CheckContext): readonly Finding[] {
  return inStage("findings", () => runChecks(build, context, "quick")).filter(({ verdict }) => verdict === "stop" || verdict === "watch");
}

function numbersOf(subject: Subject, build: Build): VariantNumbers {
  const { faces, context, book } = subject;
  const { answers, coldest, leftOut } = answersOf(subject, build);
  const { losses } = inStage("findings", () => studyEnvelope(build, context));
  const { whole } = losses;
  return {
    coldest,
    criteria: answers.map(({ comparison: { holds, right }, ...answer }) => ({ ...answer, holds, need: right.value })),
    faces: losses.faces.filter(({ surface }) => faces.some((id) => id === surface)).map(({ surface, name, bridged }) => ({ surface, name, transmittance: bridged.value })),
    loss: whole?.value,
    yearlyHeat: whole === undefined ? undefined : yearlyHeatOf(build, whole)?.heat.value,
    priceCents: inStage("price", () => priceJob(build, takeOffBuild(build), book)).total.value,
    leftOut,
  };
}

function sizesOf({ file, buildUp }: Subject, change: Change): Pick<Variant, "foam" | "standOff" | "pitch"> {
  const read = readJobValue(file);
  const present = read.ok ? read.job.buildUps[buildUp] : undefined;
  if (present?.foam === undefined) throw new RangeError(`the job has no build-up ${buildUp} with foam`);
  return {
    foam: change.foam ?? present.foam.thickness,
    standOff: change.standOff ?? present.studs?.standOff,
    pitch: change.pitch ?? present.studs?.pitch,
  };
}

/** The file with the change typed in. Throws RangeError where the build-up has nothing to change. */
function changed(file: JobFile, name: string, { foam, standOff, pitch }: Change): JobFile {
  const buildUps = objectAt(file, "buildUps");
  const buildUp = objectAt(buildUps, name);
  const layers: Record<string, JsonObject> = {};
  if (foam !== undefined) layers["foam"] = { ...objectAt(buildUp, "foam"), thickness: typed(foam) };
  if (standOff !== undefined || pitch !== undefined) {
    layers["studs"] = {
      ...objectAt(buildUp, "studs"),
      ...(standOff === undefined ? {} : { standOff: typed(standOff) }),
      ...(pitch === undefined ? {} : { pitch: typed(pitch) }),
    };
  }
  return { ...file, buildUps: { ...buildUps, [name]: { ...buildUp, ...layers } } };
}

function objectAt(holder: JsonObject, name: string): JsonObject {
  const held = holder[name];
  if (!isObject(held)) throw new RangeError(`the job file has no ${name}`);
  return held;
}

/** A length as a job file has it, to the micrometre. */
function typed(length: number): string {
  return `${(length * 1000).toFixed(3)} mm`;
}
