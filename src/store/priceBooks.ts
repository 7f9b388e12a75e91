import type { Kysely, Selectable } from "kysely";
import type { PriceBookRevision, PriceBookRow } from "../job/api.ts";
import type { JobIssue } from "../job/issue.ts";
import { readPriceBook } from "../job/readPriceBook.ts";
import { isTaken } from "./isTaken.ts";
import { andTell } from "./andTell.ts";
import type { Saying } from "./revisions.ts";
import type { Tables } from "./schema/tables.ts";
import type { Store } from "./store.ts";

export type PriceBookSaving =
  | { readonly ok: true; readonly revision: PriceBookRevision }
  | { readonly ok: false; readonly reason: "has issues"; readonly issues: readonly JobIssue[] }
  /** Absent where the base names a book that is not there. */
  | { readonly ok: false; readonly reason: "changed since"; readonly latest: PriceBookRevision | undefined };

/**
 * Saves the text of a price book as the next revision of the book whose id it names; base null makes a new book. Unlike a
 * job, a price book has to be readable: every job that names it is priced from its latest revision.
 */
export async function savePriceBook(store: Store, { base, ...saying }: Saying & { readonly base: number | null }): Promise<PriceBookSaving> {
  const read = readPriceBook(saying.file);
  if (!read.ok) return { ok: false, reason: "has issues", issues: read.issues };
  const book = read.book.id;
  try {
    return await andTell<PriceBookSaving>(store, async (db) => {
      const latest = await newest(db, book);
      if ((latest?.number ?? null) !== base) return { value: { ok: false, reason: "changed since", latest } };
      const row = { book, number: base === null ? 1 : base + 1, parent: base, ...saying, saved_at: store.now().toISOString() };
      await db.insertInto("price_book_revision").values(row).execute();
      return { value: { ok: true, revision: whole(row) }, event: { kind: "price book", book, revision: row.number, who: row.who } };
    });
  } catch (error) {
    if (!isTaken(error)) throw error;
    return { ok: false, reason: "changed since", latest: await newest(store.db, book) };
  }
}

/** The latest revision of a price book; undefined where there is no such book. */
export function latestPriceBook({ db }: Store, book: string): Promise<PriceBookRevision | undefined> {
  return newest(db, book);
}

/** The latest revision of every price book without its text, by id. */
export async function listPriceBooks({ db }: Store): Promise<readonly PriceBookRow[]> {
  const rows = await db
    .selectFrom("price_book_revision as book")
    .select(["book.book", "book.number", "book.parent", "book.who", "book.why", "book.saved_at"])
    .where((where) =>
      where("book.number", "=", where.selectFrom("price_book_revision as other").select(({ fn }) => fn.max("other.number").as("latest")).whereRef("other.book", "=", "book.book")),
    )
    .execute();
  return rows.map(headOf).toSorted((one, other) => (one.id < other.id ? -1 : 1));
}

type Row = Selectable<Tables["price_book_revision"]>;

async function newest(db: Kysely<Tables>, book: string): Promise<PriceBookRevision | undefined> {
  const row = await db.selectFrom("price_book_revision").selectAll().where("book", "=", book).orderBy("number", "desc").limit(1).executeTakeFirst();
  return row === undefined ? undefined : whole(row);
}

function headOf({ book, number, parent, who, why, saved_at }: Omit<Row, "file">): PriceBookRow {
  return { id: book, number, parent, who, why, when: saved_at };
}

function whole(row: Row): PriceBookRevision {
  return { ...headOf(row), file: row.file };
}
