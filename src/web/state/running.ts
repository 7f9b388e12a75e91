import type { JobFile } from "../../job/file.ts";
import { issueText } from "../../job/issue.ts";
import type { Screen } from "../../river/screen.ts";
import type { System } from "../../units/format.ts";
import { problemWords } from "../jobs/tell.ts";
import type { RunAnswer } from "../worker/answers.ts";
import { answerFor } from "./answer.ts";
import { runSlow } from "./river.ts";
import { hasChanges, type SessionData, type Worked } from "./sessionData.ts";
import { useSettings } from "./settings.ts";
import { withSlow } from "./withSlow.ts";

/** What a run is of. */
type Open = Worked & Pick<SessionData, "job" | "file" | "saved">;

/** What an answer is of, the units that it is worded in included. */
interface Asked {
  readonly file: JobFile;
  readonly system: System;
}

/** A quick answer and what it is of. */
interface Quick extends Asked {
  readonly job: string | undefined;
  readonly number: number;
  readonly screen: Screen;
}

/** So long a file has to stay as it is before slow checks are run again, ms: under a hand that moves they would hold it up. */
const REST = 150;

/** Gives what works out the file that is open now. */
export function makeRunning(
  get: () => Open,
  set: (worked: Partial<Worked>) => void,
  rest = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, REST)),
): () => void {
  /** Numbers of the last run asked for, and of those shown: answers may come in another order than their questions. */
  const order = { asked: 0, shown: 0, slowShown: 0 };
  /** The last quick answer by itself. */
  let quick: Quick | undefined;
  /** What the last answer of the slow checks is of. */
  let slowOf: Asked | undefined;
  const isOpen = (job: string | undefined): boolean => job === get().job?.id;

  const run = async (): Promise<void> => {
    const { file, job } = get();
    const { system } = useSettings.getState();
    const number = (order.asked += 1);
    const answer = await answerFor(file);
    if (answer === undefined || !isOpen(job?.id) || number < order.shown) return;
    order.shown = number;
    const isOld = number < order.asked;
    if (answer.kind === "screen") {
      quick = { file, system, job: job?.id, number, screen: answer.screen };
      set({ screen: withSlow(answer.screen, get().slow), issues: [], failed: undefined, stale: isOld, slowStale: isOld || needsRest(quick) });
    } else {
      set({ ...trouble(answer), stale: isOld, slowStale: isOld || needsRest(quick) });
    }
    if (get().slow !== undefined) await rest();
    // A file that cannot be read leaves the build before it on the screen, whose slow checks may still be asked for.
    if (number === order.asked && needsRest(quick)) await runRest(quick);
  };

  const needsRest = (of: Quick | undefined): of is Quick => of !== undefined && isOpen(of.job) && !(Object.is(slowOf?.file, of.file) && slowOf?.system === of.system);

  const runRest = async (of: Quick): Promise<void> => {
    const { file, system, job, number } = of;
    const answer = await runSlow(file, system).catch((error: unknown) => ({ kind: "failed" as const, message: problemWords(error) }));
    if (answer === undefined || !isOpen(job) || number < order.slowShown) return;
    order.slowShown = number;
    if (answer.kind !== "slow") {
      set({ slowFailed: answer.kind === "failed" ? answer.message : answer.issues.map(issueText).join(" ") });
      return;
    }
    const { slow } = answer;
    const { job: open, saved, savedHeadline, stale } = get();
    slowOf = of;
    set({
      slow,
      slowStale: stale || needsRest(quick),
      slowFailed: undefined,
      screen: withSlow((quick ?? of).screen, slow),
      savedHeadline: hasChanges({ job: open, file, saved }) ? savedHeadline : withSlow(of.screen, slow).headline,
    });
  };

  return () => {
    set({ stale: true, slowStale: true });
    void run();
  };
}

function trouble(answer: Exclude<RunAnswer, { readonly kind: "screen" }>): Pick<Worked, "issues" | "failed"> {
  switch (answer.kind) {
    case "issues":
      return { issues: answer.issues, failed: undefined };
    case "failed":
      return { issues: [], failed: answer.message };
  }
}
