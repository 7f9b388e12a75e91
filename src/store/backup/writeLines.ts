import { open } from "node:fs/promises";
import type { Kysely } from "kysely";
import { stepOf } from "../schema/migrate.ts";
import type { Tables } from "../schema/tables.ts";
import { backupRows, lineOf, summing } from "./rows.ts";
import { BACKUP_FORMAT, BACKUP_VERSION } from "./lines.ts";
import type { Footer, Header } from "./lines.ts";

/** Writes a PostgreSQL database as it stands at one moment: a header, a line for each row, and a footer with their sum. */
export async function writeLines(db: Kysely<Tables>, path: string): Promise<void> {
  const file = await open(path, "wx");
  try {
    const write = async (line: string): Promise<void> => {
      await file.write(`${line}\n`);
    };
    const { add, sum } = summing();
    await db
      .transaction()
      .setIsolationLevel("repeatable read")
      .setAccessMode("read only")
      .execute(async (moment) => {
        await write(JSON.stringify({ format: BACKUP_FORMAT, version: BACKUP_VERSION, step: await stepOf(moment) } satisfies Header));
        for await (const row of backupRows(moment)) {
          const line = lineOf(row);
          add(line);
          await write(line);
        }
      });
    await write(JSON.stringify(sum() satisfies Footer));
  } finally {
    await file.close();
  }
}
