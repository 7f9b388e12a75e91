import { wrap } from "comlink";
import type { Working, WorkingOf } from "../../river/screen.ts";
import type { RunAnswer } from "../worker/answers.ts";
import type { Runner } from "../worker/runner.ts";

/** A worker with a river of its own. Its questions reject once the worker is broken. */
export interface RiverWorker {
  readonly run: (...asked: Parameters<Runner["run"]>) => Promise<RunAnswer>;
  readonly working: (of: WorkingOf) => Promise<Working | undefined>;
  readonly end: () => void;
}

/** Starts a worker; `onBroken` is told, once, when it cannot be loaded or fails outside of an answer. It is of no use then. */
export function startRiver(name: string, onBroken: () => void = () => undefined): RiverWorker {
  const worker = new Worker(new URL("../worker/river.worker.ts", import.meta.url), { type: "module", name });
  const remote = wrap<Runner>(worker);
  // A worker that is not there never answers: whoever asks it is told by this instead.
  const broken = new Promise<never>((_, reject) => {
    worker.addEventListener("error", (event) => {
      event.preventDefault();
      worker.terminate();
      onBroken();
      reject(new Error("The part of the app that computes could not be started, or stopped."));
    }, { once: true });
  });
  broken.catch(() => undefined);
  return {
    run: (...asked) => Promise.race([remote.run(...asked), broken]),
    working: (of) => Promise.race([remote.working(of), broken]),
    end: () => worker.terminate(),
  };
}
