import { create as produce } from "mutative";
import { create } from "zustand";
import type { JobRevision } from "../../job/api.ts";
import { isObject, type JobFile, type JsonValue } from "../../job/file.ts";
import type { JobIssue } from "../../job/issue.ts";
import { contentOf, mergeFiles, type Change, type Choices, type Conflict } from "../../job/merge.ts";
import { writeJob } from "../../job/write.ts";
import type { Headline, Screen } from "../../river/screen.ts";
import type { RunAnswer } from "../worker/answers.ts";
import {
  changed, gestureBegun, gestureCancelled, gestureEnded, redone, startHistory, undone, type History,
} from "./history.ts";
import { runFile } from "./river.ts";
import type { Selection } from "./selection.ts";
import { server, ServerError } from "./server.ts";
import { useSettings } from "./settings.ts";
import { typedFile, type JobFileDraft } from "./typedFile.ts";

export type { Selection } from "./selection.ts";
export type { JobFileDraft } from "./typedFile.ts";

/** A save that others came before; nothing was written. */
export interface SaveConflict {
  readonly latest: JobRevision;
  readonly changes: readonly Change[];
  readonly conflicts: readonly Conflict[];
  /** Why the user was saving. */
  readonly why: string;
}

/** How a conflict ends: take theirs and drop mine, keep mine over theirs, or both with a side for each place in conflict. */
export type Resolution = { readonly how: "take" } | { readonly how: "keep" } | { readonly how: "merge"; readonly choices: Choices };

interface SessionData {
  readonly job: { readonly id: string; readonly title: string } | undefined;
  /** Number of the revision that the file is based on. */
  readonly base: number;
  /** As typed, with all changes. */
  readonly file: JobFile;
  /** The file of the base revision. */
  readonly saved: JobFile;
  /** The last answer; kept while a newer run is under way and while the file cannot be read. */
  readonly screen: Screen | undefined;
  readonly stale: boolean;
  readonly issues: readonly JobIssue[];
  readonly failed: string | undefined;
  readonly savedHeadline: Headline | undefined;
  readonly selection: Selection | undefined;
  /** Ids of parts, openings and items that a finding lights up. */
  readonly lit: readonly string[];
  readonly history: History<JobFile>;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  readonly saving: boolean;
  readonly saveProblem: string | undefined;
  readonly conflict: SaveConflict | undefined;
  /** A later revision that someone else saved while there are changes here. */
  readonly newer: { readonly number: number; readonly who: string } | undefined;
}

export interface Session extends SessionData {
  readonly open: (jobId: string) => Promise<void>;
  readonly close: () => void;
  readonly edit: (label: string, recipe: (draft: JobFileDraft) => void) => void;
  readonly beginGesture: (label: string) => void;
  readonly endGesture: () => void;
  readonly cancelGesture: () => void;
  readonly undo: () => void;
  readonly redo: () => void;
  readonly select: (selection: Selection | undefined) => void;
  readonly light: (ids: readonly string[]) => void;
  readonly save: (why: string) => Promise<void>;
  readonly resolve: (resolution: Resolution) => Promise<void>;
  /** Someone saved this job: taken at once where nothing is changed here, told otherwise. */
  readonly heardSave: (job: string, number: number, who: string) => Promise<void>;
  /** Runs again, as after a change of the price book. */
  readonly rerun: () => void;
}

const EMPTY: JobFile = {};

const CLOSED: SessionData = {
  job: undefined,
  base: 0,
  file: EMPTY,
  saved: EMPTY,
  screen: undefined,
  stale: false,
  issues: [],
  failed: undefined,
  savedHeadline: undefined,
  selection: undefined,
  lit: [],
  history: startHistory(EMPTY),
  canUndo: false,
  canRedo: false,
  saving: false,
  saveProblem: undefined,
  conflict: undefined,
  newer: undefined,
};

