import { mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import Database from "libsql";
import { z } from "zod";
import { StoreError } from "./storeError.ts";

/** The right of one server to a folder. */
export interface FolderLock {
  /** Writes down where the server is reached, for a second one that is started on the folder. */
  readonly tellAddress: (address: string) => void;
  readonly release: () => void;
}

/**
 * Takes the folder for this process, and makes it where it is missing. The lock is one of the operating system's on an empty
 * database file, held through SQLite: it ends with the process, however that ends, so that there is no stale lock to judge.
 * Throws StoreError "folder_in_use" with the address of the server that holds it, and "unreachable" where it cannot be used.
 */
export function lockFolder(folder: string): FolderLock {
  const lock = openLock(folder);
  const note = join(folder, "address.json");
  try {
    lock.exec("begin exclusive");
  } catch (error) {
    lock.close();
    if (!isBusy(error)) throw error;
    const address = addressIn(note);
    const where = address === undefined ? "by a server that is just starting" : `by the server at ${address}`;
    throw new StoreError("folder_in_use", `the folder ${folder} is in use ${where}`, address);
  }
  // Left by a server that was killed.
  rmSync(note, { force: true });
  return {
    tellAddress: (address) => {
      writeFileSync(`${note}.part`, JSON.stringify({ address }));
      renameSync(`${note}.part`, note);
    },
    release: () => {
      rmSync(note, { force: true });
      lock.close();
    },
  };
}

/** Throws StoreError "unreachable" where the folder cannot be made or written to. */
function openLock(folder: string): Database.Database {
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
    return new Database(join(folder, "lock.sqlite"));
  } catch (error) {
    throw new StoreError("unreachable", `the folder ${folder} cannot be used: ${error instanceof Error ? error.message : String(error)}`);
  }
}

const noteSchema = z.object({ address: z.url() });

function addressIn(note: string): string | undefined {
  try {
    return noteSchema.parse(JSON.parse(readFileSync(note, "utf8"))).address;
  } catch {
    return undefined;
  }
}

function isBusy(error: unknown): boolean {
  return error instanceof Error && "code" in error && error.code === "SQLITE_BUSY";
}
