import { airArticles } from "./articles/air.ts";
import { closureArticles } from "./articles/closures.ts";
import { entryArticles } from "./articles/entries.ts";
import { temperatureArticles } from "./articles/temperature.ts";
import type { ArticleRow } from "./rows.ts";

/** Bought articles. Every row is invented for the demo: replace it by the article that is really ordered. */
export const articleRows: readonly ArticleRow[] = [
  ...closureArticles,
  ...airArticles,
  ...temperatureArticles,
  ...entryArticles,
];
