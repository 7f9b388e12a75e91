import { Hono } from "hono";
import { ROUTES } from "../job/api.ts";
import type { ServerContext } from "./context.ts";
import { guard, strictHeaders } from "./guard.ts";
import { Problem } from "./problem.ts";
import { backupRoutes } from "./routes/backup.ts";
import { importRoutes } from "./routes/import.ts";
import { jobRoutes } from "./routes/jobs.ts";
import { liveRoutes } from "./routes/live.ts";
import { packRoutes } from "./routes/packs.ts";
import { priceBookRoutes } from "./routes/priceBooks.ts";
import { staticFiles } from "./staticFiles.ts";

/** Everything that the server answers: the routes of the API, and the built app from a folder. */
export function makeApp(context: ServerContext, webFolder: string): Hono {
  const app = new Hono();
  app.use(strictHeaders);
  app.use(guard);
  app.use("/api/*", async ({ header }, next) => {
    await next();
    header("cache-control", "no-store");
  });
  for (const routes of [jobRoutes, priceBookRoutes, importRoutes, packRoutes, liveRoutes, backupRoutes]) routes(app, context);
  for (const route of Object.values(ROUTES)) {
    app.all(route, () => {
      throw new Problem("wrong_method");
    });
  }
  staticFiles(app, webFolder, context.newId);
  app.notFound(({ json }) => json(new Problem("not_found", "", { what: "address" }).body, 404));
  app.onError((error, { json }) => {
    if (error instanceof Problem) return json(error.body, error.status);
    context.log(error.stack ?? error.message);
    return json(new Problem("failed").body, 500);
  });
  return app;
}
