import type { Kysely } from "kysely";
import type { LiveEvent } from "../job/api.ts";
import { connect } from "./connect.ts";
import type { Connection, Place } from "./connect.ts";
import { listenTo } from "./engines/postgresql.ts";
import { CHANNEL, makeListeners } from "./listeners.ts";
import type { Listeners } from "./listeners.ts";
import { migrate } from "./schema/migrate.ts";
import type { Engine } from "./schema/step.ts";
import type { Tables } from "./schema/tables.ts";
import { StoreError } from "./storeError.ts";

export { StoreError } from "./storeError.ts";
export type { Place } from "./connect.ts";

/** An open database, brought to the newest step. What can be asked of it are the functions of this room. */
export interface Store {
  readonly engine: Engine;
  readonly db: Kysely<Tables>;
  /** The database file; undefined where the database is a server's. */
  readonly file: string | undefined;
  readonly now: () => Date;
  readonly listeners: Listeners;
  /** Calls back for every save of this and every other server on the database; gives the function that ends it. */
  readonly onEvent: (listener: (event: LiveEvent) => void) => () => void;
  readonly close: () => Promise<void>;
}

/**
 * Opens the store and brings its tables to the newest step. A folder is for one server at a time: take its lock first.
 * Throws StoreError where the database cannot be opened or is newer than the program.
 */
export async function openStore(place: Place, now: () => Date): Promise<Store> {
  const connection = connect(place);
  const { db, engine } = connection;
  const listeners = makeListeners();
  try {
    await db.transaction().execute((migrating) => migrate(migrating, engine, now));
    const stop = await listen(connection, listeners);
    const close = async (): Promise<void> => {
      await stop();
      await db.destroy();
    };
    const file = connection.engine === "sqlite" ? connection.file : undefined;
    return { engine, db, file, now, listeners, onEvent: listeners.add, close };
  } catch (error) {
    await db.destroy();
    if (error instanceof StoreError) throw error;
    // The address of a database may hold a password, so that only what the database said is passed on.
    throw new StoreError("unreachable", `the database could not be opened: ${saidBy(error)}`);
  }
}

async function listen(connection: Connection, listeners: Listeners): Promise<() => Promise<void>> {
  if (connection.engine === "sqlite") return () => Promise.resolve();
  return listenTo(connection.pool, CHANNEL, listeners.tellText, () => listeners.tell({ kind: "refresh" }));
}

/** A refused connection to several addresses comes as several errors with no message of their own. */
function saidBy(error: unknown): string {
  if (error instanceof AggregateError) return error.errors.map(saidBy).join("; ");
  return error instanceof Error ? error.message : String(error);
}
