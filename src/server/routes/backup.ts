import { createReadStream, existsSync, mkdirSync, readdirSync, statSync } from "node:fs";
import { join } from "node:path";
import { Readable } from "node:stream";
import type { Hono } from "hono";
import { ROUTES } from "../../job/api.ts";
import { backup, BACKUP_SUFFIX } from "../../store/backup.ts";
import type { ServerContext } from "../context.ts";
import { found, Problem } from "../problem.ts";

/** A backup into the server's own folder, while it goes on working, and its file. The name is the moment: nobody chooses a path. */
export function backupRoutes(app: Hono, { store, backups }: ServerContext): void {
  const running = new Set<string>();
  app.post(ROUTES.backup, async (context) => {
    if (running.size > 0) throw new Problem("busy");
    const name = `${store.now().toISOString().replace(/[:.]/g, "-")}${BACKUP_SUFFIX[store.engine]}`;
    const path = join(backups, name);
    running.add(path);
    try {
      mkdirSync(backups, { recursive: true, mode: 0o700 });
      return context.json({ path, name, bytes: await backup(store, path) }, 201);
    } finally {
      running.delete(path);
    }
  });

  app.get(ROUTES.backupFile, (context) => {
    // Of what was asked only one of the names that are there is taken.
    const there = existsSync(backups) ? readdirSync(backups) : [];
    const name = found(there.find((one) => one === context.req.param("name") && SUFFIXES.some((suffix) => one.endsWith(suffix))), "backup");
    const path = join(backups, name);
    return context.body(Readable.toWeb(createReadStream(path)) as ReadableStream<Uint8Array>, 200, {
      "content-type": "application/octet-stream",
      "content-length": String(statSync(path).size),
      "content-disposition": `attachment; filename="${name}"`,
    });
  });
}

const SUFFIXES: readonly string[] = Object.values(BACKUP_SUFFIX);
