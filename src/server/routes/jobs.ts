import type { Hono } from "hono";
import { newJobRequest, ROUTES, saveRequest } from "../../job/api.ts";
import type { Saved } from "../../job/api.ts";
import { createJob, listJobs } from "../../store/jobs.ts";
import { latestRevision, listRevisions, revisionOf, saveRevision } from "../../store/revisions.ts";
import { readBody } from "../body.ts";
import type { ServerContext } from "../context.ts";
import { found, Problem } from "../problem.ts";
import { numberIn } from "./numberIn.ts";

/** Jobs and their revisions. */
export function jobRoutes(app: Hono, { store, newId }: ServerContext): void {
  app.get(ROUTES.jobs, async (context) => context.json({ jobs: await listJobs(store) }));

  app.post(ROUTES.jobs, async (context) => {
    const asked = await readBody(context.req.raw, newJobRequest);
    return context.json(await createJob(store, { id: newId(), demo: false, ...asked }), 201);
  });

  app.get(ROUTES.job, async (context) => context.json(found(await latestRevision(store, context.req.param("job")), "job")));

  app.get(ROUTES.file, async (context) => {
    const { job, file } = found(await latestRevision(store, context.req.param("job")), "job");
    return context.body(file, 200, {
      "content-type": "application/json; charset=utf-8",
      "content-disposition": `attachment; filename="${job}.job.json"`,
    });
  });

  app.get(ROUTES.revisions, async (context) => {
    const revisions = await listRevisions(store, context.req.param("job"));
    if (revisions.length === 0) throw new Problem("not_found", "", { what: "job" });
    return context.json({ revisions });
  });

  app.get(ROUTES.revision, async (context) => {
    const number = numberIn(context.req.param("number"));
    return context.json(found(await revisionOf(store, context.req.param("job"), number), "revision"));
  });

  app.post(ROUTES.revisions, async (context) => {
    const asked = await readBody(context.req.raw, saveRequest);
    const saving = await saveRevision(store, { job: context.req.param("job"), ...asked });
    if (saving.ok) return context.json({ saved: true, revision: saving.revision } satisfies Saved, 201);
    if (saving.reason === "no such job") throw new Problem("not_found", "", { what: "job" });
    if (saving.reason === "no such base") throw new Problem("bad_request", "base", { wants: "the number of a revision of this job" });
    const { latest, changedSince: changes, conflicts } = saving;
    return context.json({ saved: false, latest, changes: [...changes], conflicts: [...conflicts] } satisfies Saved);
  });
}
