import type { JobFile, JsonValue } from "../../job/file.ts";
import { readJobValue } from "../../job/read.ts";
import { readPriceBookValue, type PriceBookReading } from "../../job/readPriceBook.ts";
import { makeScreenRiver, type Working, type WorkingOf } from "../../river/screen.ts";
import type { RunAnswer } from "./answers.ts";

/** What the worker offers to the page. */
export interface Runner {
  readonly run: (file: JobFile, book: JsonValue) => RunAnswer;
  /** The working of a number of the last run; undefined where that run holds nothing of that id. */
  readonly working: (of: WorkingOf) => Working | undefined;
}

/** A runner with its own river. Never throws: what could not be computed is an answer too. */
export function makeRunner(): Runner {
  const river = makeScreenRiver();
  const readBook = rememberedBook();
  return {
    run: (file, raw) => {
      // The file first: one that cannot be read may well name no book.
      const read = readJobValue(file);
      if (!read.ok) return { kind: "issues", issues: read.issues };
      const book = readBook(raw);
      if (!book.ok) return { kind: "book issues", issues: book.issues };
      try {
        return { kind: "screen", screen: river.run(read.job, book.book) };
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

