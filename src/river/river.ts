import { assemble } from "../build/assemble.ts";
import type { Build } from "../build/build.ts";
import { type CheckContext, type Finding, makeContext, type Pace, runChecks } from "../checks/checks.ts";
import { studyEnvelope } from "../checks/envelope.ts";
import { heatShown } from "../checks/heatShown.ts";
import { draw } from "../drawings/draw.ts";
import type { Job } from "../job/job.ts";
import type { PriceBook } from "../job/priceBook.ts";
import { headlineOf } from "../papers/headline.ts";
import type { Results } from "../papers/results.ts";
import { planJob } from "../plan/planJob.ts";
import { priceJob } from "../price/priceJob.ts";
import { takeOffBuild } from "../takeoff/takeOffBuild.ts";
import { inStage, type StageName } from "./stageError.ts";

export { StageError } from "./stageError.ts";

/** What all stages made of one job, with the numbers that decide it. */
export type River = Results;

/** Runs every stage in order. Same job and price book, same river. Throws StageError where a stage could not compute. */
export function runRiver(job: Job, book: PriceBook): River {
  return makeRiver()(job, book);
}

/**
 * A river that remembers its last run: a stage runs again only when what it is given is another object than the last time,
 * so that a new price book leaves build, findings, takeoff and drawings as they are. `onStage` is told of each stage as it starts.
 */
export function makeRiver(onStage: OnStage = () => undefined): (job: Job, book: PriceBook) => River {
  const context = makeContext();
  const undrawn = makeUndrawnRiver(onStage, "any", context);
  const heat = remembered("heat", onStage, (build: Build, findings: readonly Finding[]) => heatShown(build, studyEnvelope(build, context), findings));
  const drawings = remembered("drawings", onStage, draw);
  return (job, book) => {
    const results = undrawn(job, book);
    return { ...results, heat: heat(results.build, results.findings), drawings: drawings(results.build) };
  };
}

/** What a river gives without drawings and without the pictures and tables of heat. */
export type UndrawnRiver = Omit<River, "drawings" | "heat">;

/** The same for whoever draws the build itself, and with the checks of one pace alone where that is asked for. */
export function makeUndrawnRiver(onStage: OnStage = () => undefined, pace: Pace = "any", context: CheckContext = makeContext()): (job: Job, book: PriceBook) => UndrawnRiver {
  const build = remembered("build", onStage, assemble);
  const findings = remembered("findings", onStage, (built: Build) => runChecks(built, context, pace));
  const takeoff = remembered("takeoff", onStage, takeOffBuild);
  const quote = remembered("price", onStage, priceJob);
  const plan = remembered("plan", onStage, planJob);
  return (job, book) => {
    const built = build(job);
    const found = findings(built);
    const taken = takeoff(built);
    const results = {
      job,
      build: built,
      findings: found,
      takeoff: taken,
      quote: quote(built, taken, book),
      plan: plan(built, taken, book),
    };
    return { ...results, headline: inStage("headline", () => headlineOf(results)) };
  };
}

/** The first stages alone, which need no price book. Throws StageError where one of them could not compute. */
export function checkJob(job: Job): Checked {
  return makeChecking("any")(job);
}

/** A build with what the checks of a pace found. */
export interface Checked {
  readonly build: Build;
  readonly findings: readonly Finding[];
}

/** The first stages alone, with the checks of a pace, remembering from job to job what they solved. */
export function makeChecking(pace: Pace, context: CheckContext = makeContext()): (job: Job) => Checked {
  return (job) => {
    const build = inStage("build", () => assemble(job));
    return { build, findings: inStage("findings", () => runChecks(build, context, pace)) };
  };
}

type OnStage = (stage: StageName) => void;

function remembered<A extends readonly object[], T>(stage: StageName, onStage: OnStage, run: (...given: A) => T): (...given: A) => T {
  let last: { readonly given: A; readonly value: T } | undefined;
  return (...given) => {
    if (last !== undefined && given.every((one, at) => one === last?.given[at])) return last.value;
    onStage(stage);
    last = { given, value: inStage(stage, () => run(...given)) };
    return last.value;
  };
}
