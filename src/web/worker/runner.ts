import type { JobFile, JsonValue } from "../../job/file.ts";
import { issueText } from "../../job/issue.ts";
import type { PriceBook } from "../../job/priceBook.ts";
import { readJobValue } from "../../job/read.ts";
import { readPriceBookValue, type PriceBookReading } from "../../job/readPriceBook.ts";
import { makeScreenRiver, type NoBook, type Working, type WorkingOf } from "../../river/screen.ts";
import type { System } from "../../units/format.ts";
import type { GivenBook, RunAnswer } from "./answers.ts";

/** What the worker offers to the page. */
export interface Runner {
  /** Sentences and workings are written in `system`, whatever the job's own units. */
  readonly run: (file: JobFile, book: GivenBook, system: System) => RunAnswer;
  /** The working of a number of the last run; undefined where that run holds nothing of that id. */
  readonly working: (of: WorkingOf) => Working | undefined;
}

/** A runner with its own river. Never throws: what could not be computed is an answer too. */
export function makeRunner(): Runner {
  const river = makeScreenRiver();
  const readBook = rememberedBook();
  const bookOf = (given: GivenBook): PriceBook | NoBook => {
    if (given.kind === "none") return { unpriced: given.unpriced, mend: given.mend };
    const book = readBook(given.book);
    return book.ok ? book.book : { unpriced: "The price book cannot be read.", mend: book.issues.map(issueText).join(" ") };
  };
  return {
    run: (file, given, system) => {
      const read = readJobValue(file);
      if (!read.ok) return { kind: "issues", issues: read.issues };
      try {
        return { kind: "screen", screen: river.run({ ...read.job, units: system }, bookOf(given)) };
      } catch (error) {
        return { kind: "failed", message: error instanceof Error ? error.message : String(error) };
      }
    },
    working: (of) => river.working(of),
  };
}

/** Reads a book once however often it is posted: the stages remember by the book's identity. */
function rememberedBook(): (raw: JsonValue) => PriceBookReading {
  let last: { readonly text: string; readonly reading: PriceBookReading } | undefined;
  return (raw) => {
    const text = JSON.stringify(raw);
    if (last?.text !== text) last = { text, reading: readPriceBookValue(raw) };
    return last.reading;
  };
}

