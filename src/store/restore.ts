import { sql } from "kysely";
import type { Kysely, Transaction } from "kysely";
import { openBackup } from "./backup/openBackup.ts";
import type { OpenBackup } from "./backup/openBackup.ts";
import { sumOf } from "./backup/rows.ts";
import type { Sum } from "./backup/rows.ts";
import { connect } from "./connect.ts";
import type { Place } from "./connect.ts";
import { migrate } from "./schema/migrate.ts";
import type { Engine } from "./schema/step.ts";
import type { Tables } from "./schema/tables.ts";
import { StoreError } from "./storeError.ts";

/**
 * Puts a backup of either kind into an empty folder or database, reads it back and compares, and gives the number of rows.
 * All of it is one transaction: a damaged backup leaves nothing behind. A folder is for one process: take its lock first.
 * Throws StoreError "not_empty", "bad_backup" or "newer_schema".
 */
export async function restore(path: string, place: Place, now: () => Date): Promise<number> {
  const backup = await openBackup(path);
  const { db, engine } = connect(place);
  try {
    return await db.transaction().execute(async (restoring) => {
      await mustBeEmpty(restoring, engine);
      await migrate(restoring, engine, now, backup.step);
      const wanted = await copyRows(backup, restoring);
      const held = await sumOf(restoring);
      if (held.rows !== wanted.rows || held.sha256 !== wanted.sha256) {
        throw new StoreError("bad_backup", `${path} is damaged: what it holds does not add up. Nothing was restored`);
      }
      await migrate(restoring, engine, now);
      return held.rows;
    });
  } finally {
    await backup.close();
    await db.destroy();
  }
}

async function copyRows(backup: OpenBackup, into: Kysely<Tables>): Promise<Sum> {
  const rows = backup.rows();
  for (;;) {
    const next = await rows.next();
    if (next.done === true) return next.value;
    const { table, row } = next.value;
    const names = Object.keys(row);
    await sql`insert into ${sql.table(table)} (${sql.join(names.map((name) => sql.ref(name)))}) values (${sql.join(Object.values(row))})`.execute(into);
  }
}

async function mustBeEmpty(db: Transaction<Tables>, engine: Engine): Promise<void> {
  const tables =
    engine === "sqlite"
      ? sql<{ name: string }>`select name from sqlite_master where type = 'table'`
      : sql<{ name: string }>`select table_name as name from information_schema.tables where table_schema = current_schema()`;
  const { rows } = await tables.execute(db);
  if (rows.length === 0) return;
  const what = engine === "sqlite" ? "the folder holds a database" : "the database holds tables";
  throw new StoreError("not_empty", `${what} already, and a backup is restored only into an empty one`);
}
