import { closeSync, existsSync, fsyncSync, openSync, renameSync, rmSync, statSync } from "node:fs";
import { dirname } from "node:path";
import { copyDatabase } from "./backup/copyDatabase.ts";
import { writeLines } from "./backup/writeLines.ts";
import { connect } from "./connect.ts";
import type { Place } from "./connect.ts";
import { StoreError } from "./storeError.ts";
import type { Store } from "./store.ts";

/** How the name of a backup ends, by engine: a database file, or one JSON a line. */
export const BACKUP_SUFFIX = { sqlite: ".sqlite", postgresql: ".jsonl" } as const;

/**
 * Writes all that the store holds at one moment into a new file, while saves go on, and gives its size in bytes. The file is
 * on the disk, and a database file has been looked through, before it gets its name.
 * Throws StoreError "exists" where the file is there already, and "no_folder" where its folder is not.
 */
export async function backup({ file, db }: Pick<Store, "file" | "db">, path: string): Promise<number> {
  if (existsSync(path)) throw new StoreError("exists", `${path} is there already, and a backup writes over nothing`);
  if (!existsSync(dirname(path))) throw new StoreError("no_folder", `there is no folder ${dirname(path)} for the backup`);
  const part = `${path}.part`;
  rmSync(part, { force: true });
  try {
    await (file === undefined ? writeLines(db, part) : copyDatabase(file, part));
    toDisk(part);
    renameSync(part, path);
    toDisk(dirname(path));
    return statSync(path).size;
  } catch (error) {
    rmSync(part, { force: true });
    throw error;
  }
}

/**
 * The same for a place that another process may have open.
 * Throws StoreError "unreachable" where a folder holds no database.
 */
export async function backupPlace(place: Place, path: string): Promise<number> {
  const connection = connect(place);
  const file = connection.engine === "sqlite" ? connection.file : undefined;
  if (file !== undefined && !existsSync(file)) throw new StoreError("unreachable", `${dirname(file)} holds no database`);
  try {
    return await backup({ file, db: connection.db }, path);
  } finally {
    await connection.db.destroy();
  }
}

function toDisk(path: string): void {
  const handle = openSync(path, "r");
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}
