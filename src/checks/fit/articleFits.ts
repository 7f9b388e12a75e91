import type { PlacedOpening } from "../../build/build.ts";
import { catalogue } from "../../catalogue/catalogue.ts";
import { rectHeight, rectWidth } from "../../geometry/rect.ts";
import { compare, type Comparison } from "../../working/comparison.ts";
import { given } from "../../working/quantity.ts";
import { fromRow } from "../fromRow.ts";
import type { Finding } from "../check.ts";
import { tightest } from "../finding.ts";
import { GREATEST_SHIM, LARGEST_UNFRAMED } from "../limits.ts";
import { atLeast, distance, line, type Rule } from "./context.ts";

/** Articles and fittings go into the clear opening, without a gap too wide to close. */
export const articleFits: Rule = ({ build, make }) => {
  const cases = build.openings.flatMap(fitsOf);
  const out = cases.flatMap((one): readonly Finding[] => {
    const { opening, row, article, way, tight, loose } = one;
    const body = { at: `article-fits/${opening}/${row}/${way}`, about: [opening] };
    if (!tight.holds) {
      const facts = { opening, article, way, needs: tight.right.value, has: tight.left.value };
      return [make("article too big", facts, { ...body, verdict: "stop", comparison: tight })];
    }
    if (loose.holds) return [];
    const facts = { opening, article, way, gap: loose.left.value, most: GREATEST_SHIM.value };
    return [make("article too loose", facts, { ...body, verdict: "watch", comparison: loose })];
  });
  const least = tightest(cases.map((one) => ({ ...one, comparison: one.tight })));
  if (out.length > 0 || least === undefined) return out;
  const facts = { count: cases.length / 2, opening: least.opening, way: least.way, spare: least.tight.margin };
  return [make("articles fit", facts, { verdict: "pass", at: "article-fits", about: [least.opening], comparison: least.tight })];
};

/** The welded frame is deep enough for the sheet's profile, and large holes in it have one. */
export const frameAndSheet: Rule = ({ build, make }) => {
  const out: Finding[] = [];
  const covered: { opening: string; comparison: Comparison<"m"> }[] = [];
  for (const { opening, surface, hole } of build.openings) {
    const { id } = opening;
    const { profile } = surface;
    if (profile === undefined) continue;
    if (opening.frame === undefined) {
      const size = Math.max(rectWidth(hole), rectHeight(hole));
      const comparison = compare(line(size, id, "greatest size of the hole"), "<=", LARGEST_UNFRAMED, 1e-5);
      if (comparison.holds) continue;
      const facts = { opening: id, size, most: LARGEST_UNFRAMED.value };
      out.push(make("hole without frame", facts, { verdict: "watch", at: `frame-and-sheet/${id}`, about: [id], comparison }));
      continue;
    }
    const section = catalogue.sections.get(opening.frame.row);
    const frame = given(
      section.depth,
      "m",
      "d_frame",
      `depth of frame ${section.what}`,
      fromRow(`sections/${section.id}`, "depth", section.source),
    );
    const sheet = given(
      profile.depth,
      "m",
      "d_sheet",
      `depth of ${profile.what}`,
      fromRow(`profiles/${profile.id}`, "depth", profile.source),
    );
    const comparison = atLeast(frame, sheet);
    covered.push({ opening: id, comparison });
    if (comparison.holds) continue;
    out.push(
      make(
        "frame thinner than sheet",
        { opening: id, frame: frame.value, sheet: sheet.value },
        { verdict: "watch", at: `frame-and-sheet/${id}`, about: [id], comparison },
      ),
    );
  }
  const least = tightest(covered);
  if (out.length > 0 || least === undefined) return out;
  const facts = { opening: least.opening, frame: least.comparison.left.value, sheet: least.comparison.right.value };
  return [
    make("frames cover sheet", facts, {
      verdict: "pass",
      at: "frame-and-sheet",
      about: covered.map(({ opening }) => opening),
      comparison: least.comparison,
    }),
  ];
};

interface Fitting {
  readonly opening: string;
  readonly row: string;
  readonly article: string;
  readonly way: "width" | "height";
  /** Clear size against what the maker asks for. */
  readonly tight: Comparison<"m">;
  /** Gap left against what shims close. */
  readonly loose: Comparison<"m">;
}

function fitsOf({ opening, clear }: PlacedOpening): readonly Fitting[] {
  const ids = [...(opening.article === undefined ? [] : [opening.article]), ...opening.fittings];
  return ids.flatMap((article) => {
    const row = catalogue.articles.get(article);
    const { rough } = row;
    if (rough === null) return [];
    const sizes = { width: rectWidth(clear), height: rectHeight(clear) };
    return (["width", "height"] as const).map((way): Fitting => {
      const from = fromRow(`articles/${row.id}`, `rough ${way}`, row.source);
      const needs = given(rough[way], "m", "b_rough", `${way} of opening that ${row.what} asks for`, from);
      const has = line(sizes[way], opening.id, `clear ${way}`);
      const gap = distance(needs, has, `gap around ${row.what} in ${way}`);
      return {
        opening: opening.id,
        row: row.id,
        article: row.what,
        way,
        tight: atLeast(has, needs),
        loose: compare(gap, "<=", GREATEST_SHIM, 1e-5),
      };
    });
  });
}
