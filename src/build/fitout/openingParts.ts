import { catalogue } from "../../catalogue/catalogue.ts";
import type { ArticleRow, SectionRow } from "../../catalogue/rows.ts";
import { grow, type Rect } from "../../geometry/rect.ts";
import { SAME_LENGTH } from "../../geometry/tolerance.ts";
import type { PlacedOpening } from "../build.ts";
import { barPart } from "../framing/frameSurface.ts";
import { type PartMaker, partMaker } from "../makePart.ts";
import type { Part } from "../part.ts";
import type { Span, Stack } from "../surface.ts";

/** Welded frame, article, fittings and trim of one opening. */
export function openingParts(placed: PlacedOpening): readonly Part[] {
  const { opening, surface } = placed;
  const maker = partMaker({ ...surface, id: `${surface.id}/${opening.id}` });
  const articles = [...(opening.article === undefined ? [] : [opening.article]), ...opening.fittings];
  const parts = [
    ...frameParts(placed, maker),
    ...articleParts(placed, articles.map((id) => catalogue.articles.get(id)), maker),
    ...trimParts(placed, maker),
  ];
  return parts.map((part) => ({ ...part, surface: surface.id }));
}

/** Upright bars over the whole height of the hole, head and foot between them; flush with the outside of the sheet. */
function frameParts({ opening, surface, clear, hole }: PlacedOpening, maker: PartMaker): readonly Part[] {
  if (opening.frame === undefined) return [];
  const section = catalogue.sections.get(opening.frame.row);
  const depth = { from: -surface.skinDepth, to: -surface.skinDepth + section.depth };
  return ring(clear, hole).map(({ rect, runs }) =>
    barPart(maker, section, "opening frame", rect, depth, runs, opening.id),
  );
}

/** Trim lies on the finished lining around the hole; on a partition on both sides. */
function trimParts({ opening, surface, lining }: PlacedOpening, maker: PartMaker): readonly Part[] {
  if (opening.trim === undefined) return [];
  const section = catalogue.sections.get(opening.trim);
  const outer = grow(lining, section.width);
  const floor = surface.kind === "face" && surface.inward.z !== 0 ? undefined : surface.lined.v0;
  const around = floor !== undefined && outer.v0 < floor ? { ...outer, v0: lining.v0 } : outer;
  const stacks = surface.farStack === undefined ? [surface.stack] : [surface.stack, surface.farStack];
  return stacks.flatMap((stack) =>
    ring(lining, around).map(({ rect, runs }) =>
      barPart(maker, section, "trim", rect, trimDepth(stack, section), runs, opening.id),
    ),
  );
}

function trimDepth({ finished, boardPlane }: Stack, section: SectionRow): Span {
  return finished >= boardPlane && finished > 0
    ? { from: finished, to: finished + section.thickness }
    : { from: finished - section.thickness, to: finished };
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

/** Articles stand one behind the other from the outside of the face inward, as listed. */
function articleParts({ opening, surface, clear }: PlacedOpening, articles: readonly ArticleRow[], maker: PartMaker): readonly Part[] {
  const outer = surface.kind === "partition" ? Math.min(surface.stack.finished, surface.stack.boardPlane) : -surface.skinDepth;
  const parts: Part[] = [];
  for (const article of articles) {
    const from = parts.at(-1)?.depth.to ?? outer;
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
