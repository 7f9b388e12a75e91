import { sql } from "kysely";
import type { Transaction } from "kysely";
import type { LiveEvent } from "../job/api.ts";
import { CHANNEL } from "./listeners.ts";
import type { Tables } from "./schema/tables.ts";
import type { Store } from "./store.ts";

/**
 * Runs work in a transaction and tells its event when that is committed: on PostgreSQL through the database, which tells
 * every server, this one included; with SQLite there is only this one.
 */
export async function andTell<T>(store: Store, work: (db: Transaction<Tables>) => Promise<{ readonly value: T; readonly event?: LiveEvent }>): Promise<T> {
  const { value, event } = await store.db.transaction().execute(async (db) => {
    const result = await work(db);
    if (store.engine === "postgresql" && result.event !== undefined) {
      await sql`select pg_notify(${CHANNEL}, ${JSON.stringify(result.event)})`.execute(db);
    }
    return result;
  });
  if (store.engine === "sqlite" && event !== undefined) store.listeners.tell(event);
  return value;
}
