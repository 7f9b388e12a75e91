import type { Hono } from "hono";
import { ROUTES } from "../../job/api.ts";
import { latestPriceBook, listPriceBooks } from "../../store/priceBooks.ts";
import type { ServerContext } from "../context.ts";
import { found } from "../problem.ts";

/** Price books; they come in by import. */
export function priceBookRoutes(app: Hono, { store }: ServerContext): void {
  app.get(ROUTES.priceBooks, async (context) => context.json({ books: await listPriceBooks(store) }));

  app.get(ROUTES.priceBook, async (context) => context.json(found(await latestPriceBook(store, context.req.param("book")), "price book")));
}
