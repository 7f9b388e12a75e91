import type { Working, WorkingOf } from "../../river/screen.ts";
import type { RunAnswer } from "../worker/answers.ts";
import type { Runner } from "../worker/runner.ts";
import { latestWins } from "./latestWins.ts";
import { startRiver, type RiverWorker } from "./riverWorker.ts";

/** Runs a job file in the worker, worded in a system of units; undefined where a later call took this one's place. */
export const runFile: (...asked: Parameters<Runner["run"]>) => Promise<RunAnswer | undefined> = latestWins((...asked) => worker().run(...asked));

/** The working of a number of the last run; undefined where that run holds nothing of that id. */
export function workingOf(of: WorkingOf): Promise<Working | undefined> {
  return worker().working(of);
}

const MADE: { worker?: RiverWorker | undefined } = {};

/** Made at first use, so that code that never runs a job starts no worker, and anew after one that broke. */
function worker(): RiverWorker {
  MADE.worker ??= startRiver("river", () => {
    MADE.worker = undefined;
  });
  return MADE.worker;
}
