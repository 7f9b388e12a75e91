import type { Hono } from "hono";
import { ROUTES } from "../../job/api.ts";
import { readJob } from "../../job/read.ts";
import { latestPriceBook } from "../../store/priceBooks.ts";
import { revisionOf } from "../../store/revisions.ts";
import type { ServerContext } from "../context.ts";
import { found, issueFacts, Problem } from "../problem.ts";
import { numberIn } from "./numberIn.ts";

/** Packs of saved revisions: asked for, looked after, fetched as a zip, cancelled. */
export function packRoutes(app: Hono, { store, packs }: ServerContext): void {
  app.post(ROUTES.makePack, async (context) => {
    const revision = found(await revisionOf(store, context.req.param("job"), numberIn(context.req.param("number"))), "revision");
    const read = readJob(revision.file);
    if (!read.ok) throw new Problem("has_issues", "", { issues: issueFacts(read.issues) });
    const book = await latestPriceBook(store, read.job.prices.book);
    if (book === undefined) throw new Problem("no_price_book", "prices.book", { book: read.job.prices.book });
    const pack = packs.ask({ job: revision.job, number: revision.number, jobText: revision.file, bookText: book.file });
    if (pack === undefined) throw new Problem("busy");
    return context.json(pack, 202);
  });

  app.get(ROUTES.pack, (context) => context.json(found(packs.stateOf(context.req.param("pack")), "pack")));

  app.delete(ROUTES.pack, (context) => context.json(found(packs.cancel(context.req.param("pack")), "pack")));

  app.get(ROUTES.packFile, (context) => {
    const id = context.req.param("pack");
    const { state, job, number } = found(packs.stateOf(id), "pack");
    const zip = packs.zipOf(id);
    if (zip === undefined) throw new Problem("not_ready", "", { state });
    return context.body(zip, 200, {
      "content-type": "application/zip",
      "content-disposition": `attachment; filename="${job}-${number}.zip"`,
    });
  });
}
