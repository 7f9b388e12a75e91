import { sql } from "kysely";
import type { Kysely } from "kysely";
import type { Tables } from "./tables.ts";

export type Engine = "sqlite" | "postgresql";

/** One change of the tables. Steps are numbered from 1 and never changed once they are out. */
export interface SchemaStep {
  readonly number: number;
  readonly name: string;
  readonly up: (db: Kysely<Tables>, engine: Engine) => Promise<void>;
}

/** Makes the database itself refuse to change or remove a row of the table. */
export async function makeAppendOnly(db: Kysely<Tables>, engine: Engine, table: keyof Tables): Promise<void> {
  const says = `a row of ${table} is never changed or removed`;
  if (engine === "sqlite") {
    for (const act of ["update", "delete"]) {
      await sql`create trigger ${sql.ref(`${table}_no_${act}`)} before ${sql.raw(act)} on ${sql.table(table)}
        begin select raise(abort, ${sql.lit(says)}); end`.execute(db);
    }
    return;
  }
  const name = `${table}_append_only`;
  await sql`create function ${sql.ref(name)}() returns trigger language plpgsql as ${sql.lit(`begin raise exception '${says}'; end`)}`.execute(db);
  await sql`create trigger ${sql.ref(name)} before update or delete on ${sql.table(table)}
    for each row execute function ${sql.ref(name)}()`.execute(db);
}
