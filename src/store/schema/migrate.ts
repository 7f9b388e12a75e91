import { sql } from "kysely";
import type { Kysely, Transaction } from "kysely";
import { StoreError } from "../storeError.ts";
import { jobs } from "./001-jobs.ts";
import type { Engine, SchemaStep } from "./step.ts";
import type { Tables } from "./tables.ts";

const STEPS: readonly SchemaStep[] = [jobs];

/** The number of the newest step. */
export const NEWEST_STEP = STEPS.length;

/** Any number will do, as long as every server takes the same. */
const LOCK = 7_240_271;

/**
 * Brings the tables to a step, inside the caller's transaction; several servers that start at once do it one after another.
 * Throws StoreError where a newer program has been at the database.
 */
export async function migrate(db: Transaction<Tables>, engine: Engine, now: () => Date, upTo: number = NEWEST_STEP): Promise<void> {
  if (engine === "postgresql") await sql`select pg_advisory_xact_lock(${sql.lit(LOCK)})`.execute(db);
  await db.schema
    .createTable("schema_step")
    .ifNotExists()
    .addColumn("number", "integer", (column) => column.primaryKey().notNull())
    .addColumn("name", "text", (column) => column.notNull())
    .addColumn("done_at", "text", (column) => column.notNull())
    .execute();
  const done = await stepOf(db);
  if (done > NEWEST_STEP) throw new StoreError("newer_schema", `the database is at step ${done}, and this program knows ${NEWEST_STEP}: start a newer program`);
  for (const { number, name, up } of STEPS.slice(done, upTo)) {
    await up(db, engine);
    await db.insertInto("schema_step").values({ number, name, done_at: now().toISOString() }).execute();
  }
}

/** The number of the last step that was done; 0 for none. */
export async function stepOf(db: Kysely<Tables>): Promise<number> {
  const steps = await db.selectFrom("schema_step").select("number").orderBy("number", "desc").execute();
  return steps.length;
}
