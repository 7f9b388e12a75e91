import { surfaceOf } from "../../build/build.ts";
import { apply } from "../../working/formula.ts";
import { tightest } from "../finding.ts";
import { AXES, partBox, spanGap } from "../places.ts";
import { gapsBetween } from "./blocks.ts";
import { notNegative, type Rule } from "./context.ts";
import { blockGap } from "./formulas.ts";

/** No item stands where a fan, a damper or another article reaches out of its wall, its floor or its ceiling. */
export const itemsAndArticles: Rule = ({ build, items, make }) => {
  const articles = build.parts
    .filter(({ role }) => role === "article")
    .map((part) => ({ id: part.id, box: partBox(surfaceOf(build, part.surface), part) }));
  const cases = items
    .flatMap(({ item, box }) =>
      articles.map((article) => ({
        item: item.id,
        box,
        article,
        apart: Math.max(...AXES.map((axis) => spanGap(box[axis], article.box[axis]))),
      })),
    )
    .sort((a, b) => a.apart - b.apart)
    .filter(({ apart }, index) => apart < 0 || index === 0)
    .map(({ item, box, article }) => {
      const g = gapsBetween(box, item, article.box, article.id);
      return {
        item,
        article: article.id,
        comparison: notNegative(apply(blockGap, { g }, { means: `room between ${item} and ${article.id}` })),
      };
    });
  const out = cases
    .filter(({ comparison }) => !comparison.holds)
    .map(({ item, article, comparison }) =>
      make(
        "item in article",
        { item, article, over: -comparison.margin },
        {
          verdict: "stop",
          at: `items-and-articles/${item}/${article}`,
          about: [item, article],
          comparison,
        },
      ),
    );
  const least = tightest(cases);
  if (out.length > 0 || least === undefined) return out;
  const { item, article, comparison } = least;
  return [
    make(
      "items clear of articles",
      { item, article, clear: comparison.margin },
      { verdict: "pass", at: "items-and-articles", about: [item, article], comparison },
    ),
  ];
};