/** The open job and what is done to it. */
export const useSession = create<Session>()((set, get) => {
  const move = (history: History<JobFile>): void => {
    const ran = get().file;
    set({ history, file: history.now, canUndo: history.past.length > 0, canRedo: history.future.length > 0 });
    if (!Object.is(ran, history.now)) run();
  };
  const run = (): void => {
    set({ stale: true });
    void runNow();
  };
  const runNow = async (): Promise<void> => {
    const { file, job } = get();
    const answer = await answerFor(file);
    if (answer === undefined || job?.id !== get().job?.id) return;
    const current = Object.is(file, get().file);
    set({ ...shown(answer, get().screen), stale: !current });
    if (answer.kind === "screen" && Object.is(file, get().saved)) set({ savedHeadline: answer.screen.headline });
  };
  /** Starts from a revision as it is on the server. */
  const begin = ({ job, number, title, file: text }: JobRevision): void => {
    const content = contentOf(text);
    const file = isObject(content) ? content : EMPTY;
    const again = get().job?.id === job;
    set({
      ...(again ? {} : CLOSED),
      job: { id: job, title: title ?? job },
      base: number,
      file,
      saved: file,
      history: startHistory(file),
      canUndo: false,
      canRedo: false,
      conflict: undefined,
      newer: undefined,
      saveProblem: undefined,
    });
    run();
  };
  /** Saves a file on a base and stays in step with what was saved. */
  const put = async (file: JobFile, base: number, why: string): Promise<void> => {
    const { job } = get();
    const { who } = useSettings.getState();
    if (job === undefined) return;
    if (who === "") {
      set({ saveProblem: "Say who saves first." });
      return;
    }
    set({ saving: true, saveProblem: undefined });
    try {
      const answer = await server.save(job.id, { base, file: writeJob(file), who, why });
      if (!answer.ok) {
        set({ saving: false, conflict: { ...answer.since, why } });
        return;
      }
      const { revision } = answer;
      set({ saving: false, base: revision.number, saved: file, job: { id: job.id, title: revision.title ?? job.id }, conflict: undefined, newer: undefined });
      const { screen, stale, issues, failed } = get();
      const told = screen !== undefined && !stale && issues.length === 0 && failed === undefined && Object.is(file, get().file);
      if (told) set({ savedHeadline: screen.headline });
    } catch (error) {
      set({ saving: false, saveProblem: whyNot(error) });
    }
  };
  return {
    ...CLOSED,
    open: async (jobId) => {
      set({ ...CLOSED });
      try {
        begin(await server.job(jobId));
      } catch (error) {
        set({ failed: `The job could not be opened: ${whyNot(error)}` });
      }
    },
    close: () => set({ ...CLOSED }),
    edit: (label, recipe) => {
      const { history } = get();
      move(changed(history, label, produce(typedFile(history.now) as JobFileDraft, recipe) as unknown as JobFile));
    },
    beginGesture: (label) => move(gestureBegun(get().history, label)),
    endGesture: () => move(gestureEnded(get().history)),
    cancelGesture: () => move(gestureCancelled(get().history)),
    undo: () => move(undone(get().history)),
    redo: () => move(redone(get().history)),
    select: (selection) => set({ selection }),
    light: (lit) => set({ lit }),
    save: async (why) => {
      get().endGesture();
      await put(get().file, get().base, why);
    },
    resolve: async (resolution) => {
      const { conflict, file, saved } = get();
      if (conflict === undefined) return;
      const { latest, why } = conflict;
      if (resolution.how === "take") {
        begin(latest);
        return;
      }
      if (resolution.how === "keep") return put(file, latest.number, why);
      const merged = mergeFiles(saved, file, contentOf(latest.file), resolution.choices);
      if (!merged.ok || !isObject(merged.file)) {
        set({ saveProblem: "Choose a side for every place in conflict." });
        return;
      }
      const { file: both } = merged;
      move(changed(get().history, "Merge with the latest revision", both));
      await put(both, latest.number, why);
    },
    heardSave: async (job, number, who) => {
      if (get().job?.id !== job || number <= get().base || get().saving) return;
      if (!Object.is(get().file, get().saved)) {
        set({ newer: { number, who } });
        return;
      }
      const latest = await server.job(job);
      if (get().job?.id === job && Object.is(get().file, get().saved)) begin(latest);
    },
    rerun: () => {
      if (get().job !== undefined) run();
    },
  };
});

async function answerFor(file: JobFile): Promise<RunAnswer | undefined> {
  try {
    return await runFile(file, await bookOf(file));
  } catch (error) {
    return { kind: "failed", message: whyNot(error) };
  }
}

/** The raw price book that the file names; the worker says what is wrong with a file that names none. */
async function bookOf(file: JobFile): Promise<JsonValue> {
  const { prices } = typedFile(file) as { readonly prices?: { readonly book?: unknown } };
  if (typeof prices?.book !== "string") return null;
  return contentOf((await server.priceBook(prices.book)).file);
}

function shown(answer: RunAnswer, before: Screen | undefined): Pick<SessionData, "screen" | "issues" | "failed"> {
  switch (answer.kind) {
    case "screen":
      return { screen: answer.screen, issues: [], failed: undefined };
    case "issues":
      return { screen: before, issues: answer.issues, failed: undefined };
    case "book issues":
      return { screen: before, issues: [], failed: "The price book has issues; open it under Jobs to see them." };
    case "failed":
      return { screen: before, issues: [], failed: answer.message };
  }
}

function whyNot(error: unknown): string {
  if (error instanceof ServerError) return error.message;
  return error instanceof Error ? error.message : String(error);
}
