import { catalogue } from "../catalogue/catalogue.ts";
import { intersect, type Rect, rectArea } from "../geometry/rect.ts";
import type { BuildUp } from "../job/job.ts";
import { boardSurface } from "./boards/boardSurface.ts";
import type { Framing, PlacedOpening, Snag } from "./build.ts";
import { furringParts } from "./framing/furring.ts";
import { blockingParts, type FramePlan, frameSurface } from "./framing/frameSurface.ts";
import { partMaker } from "./makePart.ts";
import type { Part } from "./part.ts";
import { paintParts } from "./shell/coatings.ts";
import type { Span, Stack, Surface } from "./surface.ts";

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

/** Studs, boards, backing, furring and paint of one surface. The first side's studs carry both sides. */
export function lineSurface(
  surface: Surface,
  sides: readonly LinedSide[],
  plan: FramePlan,
  openings: readonly PlacedOpening[],
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

  let firstLayer = 1;
  for (const { buildUp, stack, rect } of sides) {
    const boarded = boardSurface(
      surface,
      buildUp.boards,
      stack.boards,
      { rect, seamLines: framed?.layout.seamLines ?? "everywhere", from: plan.from, holes, firstLayer, role: "board" },
      maker,
    );
    firstLayer += buildUp.boards.length;
    parts.push(...boarded.parts);
    snags.push(...boarded.snags);
    if (framed !== undefined && studs !== undefined && stack.studs !== undefined) {
      const track = catalogue.sections.get(studs.track);
      const backing = backingDepth(stack, track.width);
      parts.push(...blockingParts(track, backing, boarded.rowSeams, framed.layout, { rect: plan.rect, holes }, maker));
    }
    parts.push(...furringParts(buildUp, stack, rect, holes, maker));
    parts.push(...paintParts(surface, buildUp.paint, stack.finished, netArea(rect, holes), rect, maker));
  }
  const framing = framed === undefined ? undefined : { surface: surface.id, seamLines: framed.layout.seamLines };
  return { framing, parts, snags };
}

/** Backing lies flat against the boards: as deep as a track's leg, at the carrying face of the studs. */
function backingDepth(stack: Stack, leg: number): Span {
  const { studs, finished } = stack;
  if (studs === undefined) throw new RangeError("backing needs studs");
  return finished < studs.from ? { from: studs.from, to: studs.from + leg } : { from: studs.to - leg, to: studs.to };
}

function netArea(rect: Rect, holes: readonly Rect[]): number {
  return holes.reduce((area, hole) => {
    const cut = intersect(rect, hole);
    return cut === undefined ? area : area - rectArea(cut);
  }, rectArea(rect));
}
