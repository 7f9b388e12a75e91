import { catalogue } from "../catalogue/catalogue.ts";
import type { BuildUp, FloorLayers } from "../job/job.ts";
import type { Span, Stack } from "./surface.ts";

/**
 * Where the layers of a build-up lie, inward from `base` (metres behind the inside plane). Studs stand their stand-off
 * away from the base, batts between them are flush with their inner surface; furring that stays lies on the studs; boards follow on the plane so reached, or on the foam where
 * there are neither studs nor furring.
 */
export function stackOf(buildUp: BuildUp | undefined, base = 0): Stack {
  const foam = buildUp?.foam === undefined ? undefined : span(base, buildUp.foam.thickness);
  const studs =
    buildUp?.studs === undefined
      ? undefined
      : span(base + buildUp.studs.standOff, catalogue.sections.get(buildUp.studs.row).depth);
  const batts = studs === undefined ? undefined : battSpan(buildUp, (thickness) => ({ from: studs.to - thickness, to: studs.to }));
  const onStuds = studs?.to ?? foam?.to ?? base;
  const furring =
    buildUp?.furring === undefined || buildUp.furring.temporary
      ? undefined
      : span(onStuds, catalogue.sections.get(buildUp.furring.row).depth);
  const boardPlane = furring?.to ?? onStuds;
  const boards = boardSpans(buildUp, boardPlane);
  return { foam, studs, batts, furring, boardPlane, boards, finished: boards.at(-1)?.to ?? boardPlane };
}

/** The layers of a partition on the side toward the door end, outward from the studs: w runs below zero. */
export function nearStack(buildUp: BuildUp, studDepth: number): Stack {
  const studs = { from: -studDepth / 2, to: studDepth / 2 };
  const boards = boardSpans(buildUp, studDepth / 2).map(({ from, to }) => ({ from: -to, to: -from }));
  return {
    foam: undefined,
    studs,
    batts: battSpan(buildUp, (thickness) => span(studs.from, thickness)),
    furring: undefined,
    boardPlane: studs.from,
    boards,
    finished: boards.at(-1)?.from ?? studs.from,
  };
}

/** The layers of a partition on the side toward the blind end: w runs above zero. Studs and batts are those of the near side. */
export function farStack(buildUp: BuildUp, studDepth: number, { studs, batts }: Stack): Stack {
  const boardPlane = studDepth / 2;
  const boards = boardSpans(buildUp, boardPlane);
  return { foam: undefined, studs, batts, furring: undefined, boardPlane, boards, finished: boards.at(-1)?.to ?? boardPlane };
}

/** Floor layers from the bare floor up, and foam below the bare floor, which is `thickness` thick. */
export function floorStack({ layers, foam }: FloorLayers, thickness: number): Stack {
  const bareFloor = 0;
  const boards = spansOf(layers, bareFloor);
  return {
    foam: foam === undefined ? undefined : { from: -thickness - foam.thickness, to: -thickness },
    studs: undefined,
    batts: undefined,
    furring: undefined,
    boardPlane: bareFloor,
    boards,
    finished: boards.at(-1)?.to ?? bareFloor,
  };
}

function battSpan(buildUp: BuildUp | undefined, place: (thickness: number) => Span): Span | undefined {
  return buildUp?.batts === undefined ? undefined : place(catalogue.batts.get(buildUp.batts.row).thickness);
}

function boardSpans(buildUp: BuildUp | undefined, from: number): readonly Span[] {
  return spansOf(buildUp?.boards ?? [], from);
}

function spansOf(layers: readonly { readonly row: string }[], from: number): readonly Span[] {
  const spans: Span[] = [];
  for (const layer of layers) {
    const start = spans.at(-1)?.to ?? from;
    spans.push(span(start, catalogue.boards.get(layer.row).thickness));
  }
  return spans;
}

function span(from: number, thickness: number): Span {
  return { from, to: from + thickness };
}
