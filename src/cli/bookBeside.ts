import { dirname, join } from "node:path";

/** Where the price book that a job names is looked for. */
export function bookBeside(jobPath: string, id: string): string {
  return join(dirname(jobPath), "price-books", `${id}.price-book.json`);
}
