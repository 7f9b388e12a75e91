import { catalogue } from "../../catalogue/catalogue.ts";
import { subtractIntervals } from "../../geometry/interval.ts";
import type { Rect } from "../../geometry/rect.ts";
import type { BuildUp } from "../../job/job.ts";
import type { PartMaker } from "../makePart.ts";
import type { Part } from "../part.ts";
import type { Stack } from "../surface.ts";
import { barPart } from "./frameSurface.ts";

/**
 * Bars along u on the surface of the studs, interrupted at openings: at whole pitches from the bottom, and where they
 * stay also along both edges of the boards.
 */
export function furringParts(
  buildUp: BuildUp,
  stack: Stack,
  rect: Rect,
  holes: readonly Rect[],
  maker: PartMaker,
): readonly Part[] {
  const { furring } = buildUp;
  if (furring === undefined) return [];
  const section = catalogue.sections.get(furring.row);
  const plane = stack.studs?.to ?? stack.boardPlane;
  const depth = stack.furring ?? { from: plane, to: plane + section.depth };
  return placesOf(rect, furring, section.width).flatMap((middle) => {
    const v = { v0: middle - section.width / 2, v1: middle + section.width / 2 };
    const taken = holes.filter((hole) => hole.v0 < v.v1 && hole.v1 > v.v0).map(({ u0, u1 }) => ({ from: u0, to: u1 }));
    return subtractIntervals({ from: rect.u0, to: rect.u1 }, taken).map(({ from, to }) =>
      barPart(maker, section, "furring", { u0: from, u1: to, ...v }, depth, "u", undefined, furring.temporary),
    );
  });
}

/** Middles of the bars, from the bottom. */
function placesOf(rect: Rect, { pitch, temporary }: NonNullable<BuildUp["furring"]>, width: number): readonly number[] {
  const first = rect.v0 + width / 2;
  const last = rect.v1 - width / 2;
  const count = Math.floor((last - width - rect.v0) / pitch);
  const between = Array.from({ length: count }, (_, index) => rect.v0 + (index + 1) * pitch);
  return temporary ? between : [first, ...between, last];
}
