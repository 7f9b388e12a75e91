import type { Job } from "../job/job.ts";
import { readPriceBook } from "../job/readPriceBook.ts";
import { readJob } from "../job/read.ts";
import { foamHelp, NoFoamHelp, type FoamHelp } from "../river/foamHelp.ts";
import { bookBeside } from "./bookBeside.ts";
import { foamLines } from "./foamLines.ts";
import { issueLines } from "./issues.ts";
import { readText, UserError } from "./readText.ts";
import type { Terminal } from "./terminal.ts";

export interface FoamArguments {
  readonly jobPath: string;
  readonly bookPath: string | undefined;
  /** Every build-up with foam that a face has, where none is named. */
  readonly buildUp: string | undefined;
}

/** `cornerpost foam`: prints how much foam build-ups need, and what else would help. */
export function foam({ jobPath, bookPath, buildUp }: FoamArguments, { out, error }: Terminal): number {
  const reading = readJob(readText(jobPath, "job file"));
  if (!reading.ok) {
    issueLines(jobPath, reading.issues).forEach(error);
    return 1;
  }
  const { job, file } = reading;
  const usedBook = bookPath ?? bookBeside(jobPath, job.prices.book);
  const book = readPriceBook(readText(usedBook, "price book"));
  if (!book.ok) {
    issueLines(usedBook, book.issues).forEach(error);
    return 1;
  }
  const names = buildUp === undefined ? foamedBuildUps(job) : [buildUp];
  if (names.length === 0) throw new UserError(`no face of ${jobPath} has a build-up with foam`);
  for (const name of names) foamLines(finished(foamHelp(file, book.book, name)), job.units).forEach(out);
  return 0;
}

/** Runs all steps. Throws UserError where there is no help for the build-up. */
function finished(steps: Generator<unknown, FoamHelp>): FoamHelp {
  try {
    let step = steps.next();
    while (step.done !== true) step = steps.next();
    return step.value;
  } catch (cause) {
    if (cause instanceof NoFoamHelp) throw new UserError(cause.message);
    throw cause;
  }
}

/** Those that a wall or the roof has, each once. */
function foamedBuildUps({ faces, buildUps }: Job): readonly string[] {
  const used = Object.values(faces).flatMap(({ buildUp }) => (buildUp === undefined ? [] : [buildUp]));
  return [...new Set(used)].filter((name) => buildUps[name]?.foam !== undefined);
}
