import { assemble } from "../build/assemble.ts";
import type { Build } from "../build/build.ts";
import { type Finding, runChecks } from "../checks/checks.ts";
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
  const undrawn = makeUndrawnRiver(onStage);
  const drawings = remembered("drawings", onStage, draw);
  return (job, book) => {
    const results = undrawn(job, book);
    return { ...results, drawings: drawings(results.build) };
  };
}

/** The same without drawings, for whoever draws the build itself. */
export function makeUndrawnRiver(onStage: OnStage = () => undefined): (job: Job, book: PriceBook) => Omit<River, "drawings"> {
  const build = remembered("build", onStage, assemble);
  const findings = remembered("findings", onStage, runChecks);
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
export function checkJob(job: Job): { readonly build: Build; readonly findings: readonly Finding[] } {
  const build = inStage("build", () => assemble(job));
  return { build, findings: inStage("findings", () => runChecks(build)) };
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
