import { create as produce } from "mutative";
import { create } from "zustand";
import type { JobRevision, Saved } from "../../job/api.ts";
import { isObject, type JobFile } from "../../job/file.ts";
import { issueText, type JobIssue } from "../../job/issue.ts";
import { contentOf, mergeFiles, type Change, type Choices, type Conflict } from "../../job/merge.ts";
import { writeJob } from "../../job/write.ts";
import type { Headline, Screen } from "../../river/screen.ts";
import { problemWords } from "../jobs/tell.ts";
import type { RunAnswer } from "../worker/answers.ts";
import { answerFor, forgetBooks } from "./answer.ts";
import {
  changed, gestureBegun, gestureCancelled, gestureEnded, redone, startHistory, undone, type History,
} from "./history.ts";
import { jobInPath } from "./jobAddress.ts";
import type { Selection } from "./selection.ts";
import { server } from "./server.ts";
import { useSettings } from "./settings.ts";
import { fileIn, typedFile, unreadText, type JobFileDraft, type UnreadText } from "./typedFile.ts";

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
  /** The job that is being fetched. */
  readonly opening: string | undefined;
  readonly job: { readonly id: string; readonly title: string } | undefined;
  /** Number of the revision that the file is based on. */
  readonly base: number;
  /** As typed, with all changes. */
  readonly file: JobFile;
  /** The file of the base revision. */
  readonly saved: JobFile;
  /** Where the base revision is no job file: there is nothing to edit or to save then. */
  readonly unread: UnreadText | undefined;
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
  /** Of two jobs opened in quick succession, the later is the one that opens. */
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
  /** Saves the text of an earlier revision, as it was typed, as the next one. */
  readonly goBack: (number: number) => Promise<void>;
  /** Someone saved this job: taken at once where nothing is changed here, told otherwise. */
  readonly heardSave: (job: string, number: number, who: string) => Promise<void>;
  /** Runs again, as after a change of the price book. */
  readonly rerun: () => void;
}

const EMPTY: JobFile = {};

const CLOSED: SessionData = {
  opening: undefined,
  job: undefined,
  base: 0,
  file: EMPTY,
  saved: EMPTY,
  unread: undefined,
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
  /** Numbers of the last job opened, run asked for, and run shown: answers may come in another order than their questions. */
  const order = { opened: 0, asked: 0, shown: 0 };
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
    const number = (order.asked += 1);
    const answer = await answerFor(file);
    if (answer === undefined || job?.id !== get().job?.id || number < order.shown) return;
    order.shown = number;
    const current = Object.is(file, get().file);
    set({ ...shown(answer, get().screen), stale: !current });
    if (answer.kind === "screen" && Object.is(file, get().saved)) set({ savedHeadline: answer.screen.headline });
  };
  /** Starts from a revision as it is on the server. */
  const begin = ({ job, number, title, file: text }: JobRevision): void => {
    const file = fileIn(text);
    if (file === undefined) {
      set({ ...CLOSED, job: { id: job, title: title ?? job }, base: number, unread: unreadText(text) });
      return;
    }
    const again = get().job?.id === job && get().unread === undefined;
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
  /** Sends a text to be saved on a base. Undefined where it did not come to that, or another job is open by now. */
  const send = async (text: () => Promise<string>, base: number, why: string): Promise<Saved | undefined> => {
    const { job } = get();
    const { who } = useSettings.getState();
    if (job === undefined) return undefined;
    if (who.trim() === "") {
      set({ saveProblem: "Say who saves first." });
      return undefined;
    }
    set({ saving: true, saveProblem: undefined });
    const done = await text()
      .then((file) => server.save(job.id, { base, file, who, why }))
      .catch((error: unknown) => ({ problem: problemWords(error) }));
    if (!Object.is(job, get().job)) return undefined;
    set({ saving: false });
    if (!("problem" in done)) return done;
    set({ saveProblem: done.problem });
    return undefined;
  };
  /** Saves a file on a base and stays in step with what was saved. */
  const put = async (file: JobFile, base: number, why: string): Promise<void> => {
    const { job, unread } = get();
    if (job === undefined || unread !== undefined) return;
    const answer = await send(() => Promise.resolve(writeJob(file)), base, why);
    if (answer?.saved === false) {
      const { latest, changes, conflicts } = answer;
      set({ conflict: { latest, changes, conflicts, why } });
    }
    if (answer?.saved === true) {
      const { revision } = answer;
      set({ base: revision.number, saved: file, job: { id: job.id, title: revision.title ?? job.id }, conflict: undefined, newer: undefined });
      const { screen, stale, issues, failed } = get();
      const told = screen !== undefined && !stale && issues.length === 0 && failed === undefined && Object.is(file, get().file);
      if (told) set({ savedHeadline: screen.headline });
    }
  };
  return {
    ...CLOSED,
    // A window whose address names a job is opening it from the first moment.
    opening: typeof location === "undefined" ? undefined : jobInPath(location.pathname),
    open: async (jobId) => {
      const number = (order.opened += 1);
      set({ ...CLOSED, opening: jobId });
      try {
        const revision = await server.job(jobId);
        if (number === order.opened) begin(revision);
      } catch (error) {
        if (number === order.opened) set({ opening: undefined, failed: `The job could not be opened. ${problemWords(error)}` });
      }
    },
    close: () => {
      order.opened += 1;
      set({ ...CLOSED });
    },
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
      if (!merged.ok) {
        set({ saveProblem: "Choose a side for every place in conflict." });
        return;
      }
      const { file: both } = merged;
      // Their text is no job file, and was chosen as a whole.
      if (!isObject(both)) {
        begin(latest);
        return;
      }
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
      const { base, file, saved, saving } = get();
      if (get().job?.id === job && latest.number > base && Object.is(file, saved) && !saving) begin(latest);
    },
    goBack: async (number) => {
      const { job, base } = get();
      if (job === undefined) return;
      const answer = await send(async () => (await server.revision(job.id, number)).file, base, `Back to revision ${number}`);
      if (answer !== undefined) begin(answer.saved ? answer.revision : answer.latest);
    },
    rerun: () => {
      forgetBooks();
      const { job, unread } = get();
      if (job !== undefined && unread === undefined) run();
    },
  };
});

function shown(answer: RunAnswer, before: Screen | undefined): Pick<SessionData, "screen" | "issues" | "failed"> {
  switch (answer.kind) {
    case "screen":
      return { screen: answer.screen, issues: [], failed: undefined };
    case "issues":
      return { screen: before, issues: answer.issues, failed: undefined };
    case "book issues":
      return { screen: before, issues: [], failed: `The price book cannot be read: ${answer.issues.map(issueText).join(" ")}` };
    case "failed":
      return { screen: before, issues: [], failed: answer.message };
  }
}
