import { catalogue } from "../../catalogue/catalogue.ts";
import type { ArticleKind, SectionShape } from "../../catalogue/rows.ts";
import { valueAt } from "../file.ts";
import type { JobIssue } from "../issue.ts";
import { OPENING_KINDS } from "../schema/opening.ts";
import type { OpeningKind } from "../schema/opening.ts";
import { issueAt, textAt } from "./draft.ts";
import type { CrossCheck, Draft } from "./draft.ts";

/** Openings without a size, on a face where their kind has no meaning, or with articles and sections of another kind. */
export const openingIssues: CrossCheck = (draft) =>
  draft.openings.flatMap(({ steps }) => [
    ...noSize(draft, steps),
    ...wrongFace(draft, steps),
    ...wrongArticle(draft, steps),
    ...wrongSection(draft, [...steps, "frame", "row"], FRAME_SHAPES, "hss-2x2x3-16"),
    ...wrongSection(draft, [...steps, "trim"], TRIM_SHAPES, "trim-2x2-18mil"),
  ]);

type Steps = readonly (string | number)[];

const ARTICLES: Readonly<Record<OpeningKind, readonly ArticleKind[]>> = {
  "personnel door": ["door"],
  window: ["window"],
  fan: ["fan"],
  intake: ["damper", "screen", "louvre", "fan"],
  "cable entry": ["cable entry", "sleeve"],
  "pipe sleeve": ["sleeve"],
  "split-unit lines": ["sleeve", "cable entry"],
  hatch: ["hatch"],
};
const FRAME_SHAPES: readonly SectionShape[] = ["hollow", "angle", "channel", "flat"];
const TRIM_SHAPES: readonly SectionShape[] = ["angle", "flat"];

function noSize(draft: Draft, steps: Steps): readonly JobIssue[] {
  if (valueAt(draft.raw, [...steps, "size"]) !== undefined) return [];
  const article = textAt(draft.raw, [...steps, "article"]);
  const size = { width: "36 in", height: "80 in" };
  if (article === undefined) {
    return [issueAt(draft, [...steps, "size"], "opening", "the clear opening's size, or an article that has one", size)];
  }
  if (!catalogue.articles.has(article) || catalogue.articles.get(article).rough !== null) return [];
  return [issueAt(draft, [...steps, "size"], "opening", `the clear opening's size: ${article} asks for none of its own`, size)];
}

function wrongFace(draft: Draft, steps: Steps): readonly JobIssue[] {
  const kind = kindAt(draft, steps);
  const face = textAt(draft.raw, [...steps, "face"]);
  if (face !== "roof" && face !== "floor") return [];
  const issues: JobIssue[] = [];
  if (kind === "personnel door" || (kind === "window" && face === "floor")) {
    issues.push(issueAt(draft, [...steps, "face"], "opening", `a wall or a partition: the ${face} takes no ${kind}`, "left"));
  }
  if (valueAt(draft.raw, [...steps, "swing"]) !== undefined) {
    issues.push(issueAt(draft, [...steps, "swing"], "opening", `nothing: a swing is said of upright leaves, not on the ${face}`, undefined));
  }
  return issues;
}

function wrongArticle(draft: Draft, steps: Steps): readonly JobIssue[] {
  const kind = kindAt(draft, steps);
  const id = textAt(draft.raw, [...steps, "article"]);
  if (kind === undefined || id === undefined || !catalogue.articles.has(id)) return [];
  const article = catalogue.articles.get(id);
  if (ARTICLES[kind].includes(article.kind)) return [];
  const fits = catalogue.articles.rows.find((row) => ARTICLES[kind].includes(row.kind))?.id;
  const wants = `an article of the kind ${ARTICLES[kind].join(" or ")} in a ${kind}; this one is a ${article.kind}`;
  return [issueAt(draft, [...steps, "article"], "opening", wants, fits)];
}

function wrongSection(draft: Draft, steps: Steps, shapes: readonly SectionShape[], example: string): readonly JobIssue[] {
  const row = textAt(draft.raw, steps);
  if (row === undefined || !catalogue.sections.has(row)) return [];
  const { shape } = catalogue.sections.get(row);
  if (shapes.includes(shape)) return [];
  return [issueAt(draft, steps, "opening", `a section of the shape ${shapes.join(" or ")}; this one is a ${shape}`, example)];
}

function kindAt(draft: Draft, steps: Steps): OpeningKind | undefined {
  const kind = textAt(draft.raw, [...steps, "kind"]);
  return OPENING_KINDS.find((known) => known === kind);
}
