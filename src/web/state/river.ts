import { wrap } from "comlink";
import type { JobFile, JsonValue } from "../../job/file.ts";
import type { Working, WorkingOf } from "../../river/screen.ts";
import type { RunAnswer } from "../worker/answers.ts";
import type { Runner } from "../worker/runner.ts";
import { latestWins } from "./latestWins.ts";

/** Runs a job file in the worker; undefined where a later call took this one's place. */
export function runFile(file: JobFile, book: JsonValue): Promise<RunAnswer | undefined> {
  return client().run(file, book);
}

/** The working of a number of the last run; undefined where that run holds nothing of that id. */
export function workingOf(of: WorkingOf): Promise<Working | undefined> {
  return client().working(of);
}

interface Client {
  readonly run: (file: JobFile, book: JsonValue) => Promise<RunAnswer | undefined>;
  readonly working: (of: WorkingOf) => Promise<Working | undefined>;
}

/** Made at first use, so that code that never runs a job starts no worker. */
const client = once((): Client => {
  const worker = new Worker(new URL("../worker/river.worker.ts", import.meta.url), { type: "module", name: "river" });
  const remote = wrap<Runner>(worker);
  return { run: latestWins(async (file: JobFile, book: JsonValue): Promise<RunAnswer> => await remote.run(file, book)), working: (of) => remote.working(of) };
});

function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}
