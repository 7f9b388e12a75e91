import { existsSync, readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { readPriceBook } from "../job/readPriceBook.ts";
import { isTaken } from "./isTaken.ts";
import { rowOf, writeRevision } from "./revisions.ts";
import type { Store } from "./store.ts";

/**
 * Puts the demo jobs and price books of a folder into a new database, once in its life and all or none. Gives whether it
 * did so now.
 */
export async function loadExamples({ db, now }: Store, folder: string): Promise<boolean> {
  const said = { who: WHO, why: WHY };
  const when = now().toISOString();
  try {
    return await db.transaction().execute(async (step) => {
      if ((await step.selectFrom("done_once").select("name").where("name", "=", MARK).execute()).length > 0) return false;
      await step.insertInto("done_once").values({ name: MARK, done_at: when }).execute();
      for (const { name, file } of filesOf(folder, JOB)) {
        await step.insertInto("job").values({ id: name, demo: 1, created_at: when }).execute();
        await writeRevision(step, rowOf({ job: name, parent: null, file, when, ...said }));
      }
      for (const { name, file } of filesOf(join(folder, "price-books"), BOOK)) {
        const read = readPriceBook(file);
        if (!read.ok) throw new Error(`the price book ${name} of the examples has issues`);
        await step.insertInto("price_book_revision").values({ book: read.book.id, number: 1, parent: null, file, ...said, saved_at: when }).execute();
      }
      return true;
    });
  } catch (error) {
    // Another server on the database is doing the same.
    if (isTaken(error)) return false;
    throw error;
  }
}

const MARK = "examples";
const WHO = "Cornerpost";
const WHY = "demo";
const JOB = ".job.json";
const BOOK = ".price-book.json";

function filesOf(folder: string, suffix: string): readonly { readonly name: string; readonly file: string }[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder)
    .filter((name) => name.endsWith(suffix))
    .sort()
    .map((name) => ({ name: name.slice(0, -suffix.length), file: readFileSync(join(folder, name), "utf8") }));
}
