import { catalogue } from "../../catalogue/catalogue.ts";
import { subtractIntervals } from "../../geometry/interval.ts";
import type { Rect } from "../../geometry/rect.ts";
import type { BuildUp } from "../../job/job.ts";
import type { PartMaker } from "../makePart.ts";
import type { Part } from "../part.ts";
import type { Stack } from "../surface.ts";
import { barPart } from "./frameSurface.ts";

/** Bars along u on the surface of the studs, at whole pitches from the bottom, interrupted at openings. */
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
  const count = Math.floor((rect.v1 - rect.v0 - section.width) / furring.pitch);
  return Array.from({ length: count }, (_, index) => rect.v0 + (index + 1) * furring.pitch).flatMap((middle) => {
    const v = { v0: middle - section.width / 2, v1: middle + section.width / 2 };
    const taken = holes.filter((hole) => hole.v0 < v.v1 && hole.v1 > v.v0).map(({ u0, u1 }) => ({ from: u0, to: u1 }));
    return subtractIntervals({ from: rect.u0, to: rect.u1 }, taken).map(({ from, to }) =>
      barPart(maker, section, "furring", { u0: from, u1: to, ...v }, depth, "u", undefined, furring.temporary),
    );
  });
}
