import type { JobRevision } from "../../job/api.ts";
import type { JobFile } from "../../job/file.ts";
import type { JobIssue } from "../../job/issue.ts";
import { sameJson, type Change, type Choices, type Conflict } from "../../job/merge.ts";
import type { Screen, ScreenHeadline, SlowScreen } from "../../river/screen.ts";
import { startHistory, type History } from "./history.ts";
import type { Selection } from "./selection.ts";
import type { UnreadText } from "./typedFile.ts";

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

/** What is worked out of the open file: the quick answer at once, the slow checks after it. */
export interface Worked {
  /** The last answer, with the findings of the slow checks at hand; kept while a newer run is under way and while the file cannot be read. */
  readonly screen: Screen | undefined;
  readonly stale: boolean;
  /** The last answer of the slow checks; kept in the same way. */
  readonly slow: SlowScreen | undefined;
  readonly slowStale: boolean;
  readonly slowFailed: string | undefined;
  readonly issues: readonly JobIssue[];
  readonly failed: string | undefined;
  /** Of the saved file, once all checks of it have answered. */
  readonly savedHeadline: ScreenHeadline | undefined;
}

/** What is known of the open job. */
export interface SessionData extends Worked {
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

const EMPTY: JobFile = {};

export const NOTHING_WORKED: Worked = {
  screen: undefined,
  stale: false,
  slow: undefined,
  slowStale: false,
  slowFailed: undefined,
  issues: [],
  failed: undefined,
  savedHeadline: undefined,
};

/** No job is open. */
export const CLOSED: SessionData = {
  ...NOTHING_WORKED,
  opening: undefined,
  job: undefined,
  base: 0,
  file: EMPTY,
  saved: EMPTY,
  unread: undefined,
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

/** Whether the open job says anything else than its base revision: what was changed and changed back is no change. */
export function hasChanges({ job, file, saved }: Pick<SessionData, "job" | "file" | "saved">): boolean {
  return job !== undefined && !sameJson(file, saved);
}
