import { Worker } from "node:worker_threads";

const COPIER = new URL("./vacuumInto.mjs", import.meta.url);

/** Copies an SQLite database that may be in use into a new file, in a thread of its own. Rejects where the copy is not sound. */
export function copyDatabase(from: string, into: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(COPIER, { workerData: { from, into } });
    worker.on("error", reject);
    worker.on("exit", (code) => (code === 0 ? resolve() : reject(new Error("the copy ended early"))));
  });
}
