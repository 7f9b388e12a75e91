import type { JobFile, JsonValue } from "../../job/file.ts";
import { issueText } from "../../job/issue.ts";
import type { PriceBook } from "../../job/priceBook.ts";
import { readJobValue } from "../../job/read.ts";
import { readPriceBookValue, type PriceBookReading } from "../../job/readPriceBook.ts";
import { makeScreenRiver, type NoBook, type ScreenRiver, type Working, type WorkingOf } from "../../river/screen.ts";
import type { HeatTables, Hour, SectionPicture, SectionRow } from "../../river/sections.ts";
import type { System } from "../../units/format.ts";
import type { GivenBook, RunAnswer, SlowAnswer } from "./answers.ts";

/** What the worker offers to the page. Sentences and workings are written in `system`, whatever the job's own units. */
export interface Runner {
  /** With all checks. */
  readonly run: (file: JobFile, book: GivenBook, system: System) => RunAnswer;
  /** Without the slow checks. */
  readonly quick: (file: JobFile, book: GivenBook, system: System) => RunAnswer;
  /** The slow checks alone. */
  readonly slow: (file: JobFile, system: System) => SlowAnswer;
  /** The working of a number of the last run; undefined where that run holds nothing of that id. */
  readonly working: (of: WorkingOf) => Working | undefined;
  /** The sections of the last run with slow checks; none before the first. */
  readonly sections: () => readonly SectionRow[];
  /** What the box of that run loses; undefined before the first. */
  readonly heat: () => HeatTables | undefined;
  /** A section of that run with its temperatures; undefined where it has no such section or hour. */
  readonly picture: (section: string, hour: Hour, system: System) => SectionPicture | undefined;
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
  const running =
    (run: ScreenRiver["run"]): Runner["run"] =>
    (file, given, system) => {
      const read = readJobValue(file);
      if (!read.ok) return { kind: "issues", issues: read.issues };
      return orFailed(() => ({ kind: "screen", screen: run({ ...read.job, units: system }, bookOf(given)) }));
    };
  return {
    run: running(river.run),
    quick: running(river.quick),
    slow: (file, system) => {
      const read = readJobValue(file);
      if (!read.ok) return { kind: "issues", issues: read.issues };
      return orFailed(() => ({ kind: "slow", slow: river.slow({ ...read.job, units: system }) }));
    },
    working: river.working,
    sections: river.sections,
    heat: river.heat,
    picture: river.picture,
  };
}

function orFailed<T>(answer: () => T): T | { readonly kind: "failed"; readonly message: string } {
  try {
    return answer();
  } catch (error) {
    return { kind: "failed", message: error instanceof Error ? error.message : String(error) };
  }
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
