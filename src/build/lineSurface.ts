import { catalogue } from "../catalogue/catalogue.ts";
import { cutRects, polygonArea } from "../geometry/polygon.ts";
import { intersect, type Rect } from "../geometry/rect.ts";
import type { BuildUp } from "../job/job.ts";
import { boardSurface } from "./boards/boardSurface.ts";
import type { Framing, PlacedOpening, Snag } from "./build.ts";
import { battParts } from "./framing/batts.ts";
import { furringParts } from "./framing/furring.ts";
import { blockingParts, type FramePlan, frameSurface } from "./framing/frameSurface.ts";
import { partMaker } from "./makePart.ts";
import type { Part } from "./part.ts";
import { paintParts } from "./shell/coatings.ts";
import { developedArea } from "./shell/skin.ts";
import { type Steel, steelAt } from "./steel.ts";
import type { Stack, Surface } from "./surface.ts";

/** One side of a surface: faces have one, partitions two. */
export interface LinedSide {
  readonly buildUp: BuildUp;
  readonly stack: Stack;
  /** Extent of the boards. */
  readonly rect: Rect;
}

export interface LinedSurface {
  readonly framing: Framing | undefined;
  readonly parts: readonly Part[];
  readonly snags: readonly Snag[];
}

/** Studs, boards, backing, batts, furring and paint of one surface. The first side's studs carry both sides, and its batts stand between them. */
export function lineSurface(
  surface: Surface,
  sides: readonly LinedSide[],
  plan: FramePlan,
  openings: readonly PlacedOpening[],
  steel: readonly Steel[],
): LinedSurface {
  const maker = partMaker(surface);
  const first = sides[0];
  if (first === undefined) throw new RangeError(`${surface.name} has no side to line`);
  const holes = openings.map(({ lining }) => lining);
  const { studs } = first.buildUp;
  const framed =
    studs === undefined || first.stack.studs === undefined
      ? undefined
      : frameSurface(surface, studs, first.stack.studs, plan, openings, maker);
  const parts: Part[] = [...(framed?.parts ?? [])];
  const snags: Snag[] = [...(framed?.snags ?? [])];

  const rowSeams: number[] = [];
  let firstLayer = 1;
  for (const { buildUp, stack, rect } of sides) {
    const boarded = boardSurface(
      surface,
      buildUp.boards,
      stack.boards,
      { rect, seamLines: framed?.layout.seamLines ?? "everywhere", from: plan.from, holes, steel, firstLayer, role: "board" },
      maker,
    );
    firstLayer += buildUp.boards.length;
    parts.push(...boarded.parts);
    snags.push(...boarded.snags);
    rowSeams.push(...boarded.rowSeams);
    parts.push(...furringParts(buildUp, stack, rect, holes, maker));
    parts.push(...paintParts(surface, buildUp.paint, stack.finished, paintedArea(surface, stack, holes), surface.lined, maker));
  }
  if (framed !== undefined && studs !== undefined && first.stack.studs !== undefined) {
    const track = catalogue.sections.get(studs.track);
    const blocking = blockingParts(track, first.stack.studs, rowSeams, framed.layout, holes, maker);
    parts.push(...blocking);
    const { batts } = first.stack;
    if (batts !== undefined && first.buildUp.batts !== undefined) {
      const taken = [...framed.parts, ...blocking, ...steelAt(steel, batts)].map(({ rect }) => rect);
      parts.push(...battParts(first.buildUp.batts.row, batts, plan.rect, [...taken, ...holes], maker));
    }
  }
  const framing = framed === undefined ? undefined : { surface: surface.id, seamLines: framed.layout.seamLines };
  return { framing, parts, snags };
}

/** What shows when finished, less the openings; bare sheet as developed. */
function paintedArea(surface: Surface, stack: Stack, holes: readonly Rect[]): number {
  const { lined, profile } = surface;
  const flat = cutRects(lined, holes).reduce((sum, one) => sum + polygonArea(one), 0);
  if (profile === undefined || stack.finished > 0) return flat;
  const sheet = intersect(lined, surface.panel);
  if (sheet === undefined) return flat;
  const sheetFlat = cutRects(sheet, holes).reduce((sum, one) => sum + polygonArea(one), 0);
  return flat - sheetFlat + developedArea(surface, profile, sheet, holes);
}
