import { readFileSync } from "node:fs";

/** Something that the person at the command line can mend; its message is all that they need. */
export class UserError extends Error {}

/** The text of a file. Throws UserError where it cannot be read or is not UTF-8. */
export function readText(path: string, what: string): string {
  const bytes = orUserError(() => readFileSync(path), `the ${what} ${path} could not be read`);
  try {
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    throw new UserError(`the ${what} ${path} is not text in UTF-8`);
  }
}

/** Runs something that the file system may refuse, and says so in plain words. */
export function orUserError<T>(run: () => T, refused: string): T {
  try {
    return run();
  } catch (error) {
    const code = codeOf(error);
    if (code === undefined) throw error;
    throw new UserError(`${refused}: ${REASONS[code] ?? code}`);
  }
}

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: "it is not there",
  EACCES: "this user may not",
  EPERM: "this user may not",
  EISDIR: "it is a folder",
  ENOTDIR: "a file stands where a folder should be",
  EEXIST: "a file stands where a folder should be",
  ENOSPC: "the disk is full",
  EROFS: "the disk may only be read",
};

function codeOf(error: unknown): string | undefined {
  if (!(error instanceof Error) || !("syscall" in error) || !("code" in error)) return undefined;
  return typeof error.code === "string" ? error.code : undefined;
}
