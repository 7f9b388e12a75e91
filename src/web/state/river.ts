import type { Working, WorkingOf } from "../../river/screen.ts";
import type { HeatTables, Hour, SectionPicture, SectionRow } from "../../river/sections.ts";
import type { System } from "../../units/format.ts";
import type { RunAnswer, SlowAnswer } from "../worker/answers.ts";
import type { Runner } from "../worker/runner.ts";
import { latestWins } from "./latestWins.ts";
import { startRiver, type RiverWorker } from "./riverWorker.ts";

/** Works out a job file in the worker, but for the slow checks, worded in a system of units; undefined where a later call took this one's place. */
export const runFile: (...asked: Parameters<Runner["quick"]>) => Promise<RunAnswer | undefined> = latestWins((...asked) => quick().quick(...asked));

/** Works out the slow checks of a job file in a worker of their own; undefined where a later call took this one's place. */
export const runSlow: (...asked: Parameters<Runner["slow"]>) => Promise<SlowAnswer | undefined> = latestWins((...asked) => slow().slow(...asked));

/** A working, and whether it is one of the slow checks. */
export interface FoundWorking {
  readonly working: Working;
  readonly isSlow: boolean;
}

/** The working of a number of the last run; undefined where that run holds nothing of that id. */
export async function workingOf(of: WorkingOf): Promise<FoundWorking | undefined> {
  const atOnce = await quick().working(of);
  if (atOnce !== undefined) return { working: atOnce, isSlow: false };
  const later = await slow().working(of);
  return later === undefined ? undefined : { working: later, isSlow: true };
}

/** The sections of the last run of the slow checks and what its box loses. */
export async function sectionsOfRun(): Promise<{ readonly sections: readonly SectionRow[]; readonly heat: HeatTables | undefined }> {
  const worker = slow();
  return { sections: await worker.sections(), heat: await worker.heat() };
}

/** The temperatures of a section of the last run; undefined where that run has no such section or hour. */
export function pictureOf(section: string, hour: Hour, system: System): Promise<SectionPicture | undefined> {
  return slow().picture(section, hour, system);
}

const quick = kept("river");
const slow = kept("slow checks");

/** Gives a worker, made at first use, so that code that never runs a job starts none, and anew after one that broke. */
function kept(name: string): () => RiverWorker {
  const made: { worker?: RiverWorker | undefined } = {};
  return () => {
    made.worker ??= startRiver(name, () => {
      made.worker = undefined;
    });
    return made.worker;
  };
}
