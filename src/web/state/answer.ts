import { isObject, type JobFile } from "../../job/file.ts";
import { contentOf } from "../../job/merge.ts";
import { problemWords } from "../jobs/tell.ts";
import type { GivenBook, RunAnswer } from "../worker/answers.ts";
import { runFile } from "./river.ts";
import { server } from "./server.ts";
import { useSettings } from "./settings.ts";

/**
 * Works out a file with the price book that it names, in the units that are shown. Without the book the answer has no price
 * and says why. Undefined where a later call took this one's place.
 */
export async function answerFor(file: JobFile): Promise<RunAnswer | undefined> {
  try {
    return await runFile(file, await bookOf(file), useSettings.getState().system);
  } catch (error) {
    return { kind: "failed", message: problemWords(error) };
  }
}

/** Asks for every price book anew from now on, as when one was saved. */
export function forgetBooks(): void {
  BOOKS.clear();
}

/** By id, asked for once: a drag runs the file many times. */
const BOOKS = new Map<string, Promise<GivenBook>>();

async function bookOf(file: JobFile): Promise<GivenBook> {
  const { prices } = file;
  const id = isObject(prices) ? prices["book"] : undefined;
  // The reader says what is wrong with a file that names none.
  if (typeof id !== "string") return { kind: "none", unpriced: "The job names no price book.", mend: "Choose one." };
  const asking = BOOKS.get(id) ?? ask(id);
  BOOKS.set(id, asking);
  const asked = await asking;
  if (asked.kind !== "book" && BOOKS.get(id) === asking) BOOKS.delete(id);
  return asked;
}

async function ask(id: string): Promise<GivenBook> {
  try {
    const ids = (await server.priceBooks()).map((book) => book.id);
    if (!ids.includes(id)) return { kind: "none", unpriced: `The price book ${id} is not here.`, mend: choiceOf(ids) };
    return { kind: "book", book: contentOf((await server.priceBook(id)).file) };
  } catch (error) {
    return { kind: "none", unpriced: `The price book ${id} could not be fetched.`, mend: problemWords(error) };
  }
}

function choiceOf(ids: readonly string[]): string {
  return ids.length === 0 ? "There is none yet: import it under Jobs." : `Choose ${ids.join(" or ")}, or import it under Jobs.`;
}
