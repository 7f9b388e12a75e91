import { mkdirSync } from "node:fs";
import { join } from "node:path";
import type { Hono } from "hono";
import { ROUTES } from "../../job/api.ts";
import { backup, BACKUP_SUFFIX } from "../../store/backup.ts";
import type { ServerContext } from "../context.ts";
import { Problem } from "../problem.ts";

/** A backup into the server's own folder, while it goes on working. The name is the moment: nobody chooses a path. */
export function backupRoutes(app: Hono, { store, backups }: ServerContext): void {
  const running = new Set<string>();
  app.post(ROUTES.backup, async (context) => {
    if (running.size > 0) throw new Problem("busy");
    const path = join(backups, `${store.now().toISOString().replace(/[:.]/g, "-")}${BACKUP_SUFFIX[store.engine]}`);
    running.add(path);
    try {
      mkdirSync(backups, { recursive: true, mode: 0o700 });
      return context.json({ path, bytes: await backup(store, path) }, 201);
    } finally {
      running.delete(path);
    }
  });
}
