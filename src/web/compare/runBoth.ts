import type { JobFile, JsonValue } from "../../job/file.ts";
import type { Screen } from "../../river/screen.ts";
import { startRiver } from "../state/riverWorker.ts";
import { useSettings } from "../state/settings.ts";
import type { RunAnswer } from "../worker/answers.ts";

/** A file to be worked out, with its price book and what to call it. */
export interface Version {
  readonly name: string;
  readonly file: JobFile;
  readonly book: JsonValue;
}

export type BothRun =
  | { readonly ok: true; readonly before: Screen; readonly after: Screen }
  | { readonly ok: false; readonly says: string };

/** Works out two files in a worker of their own, so that the open job's workings stay at hand. The worker ends with the answer. */
export async function runBoth(before: Version, after: Version): Promise<BothRun> {
  const runner = startRiver("compare");
  try {
    const { system } = useSettings.getState();
    const one = await runner.run(before.file, { kind: "book", book: before.book }, system);
    if (one.kind !== "screen") return { ok: false, says: whyNot(before.name, one) };
    const other = await runner.run(after.file, { kind: "book", book: after.book }, system);
    if (other.kind !== "screen") return { ok: false, says: whyNot(after.name, other) };
    return { ok: true, before: one.screen, after: other.screen };
  } finally {
    runner.end();
  }
}

function whyNot(name: string, answer: Exclude<RunAnswer, { readonly kind: "screen" }>): string {
  switch (answer.kind) {
    case "issues":
      return `${name} cannot be read: it has ${answer.issues.length === 1 ? "one issue" : `${answer.issues.length} issues`}.`;
    case "failed":
      return `${name} could not be computed: ${answer.message}`;
  }
}
