import { catalogue } from "../../catalogue/catalogue.ts";
import type { SectionRow } from "../../catalogue/rows.ts";
import { type Interval, subtractIntervals } from "../../geometry/interval.ts";
import type { Rect } from "../../geometry/rect.ts";
import type { BuildUp } from "../../job/job.ts";
import type { PlacedOpening, Snag } from "../build.ts";
import type { PartMaker } from "../makePart.ts";
import type { Part } from "../part.ts";
import type { Span, Surface } from "../surface.ts";
import { layoutStuds, type StudField, type StudLayout } from "./layoutStuds.ts";

/** Where the studs of a surface stand and where its boards start. */
export interface FramePlan {
  readonly rect: Rect;
  readonly pull: { readonly start: number; readonly end: number };
  readonly boards: Interval;
  readonly from: "start" | "end";
}

export interface FramedSurface {
  readonly parts: readonly Part[];
  readonly layout: StudLayout;
  readonly snags: readonly Snag[];
}

/** Studs, tracks, headers and sills of one surface. */
export function frameSurface(
  surface: Surface,
  studs: NonNullable<BuildUp["studs"]>,
  depth: Span,
  plan: FramePlan,
  openings: readonly PlacedOpening[],
  maker: PartMaker,
): FramedSurface {
  const stud = catalogue.sections.get(studs.row);
  const track = catalogue.sections.get(studs.track);
  const field: StudField = {
    ...plan,
    pitch: studs.pitch,
    studWidth: stud.width,
    trackLeg: track.width,
    openings: openings
      .filter(({ framed }) => framed)
      .map(({ opening, lining }) => ({ id: opening.id, hole: lining, toFloor: opening.kind === "personnel door" })),
  };
  const layout = layoutStuds(field);
  const parts = [
    ...layout.studs.map(({ role, rect, of }) => barPart(maker, stud, role, rect, depth, "v", of)),
    ...layout.tracks.map(({ role, rect, of }) => barPart(maker, track, role, rect, depth, "u", of)),
  ];
  const snags: Snag[] = [
    ...layout.jambsLeftOut.map((opening) => ({ kind: "jamb left out" as const, surface: surface.id, opening })),
    ...layout.headersLeftOut.map((opening) => ({ kind: "no header room" as const, surface: surface.id, opening })),
  ];
  return { parts, layout, snags };
}

/** Backing shorter than this is not cut: stud, jamb or track carry the seam there. */
const SHORTEST_BACKING = 0.05;

/** Backing between the studs behind seams that run along u: pieces of track, one a bay, as deep as the studs. */
export function blockingParts(
  track: SectionRow,
  depth: Span,
  rowSeams: readonly number[],
  layout: StudLayout,
  holes: readonly Rect[],
  maker: PartMaker,
): readonly Part[] {
  const first = Math.min(...layout.studs.map(({ rect }) => rect.u0));
  const last = Math.max(...layout.studs.map(({ rect }) => rect.u1));
  return apart(rowSeams, track.width).flatMap((seam) => {
    const v = { v0: seam - track.width / 2, v1: seam + track.width / 2 };
    const meets = (rect: Rect): boolean => rect.v0 < v.v1 && rect.v1 > v.v0;
    const taken = [...layout.studs.map(({ rect }) => rect), ...layout.tracks.map(({ rect }) => rect), ...holes]
      .filter(meets)
      .map(({ u0, u1 }) => ({ from: u0, to: u1 }));
    return subtractIntervals({ from: first, to: last }, taken)
      .filter(({ from, to }) => to - from >= SHORTEST_BACKING)
      .map(({ from, to }) => barPart(maker, track, "blocking", { u0: from, u1: to, ...v }, depth, "u", undefined));
  });
}

/** Seams at least `width` apart: one piece backs those of several layers that lie closer. */
function apart(seams: readonly number[], width: number): readonly number[] {
  const kept: number[] = [];
  for (const seam of [...seams].sort((a, b) => a - b)) {
    const before = kept.at(-1);
    if (before === undefined || seam - before >= width) kept.push(seam);
  }
  return kept;
}

/** A cold-formed bar with its mass by length. */
export function barPart(
  maker: PartMaker,
  section: SectionRow,
  role: Part["role"],
  rect: Rect,
  depth: Span,
  runs: "u" | "v",
  of: string | undefined,
  temporary = false,
): Part {
  const length = runs === "u" ? rect.u1 - rect.u0 : rect.v1 - rect.v0;
  return maker.make({
    role,
    what: `${role}, ${section.what}`,
    rect,
    depth,
    shape: { kind: "bar", runs, length },
    row: { table: "sections", id: section.id },
    material: section.material,
    basis: { by: "length", length, massPerLength: section.massPerLength },
    of,
    temporary,
  });
}
