import { parentPort, workerData } from "node:worker_threads";
import { issueText } from "../job/issue.ts";
import { makePack } from "../river/pack.ts";
import type { FromWorker, PackOrder } from "./packs/messages.ts";
import { zipOf } from "./packs/zip.ts";

/** About the share of the time that is over when zipping starts. */
const BEFORE_ZIP = 0.95;

run(workerData as PackOrder);

/** Makes one pack and tells of it. What it throws reaches the server as the worker's error. */
function run({ jobText, bookText }: PackOrder): void {
  const made = makePack(jobText, bookText, (step, share) => tell({ kind: "progress", step, share: share * BEFORE_ZIP }));
  if (!made.ok) {
    const why = [...made.jobIssues, ...made.bookIssues].map(issueText).join(" ");
    tell({ kind: "failed", why });
    return;
  }
  tell({ kind: "progress", step: "zipping", share: BEFORE_ZIP });
  const zip = zipOf("pack", made.files);
  tell({ kind: "done", zip }, [zip.buffer]);
}

function tell(message: FromWorker, given: readonly ArrayBuffer[] = []): void {
  parentPort?.postMessage(message, [...given]);
}
