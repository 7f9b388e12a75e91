import { closeSync, openSync, readSync } from "node:fs";
import { sql } from "kysely";
import { openSqlite } from "../engines/sqlite.ts";
import { NEWEST_STEP, stepOf } from "../schema/migrate.ts";
import { StoreError } from "../storeError.ts";
import { readLines } from "./readLines.ts";
import { footerLine, headerLine, rowLine } from "./lines.ts";
import { backupRows, sumOf } from "./rows.ts";
import type { BackupRow, Sum } from "./rows.ts";

/** A backup that is open for reading. It is never written to. */
export interface OpenBackup {
  /** The step that its tables are at. */
  readonly step: number;
  /** Every row, and then what they have to add up to. */
  readonly rows: () => AsyncGenerator<BackupRow, Sum>;
  readonly close: () => Promise<void>;
}

/** Opens a backup of either kind. Throws StoreError "bad_backup" where it is neither, or damaged. */
export async function openBackup(path: string): Promise<OpenBackup> {
  const backup = await (startsAsSqlite(path) ? openDatabaseFile(path) : openLines(path));
  if (backup.step <= NEWEST_STEP) return backup;
  await backup.close();
  throw new StoreError("newer_schema", `${path} was made by a newer program (step ${backup.step}, and this one knows ${NEWEST_STEP})`);
}

const SQLITE = "SQLite format 3\0";

/** Throws StoreError "bad_backup" where the file cannot be read. */
function startsAsSqlite(path: string): boolean {
  const start = Buffer.alloc(SQLITE.length);
  try {
    const file = openSync(path, "r");
    try {
      readSync(file, start);
    } finally {
      closeSync(file);
    }
  } catch (error) {
    throw bad(path, error);
  }
  return start.toString("latin1") === SQLITE;
}

async function openDatabaseFile(path: string): Promise<OpenBackup> {
  const db = openSqlite(path, "read only");
  try {
    const { rows: sound } = await sql`pragma integrity_check`.execute(db);
    if (JSON.stringify(sound) !== '[{"integrity_check":"ok"}]') throw new Error("the database is damaged");
    const step = await stepOf(db);
    return {
      step,
      rows: async function* () {
        yield* backupRows(db);
        return sumOf(db);
      },
      close: () => db.destroy(),
    };
  } catch (error) {
    await db.destroy();
    throw bad(path, error);
  }
}

async function openLines(path: string): Promise<OpenBackup> {
  const lines = readLines(path);
  const first = await lines.next();
  const header = headerLine.safeParse(first.done === true ? undefined : jsonOf(first.value));
  if (!header.success) throw bad(path, "it does not begin as one");
  return {
    step: header.data.step,
    rows: async function* () {
      for await (const line of lines) {
        const json = jsonOf(line);
        const row = rowLine.safeParse(json);
        if (row.success) {
          yield row.data;
          continue;
        }
        const footer = footerLine.safeParse(json);
        const next = await lines.next();
        if (footer.success && next.done === true) return footer.data;
        throw bad(path, "a line in it is no row of one");
      }
      throw bad(path, "its end is missing");
    },
    close: async () => {
      await lines.return(undefined);
    },
  };
}

function bad(path: string, why: unknown): StoreError {
  return new StoreError("bad_backup", `${path} is no backup that can be restored: ${why instanceof Error ? why.message : String(why)}`);
}

function jsonOf(line: string): unknown {
  try {
    return JSON.parse(line);
  } catch {
    return undefined;
  }
}
