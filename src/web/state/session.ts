import { create as produce } from "mutative";
import { create } from "zustand";
import type { JobRevision, Saved } from "../../job/api.ts";
import { isObject, type JobFile } from "../../job/file.ts";
import { contentOf, mergeFiles } from "../../job/merge.ts";
import { writeJob } from "../../job/write.ts";
import { problemWords } from "../jobs/tell.ts";
import {
  canRedo, canUndo, changed, gestureBegun, gestureCancelled, gestureEnded, redone, startHistory, undone, type History,
} from "./history.ts";
import { jobInPath } from "./jobAddress.ts";
import { makeRunning } from "./running.ts";
import type { Selection } from "./selection.ts";
import { server } from "./server.ts";
import { CLOSED, hasChanges, type Resolution, type SessionData } from "./sessionData.ts";
import { useSettings } from "./settings.ts";
import { fileIn, typedFile, unreadText, type JobFileDraft } from "./typedFile.ts";

export type { Selection } from "./selection.ts";
export type { JobFileDraft } from "./typedFile.ts";

export interface Session extends SessionData {
  /** Of two jobs opened in quick succession, the later is the one that opens. */
  readonly open: (jobId: string) => Promise<void>;
  readonly close: () => void;
  /** A change with a label is a step of its own, and ends a gesture that is still open; one without is part of the gesture. */
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
  /** Where the latest text is no job file: saves that of an earlier revision, as it was typed, as the next one. */
  readonly goBack: (number: number) => Promise<void>;
  /** Puts the file of an earlier revision in place of this one, as a step that can be undone, to be saved as the next. */
  readonly bringBack: (number: number) => Promise<void>;
  /** Someone saved this job: taken at once where nothing is changed here, told otherwise. */
  readonly heardSave: (job: string, number: number, who: string) => Promise<void>;
  /** Runs again, as after a change of the price book or of the units shown. */
  readonly rerun: () => void;
}

interface Heard {
  readonly job: string;
  readonly number: number;
  readonly who: string;
}

/** The open job and what is done to it. */
export const useSession = create<Session>()((set, get) => {
  /** Number of the last job opened. */
  const order = { opened: 0 };
  /** What was heard while a save of our own was under way: whose came first is known when it is answered. */
  const heard: { last?: Heard | undefined } = {};
  const run = makeRunning(get, set);
  const move = (history: History<JobFile>): void => {
    const ran = get().file;
    set({ history, file: history.now, canUndo: canUndo(history), canRedo: canRedo(history) });
    if (!Object.is(ran, history.now)) run();
  };
  /** Starts from a revision as it is on the server. */
  const begin = ({ job, number, title, file: text }: JobRevision): void => {
    const file = fileIn(text);
    if (file === undefined) {
      set({ ...CLOSED, job: { id: job, title: title ?? job }, base: number, unread: unreadText(text) });
      return;
    }
    set({ ...CLOSED, job: { id: job, title: title ?? job }, base: number, file, saved: file, history: startHistory(file) });
    run();
  };
  /** Goes on from a revision that someone else saved. The past stays: their file is a step, and mine comes back by undo. */
  const follow = (revision: JobRevision): void => {
    const { job, number, title, who, file: text } = revision;
    const file = fileIn(text);
    if (file === undefined || get().unread !== undefined) {
      begin(revision);
      return;
    }
    set({ job: { id: job, title: title ?? job }, base: number, saved: file, conflict: undefined, newer: undefined, saveProblem: undefined });
    move(changed(gestureEnded(get().history), `revision ${number} by ${who}`, file));
  };
  /** Keeps in mind what was heard while it cannot be taken: until the save under way is answered, or until the user decides. */
  const waits = ({ number, who }: Pick<Heard, "number" | "who">, job: string): boolean => {
    if (get().saving) heard.last = { job, number, who };
    else if (hasChanges(get())) set({ newer: { number, who } });
    else return false;
    return true;
  };
  const hearAgain = async (): Promise<void> => {
    const { last } = heard;
    heard.last = undefined;
    // Where the server is away again, the next connection asks.
    if (last !== undefined) await get().heardSave(last.job, last.number, last.who).catch(() => undefined);
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
      const { screen, stale, slowStale, issues, failed } = get();
      const told = screen !== undefined && !stale && !slowStale && issues.length === 0 && failed === undefined && Object.is(file, get().file);
      if (told) set({ savedHeadline: screen.headline });
    }
    void hearAgain();
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
      const history = label === "" ? get().history : gestureEnded(get().history);
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
        follow(latest);
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
        follow(latest);
        return;
      }
      move(changed(get().history, "Merge with the latest revision", both));
      await put(both, latest.number, why);
    },
    heardSave: async (job, number, who) => {
      if (get().job?.id !== job || number <= get().base || waits({ number, who }, job)) return;
      const latest = await server.job(job);
      if (get().job?.id === job && latest.number > get().base && !waits(latest, job)) follow(latest);
    },
    goBack: async (number) => {
      const { job, base } = get();
      if (job === undefined) return;
      const answer = await send(async () => (await server.revision(job.id, number)).file, base, `Back to revision ${number}`);
      if (answer !== undefined) begin(answer.saved ? answer.revision : answer.latest);
      void hearAgain();
    },
    bringBack: async (number) => {
      const { job } = get();
      if (job === undefined) return;
      const file = fileIn((await server.revision(job.id, number)).file);
      if (file === undefined) throw new RangeError(`Revision ${number} is no job file.`);
      if (get().job?.id === job.id) move(changed(gestureEnded(get().history), `going back to revision ${number}`, file));
    },
    rerun: () => {
      const { job, unread } = get();
      if (job !== undefined && unread === undefined) run();
    },
  };
});
