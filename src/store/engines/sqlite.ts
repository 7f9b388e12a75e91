import { setImmediate } from "node:timers/promises";
import { Kysely, SqliteAdapter, SqliteIntrospector, SqliteQueryCompiler } from "kysely";
import type { CompiledQuery, DatabaseConnection, Dialect, Driver, QueryResult } from "kysely";
import Database from "libsql";
import type { Tables } from "../schema/tables.ts";

type Use = "read and write" | "read only";

/**
 * Opens a database file, which is made where it is missing. Every commit is on the disk before it is acknowledged:
 * write-ahead log with synchronous=FULL. For reading only, the file is left as it is to the last byte.
 */
export function openSqlite(file: string, use: Use = "read and write"): Kysely<Tables> {
  const dialect: Dialect = {
    createAdapter: () => new SqliteAdapter(),
    createDriver: () => new LibsqlDriver(file, SETTINGS[use]),
    createIntrospector: (db) => new SqliteIntrospector(db),
    createQueryCompiler: () => new SqliteQueryCompiler(),
  };
  return new Kysely<Tables>({ dialect });
}

const SETTINGS: Readonly<Record<Use, readonly string[]>> = {
  "read and write": ["busy_timeout = 5000", "journal_mode = WAL", "synchronous = FULL", "foreign_keys = ON"],
  "read only": ["busy_timeout = 5000", "query_only = ON"],
};

/** One connection, lent to one user at a time in the order of asking, so that writes never meet. */
class LibsqlDriver implements Driver {
  readonly #file: string;
  readonly #settings: readonly string[];
  #connection: LibsqlConnection | undefined;
  #lastTurn: Promise<void> = Promise.resolve();
  #endTurn: () => void = () => undefined;

  constructor(file: string, settings: readonly string[]) {
    this.#file = file;
    this.#settings = settings;
  }

  init(): Promise<void> {
    this.#connection = new LibsqlConnection(this.#file, this.#settings);
    return Promise.resolve();
  }

  async acquireConnection(): Promise<DatabaseConnection> {
    const before = this.#lastTurn;
    let end: () => void = () => undefined;
    this.#lastTurn = new Promise((resolve) => (end = resolve));
    await before;
    // The database answers without ever waiting: let whatever else has come in meanwhile have its turn.
    await setImmediate();
    this.#endTurn = end;
    return this.#open();
  }

  releaseConnection(): Promise<void> {
    this.#endTurn();
    return Promise.resolve();
  }

  /** Takes the right to write at once: a transaction that reads first could otherwise be refused when it comes to write. */
  beginTransaction(): Promise<void> {
    return this.#open().run("begin immediate");
  }

  commitTransaction(): Promise<void> {
    return this.#open().run("commit");
  }

  rollbackTransaction(): Promise<void> {
    return this.#open().run("rollback");
  }

  destroy(): Promise<void> {
    this.#connection?.close();
    return Promise.resolve();
  }

  #open(): LibsqlConnection {
    if (this.#connection === undefined) throw new Error("the database is not open");
    return this.#connection;
  }
}

class LibsqlConnection implements DatabaseConnection {
  readonly #database: Database.Database;

  constructor(file: string, settings: readonly string[]) {
    this.#database = new Database(file);
    for (const setting of settings) this.#database.pragma(setting);
  }

  // Asynchronous, so that what the database throws comes out as a rejection, as from any other engine.
  async executeQuery<R>({ sql, parameters }: CompiledQuery): Promise<QueryResult<R>> {
    await Promise.resolve();
    const statement = this.#database.prepare(sql);
    if (statement.reader) return { rows: statement.all([...parameters]) as R[] };
    const { changes } = statement.run([...parameters]);
    return { rows: [], numAffectedRows: BigInt(changes) };
  }

  streamQuery(): never {
    throw new Error("rows are not streamed: ask for them in portions");
  }

  async run(sql: string): Promise<void> {
    await Promise.resolve();
    this.#database.exec(sql);
  }

  close(): void {
    this.#database.close();
  }
}
