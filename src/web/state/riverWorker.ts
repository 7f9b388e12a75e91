import { wrap } from "comlink";
import type { Runner } from "../worker/runner.ts";

/** A worker with a river of its own. Its questions reject once the worker is broken. */
export type RiverWorker = { readonly [Question in keyof Runner]: (...asked: Parameters<Runner[Question]>) => Promise<ReturnType<Runner[Question]>> } & {
  readonly end: () => void;
};

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
  const orBroken = <Answer extends Promise<unknown>>(answer: Answer): Promise<Awaited<Answer>> => Promise.race([answer, broken]);
  return {
    run: (...asked) => orBroken(remote.run(...asked)),
    quick: (...asked) => orBroken(remote.quick(...asked)),
    slow: (...asked) => orBroken(remote.slow(...asked)),
    working: (of) => orBroken(remote.working(of)),
    sections: () => orBroken(remote.sections()),
    heat: () => orBroken(remote.heat()),
    picture: (...asked) => orBroken(remote.picture(...asked)),
    end: () => worker.terminate(),
  };
}
