import type { JobFile } from "./file.ts";

/** The text of a job file: two spaces, fields in the order in which they stand, every text as typed, a line end last. */
export function writeJob(file: JobFile): string {
  return `${JSON.stringify(file, undefined, 2)}\n`;
}
