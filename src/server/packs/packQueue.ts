import { Worker } from "node:worker_threads";
import type { PackState } from "../../job/api.ts";
import type { FromWorker, PackOrder } from "./messages.ts";

export interface PackAsked extends PackOrder {
  readonly job: string;
  readonly number: number;
}

/** Makes packs one after another in a worker thread, so that the server goes on answering, and keeps the last few. */
export interface PackQueue {
  /** Puts a pack in the queue; undefined where too many wait. */
  readonly ask: (asked: PackAsked) => PackState | undefined;
  readonly stateOf: (id: string) => PackState | undefined;
  /** The zip of a pack that is done. */
  readonly zipOf: (id: string) => Uint8Array<ArrayBuffer> | undefined;
  /** Stops a pack that waits or is being made, and gives its state; a pack that is over stays as it is. */
  readonly cancel: (id: string) => PackState | undefined;
  readonly close: () => Promise<void>;
}

const MOST_WAITING = 16;
const MOST_KEPT = 12;

export function makePackQueue(newId: () => string, log: (line: string) => void): PackQueue {
  const entries = new Map<string, Entry>();
  const running = new Map<Entry, Worker>();

  const finish = (entry: Entry, outcome: Partial<Entry>): void => {
    if (isOver(entry)) return;
    Object.assign(entry, outcome);
    running.delete(entry);
    const over = [...entries.values()].filter(isOver);
    for (const old of over.slice(0, -MOST_KEPT)) entries.delete(old.id);
    startNext();
  };

  const startNext = (): void => {
    const next = [...entries.values()].find(({ state }) => state === "waiting");
    if (next === undefined || running.size > 0) return;
    Object.assign(next, { state: "working", step: "starting" });
    const worker = new Worker(WORKER, { workerData: next.order satisfies PackOrder });
    running.set(next, worker);
    worker.on("message", (message: FromWorker) => {
      if (message.kind === "progress") Object.assign(next, { progress: message.share, step: message.step });
      else if (message.kind === "done") finish(next, { state: "done", progress: 1, step: "done", zip: message.zip });
      else fail(message.why);
    });
    const fail = (why: string): void => {
      log(`the pack of ${next.job}, revision ${next.number}, was not made: ${why}`);
      finish(next, { state: "failed", step: why });
    };
    worker.on("error", (error) => fail(error instanceof Error ? error.message : String(error)));
    worker.on("exit", () => {
      if (!isOver(next)) fail("the program that makes packs ended early");
    });
  };

  return {
    ask: ({ job, number, ...order }) => {
      if ([...entries.values()].filter(({ state }) => state === "waiting").length >= MOST_WAITING) return undefined;
      const entry: Entry = { id: newId(), job, number, order, state: "waiting", progress: 0, step: "waiting" };
      entries.set(entry.id, entry);
      startNext();
      return shown(entry);
    },
    stateOf: (id) => shown(entries.get(id)),
    zipOf: (id) => entries.get(id)?.zip,
    cancel: (id) => {
      const entry = entries.get(id);
      if (entry !== undefined && !isOver(entry)) {
        const worker = running.get(entry);
        finish(entry, { state: "cancelled", step: "cancelled" });
        void worker?.terminate();
      }
      return shown(entry);
    },
    close: async () => {
      const workers = [...running.values()];
      for (const entry of entries.values()) if (!isOver(entry)) entry.state = "cancelled";
      await Promise.all(workers.map((worker) => worker.terminate()));
    },
  };
}

const WORKER = new URL("../../../bin/packWorker.mjs", import.meta.url);

interface Entry {
  readonly id: string;
  readonly job: string;
  readonly number: number;
  readonly order: PackOrder;
  state: PackState["state"];
  progress: number;
  step: string;
  zip?: Uint8Array<ArrayBuffer>;
}

function isOver({ state }: Entry): boolean {
  return state !== "waiting" && state !== "working";
}

function shown(entry: Entry): PackState;
function shown(entry: Entry | undefined): PackState | undefined;
function shown(entry: Entry | undefined): PackState | undefined {
  if (entry === undefined) return undefined;
  const { id, job, number, state, progress, step } = entry;
  return { id, job, number, state, progress, step };
}
