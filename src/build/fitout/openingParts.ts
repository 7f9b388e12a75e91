import { catalogue } from "../../catalogue/catalogue.ts";
import type { ArticleRow } from "../../catalogue/rows.ts";
import { grow, type Rect } from "../../geometry/rect.ts";
import { SAME_LENGTH } from "../../geometry/tolerance.ts";
import type { PlacedOpening } from "../build.ts";
import { barPart } from "../framing/frameSurface.ts";
import { type PartMaker, partMaker } from "../makePart.ts";
import type { Part } from "../part.ts";
import type { Surface } from "../surface.ts";

/** Welded frame, article, fittings and trim of one opening. */
export function openingParts(placed: PlacedOpening): readonly Part[] {
  const { opening, surface } = placed;
  const maker = partMaker(surface, opening.id);
  return [...frameParts(placed, maker), ...articleParts(placed, maker), ...trimParts(placed, maker)];
}

/** Upright bars over the whole height of the hole, head and foot between them. */
function frameParts({ opening, surface, clear, hole }: PlacedOpening, maker: PartMaker): readonly Part[] {
  if (opening.frame === undefined) return [];
  const section = catalogue.sections.get(opening.frame.row);
  const outer = outerPlane(surface, section.depth);
  const depth = { from: outer, to: outer + section.depth };
  return ring(clear, hole).map(({ rect, runs }) =>
    barPart(maker, section, "opening frame", rect, depth, runs, opening.id),
  );
}

/**
 * Where what fills an opening starts: flush with the outside of the sheet; in the floor flush with the bare floor's top; in a
 * partition about the middle of its studs.
 */
function outerPlane(surface: Surface, depth: number): number {
  if (surface.kind === "partition") return -depth / 2;
  return surface.id === "floor" ? -depth : -surface.skinDepth;
}

/** Trim lies on the finished lining around the hole; on a partition on both sides. At the floor it stands on its layers. */
function trimParts({ opening, surface, lining }: PlacedOpening, maker: PartMaker): readonly Part[] {
  if (opening.trim === undefined) return [];
  const section = catalogue.sections.get(opening.trim);
  const outer = grow(lining, section.width);
  const isWall = surface.inward.z === 0;
  const around = isWall && outer.v0 < surface.lined.v0 ? { ...outer, v0: Math.max(lining.v0, surface.lined.v0) } : outer;
  const inner = { ...lining, v0: Math.max(lining.v0, around.v0) };
  const near = surface.stack.finished;
  const far = surface.farStack?.finished ?? near;
  const depths = [
    ...(surface.kind === "partition" ? [{ from: near - section.thickness, to: near }] : []),
    { from: far, to: far + section.thickness },
  ];
  return depths.flatMap((depth) =>
    ring(inner, around).map(({ rect, runs }) => barPart(maker, section, "trim", rect, depth, runs, opening.id)),
  );
}

/** The four bars between two rectangles, uprights through; no bar where the rectangles share an edge. */
function ring(inner: Rect, outer: Rect): readonly { readonly rect: Rect; readonly runs: "u" | "v" }[] {
  const bars = [
    { rect: { u0: outer.u0, u1: inner.u0, v0: outer.v0, v1: outer.v1 }, runs: "v" as const },
    { rect: { u0: inner.u1, u1: outer.u1, v0: outer.v0, v1: outer.v1 }, runs: "v" as const },
    { rect: { u0: inner.u0, u1: inner.u1, v0: inner.v1, v1: outer.v1 }, runs: "u" as const },
    { rect: { u0: inner.u0, u1: inner.u1, v0: outer.v0, v1: inner.v0 }, runs: "u" as const },
  ];
  return bars.filter(({ rect }) => rect.u1 - rect.u0 > SAME_LENGTH && rect.v1 - rect.v0 > SAME_LENGTH);
}

/** From the outside inward: what keeps the rain off first, the fan last; doors and the like stand alone. */
const ARTICLE_ORDER: readonly ArticleRow["kind"][] = ["louvre", "damper", "screen", "fan"];

/** Articles stand one behind the other. */
function articleParts({ opening, surface, clear }: PlacedOpening, maker: PartMaker): readonly Part[] {
  const articles = [...(opening.article === undefined ? [] : [opening.article]), ...opening.fittings]
    .map((id) => catalogue.articles.get(id))
    .sort((a, b) => ARTICLE_ORDER.indexOf(a.kind) - ARTICLE_ORDER.indexOf(b.kind));
  const depth = articles.reduce((sum, article) => sum + article.depth, 0);
  const parts: Part[] = [];
  for (const article of articles) {
    const from = parts.at(-1)?.depth.to ?? outerPlane(surface, depth);
    parts.push(
      maker.make({
        role: "article",
        what: article.what,
        rect: clear,
        depth: { from, to: from + article.depth },
        shape: { kind: "block" },
        row: { table: "articles", id: article.id },
        basis: { by: "given", mass: article.mass },
        of: opening.id,
      }),
    );
  }
  return parts;
}
