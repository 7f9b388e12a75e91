import type { JobRevision, JobRow } from "../job/api.ts";
import { andTell } from "./andTell.ts";
import { headOf, rowOf, writeRevision } from "./revisions.ts";
import type { Saying } from "./revisions.ts";
import type { Store } from "./store.ts";

/** Every job with the head of its latest revision, by title and then by id; jobs without a title last. */
export async function listJobs({ db }: Store): Promise<readonly JobRow[]> {
  const rows = await db
    .selectFrom("job")
    .innerJoin("revision", "revision.job", "job.id")
    .select(["job.id", "job.demo", "revision.job", "revision.number", "revision.parent", "revision.title"])
    .select(["revision.readable", "revision.who", "revision.why", "revision.saved_at"])
    .where((where) =>
      where("revision.number", "=", where.selectFrom("revision as other").select(({ fn }) => fn.max("other.number").as("latest")).whereRef("other.job", "=", "job.id")),
    )
    .execute();
  const jobs = rows.map((row): JobRow => ({ id: row.id, demo: row.demo === 1, latest: headOf(row) }));
  return jobs.toSorted((one, other) => inOrder(titleOf(one), titleOf(other), one.id, other.id));
}

/** A new job with its first revision. Throws where the id is taken. */
export async function createJob(store: Store, { id, demo, ...first }: Saying & { readonly id: string; readonly demo: boolean }): Promise<JobRevision> {
  return andTell(store, async (db) => {
    const when = store.now().toISOString();
    await db.insertInto("job").values({ id, demo: demo ? 1 : 0, created_at: when }).execute();
    const value = await writeRevision(db, rowOf({ job: id, parent: null, when, ...first }));
    return { value, event: { kind: "saved", job: id, revision: value.number, who: value.who } };
  });
}

function titleOf({ latest }: JobRow): string {
  return latest.title ?? "\uffff";
}

/** By code units, which is the same on every machine and engine; where the first two are equal, by the next two. */
function inOrder(one: string, other: string, nextOne = "", nextOther = ""): number {
  if (one === other) return nextOne < nextOther ? -1 : 1;
  return one < other ? -1 : 1;
}
