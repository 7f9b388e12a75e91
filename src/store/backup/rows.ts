import { createHash } from "node:crypto";
import type { Kysely } from "kysely";
import type { Tables } from "../schema/tables.ts";

/** A row with its table, as a line of a backup holds it. */
export interface BackupRow {
  readonly table: BackupTable;
  readonly row: Readonly<Record<string, string | number | null>>;
}

/** The tables that a backup holds, each after those that it refers to. */
export const BACKUP_TABLES = ["job", "revision", "price_book_revision", "done_once"] as const;
type BackupTable = (typeof BACKUP_TABLES)[number];

/** Every row, the same rows in the same order from every engine. Holds the revisions of one job at a time in memory. */
export async function* backupRows(db: Kysely<Tables>): AsyncGenerator<BackupRow> {
  const jobs = await db.selectFrom("job").selectAll().execute();
  for (const job of jobs.toSorted((one, other) => inOrder(one.id, other.id))) {
    yield { table: "job", row: job };
    const revisions = await db.selectFrom("revision").selectAll().where("job", "=", job.id).orderBy("number").execute();
    for (const row of revisions) yield { table: "revision", row };
  }
  const books = await db.selectFrom("price_book_revision").select("book").distinct().execute();
  for (const { book } of books.toSorted((one, other) => inOrder(one.book, other.book))) {
    const revisions = await db.selectFrom("price_book_revision").selectAll().where("book", "=", book).orderBy("number").execute();
    for (const row of revisions) yield { table: "price_book_revision", row };
  }
  const done = await db.selectFrom("done_once").selectAll().execute();
  for (const row of done.toSorted((one, other) => inOrder(one.name, other.name))) yield { table: "done_once", row };
}

/** A row as one line, its fields in order of their names. */
export function lineOf({ table, row }: BackupRow): string {
  return JSON.stringify({ table, row: Object.fromEntries(Object.entries(row).toSorted(([one], [other]) => inOrder(one, other))) });
}

/** How many rows a backup has, and the SHA-256 of their lines. Two databases that hold the same have the same. */
export interface Sum {
  readonly rows: number;
  readonly sha256: string;
}

/** Adds up rows as they pass. */
export function summing(): { readonly add: (line: string) => void; readonly sum: () => Sum } {
  const hash = createHash("sha256");
  const state = { rows: 0 };
  return {
    add: (line) => {
      hash.update(line).update("\n");
      state.rows += 1;
    },
    sum: () => ({ rows: state.rows, sha256: hash.digest("hex") }),
  };
}

/** The sum of all that a database holds. */
export async function sumOf(db: Kysely<Tables>): Promise<Sum> {
  const { add, sum } = summing();
  for await (const row of backupRows(db)) add(lineOf(row));
  return sum();
}

function inOrder(one: string, other: string): number {
  return one < other ? -1 : one > other ? 1 : 0;
}
