import type { JobRevision } from "../../job/api.ts";
import type { JobFile } from "../../job/file.ts";
import type { JobIssue } from "../../job/issue.ts";
import { sameJson, type Change, type Choices, type Conflict } from "../../job/merge.ts";
import type { Screen, ScreenHeadline } from "../../river/screen.ts";
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

/** What is known of the open job. */
export interface SessionData {
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
  readonly savedHeadline: ScreenHeadline | undefined;
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

/** No job is open. */
export const CLOSED: SessionData = {
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

/** Whether the open job says anything else than its base revision: what was changed and changed back is no change. */
export function hasChanges({ job, file, saved }: Pick<SessionData, "job" | "file" | "saved">): boolean {
  return job !== undefined && !sameJson(file, saved);
}
