import type { Kysely, Selectable } from "kysely";
import type { JobRevision, JobRevisionHead } from "../job/api.ts";
import { isObject } from "../job/file.ts";
import { changesBetween, compareFiles, contentOf } from "../job/merge.ts";
import type { Change, Conflict } from "../job/merge.ts";
import { readJob } from "../job/read.ts";
import { isTaken } from "./isTaken.ts";
import { andTell } from "./andTell.ts";
import type { Tables } from "./schema/tables.ts";
import type { Store } from "./store.ts";

/** What a save says: the text of the file, who saves it and why. */
export interface Saying {
  readonly file: string;
  readonly who: string;
  readonly why: string;
}

export interface SaveAsked extends Saying {
  readonly job: string;
  /** Number of the revision that the file was made from. */
  readonly base: number;
}

export type Saving =
  | { readonly ok: true; readonly revision: JobRevision }
  | { readonly ok: false; readonly reason: "no such job" }
  | { readonly ok: false; readonly reason: "no such base" }
  | {
      readonly ok: false;
      readonly reason: "changed since";
      readonly latest: JobRevision;
      /** What others changed from the base to the latest. */
      readonly changedSince: readonly Change[];
      /** Where others and this save changed one place differently. */
      readonly conflicts: readonly Conflict[];
    };

/**
 * Saves a file as the next revision of a job. Where someone else saved since the base, nothing is written and the answer
 * tells what they changed. A file that cannot be read as a job is kept as a draft: what a user saved is never refused for
 * what it says.
 */
export async function saveRevision(store: Store, asked: SaveAsked): Promise<Saving> {
  try {
    return await andTell<Saving>(store, async (db) => {
      const latest = await newest(db, asked.job);
      if (latest === undefined) return { value: { ok: false, reason: "no such job" } };
      if (latest.number < asked.base) return { value: { ok: false, reason: "no such base" } };
      if (latest.number > asked.base) return { value: await changedSince(db, asked, latest) };
      const when = store.now().toISOString();
      const { job, file, who, why } = asked;
      const revision = await writeRevision(db, rowOf({ job, parent: latest.number, file, who, why, when }));
      return { value: { ok: true, revision }, event: { kind: "saved", job, revision: revision.number, who } };
    });
  } catch (error) {
    // Another server took the number between our reading and our writing.
    const latest = isTaken(error) ? await newest(store.db, asked.job) : undefined;
    if (latest === undefined) throw error;
    return changedSince(store.db, asked, latest);
  }
}

/** The latest revision of a job; undefined where there is no such job. */
export function latestRevision({ db }: Store, job: string): Promise<JobRevision | undefined> {
  return newest(db, job);
}

/** One revision of a job; undefined where there is none. */
export function revisionOf({ db }: Store, job: string, number: number): Promise<JobRevision | undefined> {
  return one(db, job, number);
}

/** Every revision of a job without its file, newest first; none where there is no such job. */
export async function listRevisions({ db }: Store, job: string): Promise<readonly JobRevisionHead[]> {
  const rows = await db
    .selectFrom("revision")
    .select(["job", "number", "parent", "title", "readable", "who", "why", "saved_at"])
    .where("job", "=", job)
    .orderBy("number", "desc")
    .execute();
  return rows.map(headOf);
}

type Row = Selectable<Tables["revision"]>;

/** The row of a new revision: numbered after its parent, with the title that the file has and whether it could be read. */
export function rowOf({ parent, when, ...saying }: Saying & { readonly job: string; readonly parent: number | null; readonly when: string }): Row {
  return {
    ...saying,
    parent,
    number: parent === null ? 1 : parent + 1,
    title: titleIn(saying.file),
    readable: readJob(saying.file).ok ? 1 : 0,
    saved_at: when,
  };
}

export async function writeRevision(db: Kysely<Tables>, row: Row): Promise<JobRevision> {
  await db.insertInto("revision").values(row).execute();
  return whole(row);
}

export function headOf(row: Omit<Row, "file">): JobRevisionHead {
  const { job, number, parent, title, who, why } = row;
  return { job, number, parent, title, who, why, when: row.saved_at, readable: row.readable === 1 };
}

function whole(row: Row): JobRevision {
  return { ...headOf(row), file: row.file };
}

async function newest(db: Kysely<Tables>, job: string): Promise<JobRevision | undefined> {
  const row = await db.selectFrom("revision").selectAll().where("job", "=", job).orderBy("number", "desc").limit(1).executeTakeFirst();
  return row === undefined ? undefined : whole(row);
}

async function one(db: Kysely<Tables>, job: string, number: number): Promise<JobRevision | undefined> {
  const row = await db.selectFrom("revision").selectAll().where("job", "=", job).where("number", "=", number).executeTakeFirst();
  return row === undefined ? undefined : whole(row);
}

async function changedSince(db: Kysely<Tables>, { job, base, file }: SaveAsked, latest: JobRevision): Promise<Saving> {
  const from = await one(db, job, base);
  if (from === undefined) return { ok: false, reason: "no such base" };
  const [before, mine, theirs] = [contentOf(from.file), contentOf(file), contentOf(latest.file)];
  const { conflicts } = compareFiles(before, mine, theirs);
  return { ok: false, reason: "changed since", latest, changedSince: changesBetween(before, theirs), conflicts };
}

const LONGEST_TITLE = 200;

/** Characters that no database keeps alike, and that no title needs: controls such as U+0000, and half pairs. */
const UNKEPT = /[\p{Cc}\p{Cs}]/gu;

/** The title of a job file as typed, even of one that cannot be read as a job; without what cannot be kept, and not too long. */
function titleIn(file: string): string | null {
  const content = contentOf(file);
  const identity = isObject(content) ? content["job"] : undefined;
  const title = isObject(identity) ? identity["title"] : undefined;
  return typeof title === "string" ? [...title.replace(UNKEPT, "")].slice(0, LONGEST_TITLE).join("") : null;
}
