import { readdirSync, readFileSync } from "node:fs";
import type { JobFile } from "../src/job/file.ts";
import type { Job } from "../src/job/job.ts";
import type { PriceBook } from "../src/job/priceBook.ts";
import { readJob } from "../src/job/read.ts";
import { readPriceBook } from "../src/job/readPriceBook.ts";

const FOLDER = "examples";
const SUFFIX = ".job.json";

/** A demo job as it stands in the examples, read, with the price book that it names. */
export interface DemoJob {
  readonly name: string;
  readonly path: string;
  readonly text: string;
  readonly file: JobFile;
  readonly job: Job;
  readonly bookPath: string;
  readonly bookText: string;
  readonly book: PriceBook;
}

/** Every demo job. Throws Error where one of them or its price book has issues. */
export const DEMO_JOBS: readonly DemoJob[] = readdirSync(FOLDER)
  .filter((file) => file.endsWith(SUFFIX))
  .sort()
  .map((file) => demoJob(file.slice(0, -SUFFIX.length)));

function demoJob(name: string): DemoJob {
  const path = `${FOLDER}/${name}${SUFFIX}`;
  const text = readFileSync(path, "utf8");
  const read = readJob(text);
  if (!read.ok) throw new Error(`${path}: ${JSON.stringify(read.issues)}`);
  const bookPath = `${FOLDER}/price-books/${read.job.prices.book}.price-book.json`;
  const bookText = readFileSync(bookPath, "utf8");
  const book = readPriceBook(bookText);
  if (!book.ok) throw new Error(`${bookPath}: ${JSON.stringify(book.issues)}`);
  return { name, path, text, file: read.file, job: read.job, bookPath, bookText, book: book.book };
}
