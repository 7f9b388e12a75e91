import type { Hono } from "hono";
import { ROUTES, savePriceBookRequest } from "../../job/api.ts";
import type { SavedPriceBook } from "../../job/api.ts";
import { latestPriceBook, listPriceBooks, savePriceBook } from "../../store/priceBooks.ts";
import { readBody } from "../body.ts";
import type { ServerContext } from "../context.ts";
import { found, issueFacts, Problem } from "../problem.ts";

/** Price books. */
export function priceBookRoutes(app: Hono, { store }: ServerContext): void {
  app.get(ROUTES.priceBooks, async (context) => context.json({ books: await listPriceBooks(store) }));

  app.get(ROUTES.priceBook, async (context) => context.json(found(await latestPriceBook(store, context.req.param("book")), "price book")));

  app.post(ROUTES.priceBooks, async (context) => {
    const saving = await savePriceBook(store, await readBody(context.req.raw, savePriceBookRequest));
    if (saving.ok) return context.json({ saved: true, revision: saving.revision } satisfies SavedPriceBook, 201);
    if (saving.reason === "has issues") throw new Problem("has_issues", "file", { issues: issueFacts(saving.issues) });
    return context.json({ saved: false, latest: saving.latest ?? null } satisfies SavedPriceBook);
  });
}
