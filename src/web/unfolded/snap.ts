import type { Build, Rect, Surface } from "../../river/screen.ts";
import type { System } from "../../units/format.ts";
import type { Thing } from "./things.ts";

/** A line on a face that edges are drawn to. */
export interface SnapLine {
  readonly axis: "u" | "v";
  readonly at: number;
  readonly what: string;
  /** Middles are drawn to it rather than edges. */
  readonly middle?: boolean;
}

/** What came of snapping: how far the thing went, and the lines that it met. */
export interface Snapped {
  readonly du: number;
  readonly dv: number;
  readonly met: readonly SnapLine[];
}

/** The lines of a face that a thing may be drawn to: flats of the profile, studs, other things' edges, posts, rails, floor. */
export function snapLines(build: Build, surface: Surface, things: readonly Thing[], moving: Thing): readonly SnapLine[] {
  return [
    ...boundLines(surface),
    ...(moving.kind === "opening" ? flatLines(surface) : []),
    ...studLines(build, surface, moving),
    ...things
      .filter((one) => one.surface === surface.id && one.id !== moving.id)
      .flatMap((one) => edgesOf(one.around, `edge of ${one.id}`)),
  ];
}

/**
 * Moves a rectangle by a step, drawn to the nearest line that an edge or the middle comes within `reach` of, on each axis
 * apart. Where no line is near, its lower left corner goes to a round figure.
 */
export function snapMove(start: Rect, around: Rect, by: { readonly u: number; readonly v: number }, lines: readonly SnapLine[], reach: number, round: number): Snapped {
  const u = snapAxis("u", [start.u0, start.u1, around.u0, around.u1], (start.u0 + start.u1) / 2, by.u, lines, reach);
  const v = snapAxis("v", [start.v0, start.v1, around.v0, around.v1], (start.v0 + start.v1) / 2, by.v, lines, reach);
  return {
    du: u?.by ?? rounded(start.u0 + by.u, round) - start.u0,
    dv: v?.by ?? rounded(start.v0 + by.v, round) - start.v0,
    met: [u?.line, v?.line].filter((line) => line !== undefined),
  };
}

/** Draws one edge to the nearest line within reach, else to a round distance from the edge across. */
export function snapEdge(axis: "u" | "v", at: number, across: number, lines: readonly SnapLine[], reach: number, round: number): { readonly at: number; readonly met: readonly SnapLine[] } {
  const found = snapAxis(axis, [at], undefined, 0, lines, reach);
  if (found !== undefined) return { at: at + found.by, met: [found.line] };
  return { at: across + rounded(at - across, round), met: [] };
}

/** The coarsest round figure that is not more than `reach`, in the units of the job; the finest where all are coarser. */
export function roundFigure(units: System, reach: number): number {
  const steps = ROUND[units];
  return steps.find((step) => step <= reach) ?? (steps.at(-1) as number);
}

const INCH = 0.0254;
const ROUND: Readonly<Record<System, readonly number[]>> = {
  metric: [0.1, 0.05, 0.025, 0.01, 0.005, 0.001],
  imperial: [6 * INCH, 2 * INCH, INCH, INCH / 2, INCH / 4, INCH / 16],
};

function snapAxis(
  axis: "u" | "v", edges: readonly number[], middle: number | undefined, by: number, lines: readonly SnapLine[], reach: number,
): { readonly by: number; readonly line: SnapLine } | undefined {
  let best: { readonly by: number; readonly line: SnapLine; readonly off: number } | undefined;
  for (const line of lines) {
    if (line.axis !== axis) continue;
    const starts = line.middle === true ? (middle === undefined ? [] : [middle]) : edges;
    for (const start of starts) {
      const off = Math.abs(line.at - start - by);
      if (off <= reach && (best === undefined || off < best.off - 1e-9)) best = { by: line.at - start, line, off };
    }
  }
  return best;
}

function rounded(x: number, step: number): number {
  return Math.round(x / step) * step;
}

/** Inner edges of posts, foot and head of a wall; finished walls on floor and roof. */
function boundLines(surface: Surface): readonly SnapLine[] {
  const { panel, lined, inside } = surface;
  if (surface.kind === "partition" || surface.inward.z !== 0) {
    return edgesOf({ ...lined }, "finished wall", surface.inward.z === 0 ? "floor or ceiling" : "finished wall");
  }
  return [
    { axis: "u", at: panel.u0, what: "post" },
    { axis: "u", at: panel.u1, what: "post" },
    { axis: "v", at: 0, what: "bare floor" },
    { axis: "v", at: lined.v0, what: "finished floor" },
    { axis: "v", at: lined.v1, what: "finished ceiling" },
    { axis: "v", at: panel.v1, what: "top rail" },
    { axis: "u", at: (inside.u0 + inside.u1) / 2, what: "middle of the face", middle: true },
  ];
}

/** Middles of the profile's flats between the posts. */
function flatLines({ profile, panel }: Surface): readonly SnapLine[] {
  if (profile === undefined) return [];
  const { pitch, innerFlat, outerFlat } = profile;
  const slope = (pitch - innerFlat - outerFlat) / 2;
  const lines: SnapLine[] = [];
  for (let start = panel.u0; start < panel.u1; start += pitch) {
    lines.push({ axis: "u", at: start + outerFlat / 2, what: "outer flat" });
    lines.push({ axis: "u", at: start + outerFlat + slope + innerFlat / 2, what: "inner flat" });
  }
  return lines.filter(({ at }) => at > panel.u0 && at < panel.u1);
}

/** Edges and middles of studs of the pitch; jamb studs follow their opening and draw nothing. */
function studLines(build: Build, surface: Surface, moving: Thing): readonly SnapLine[] {
  return build.parts
    .filter((part) => part.surface === surface.id && part.role === "stud" && part.of !== moving.id)
    .flatMap(({ rect }): readonly SnapLine[] => {
      const upright = rect.v1 - rect.v0 > rect.u1 - rect.u0;
      return upright
        ? [{ axis: "u", at: rect.u0, what: "stud" }, { axis: "u", at: rect.u1, what: "stud" }]
        : [{ axis: "v", at: rect.v0, what: "stud" }, { axis: "v", at: rect.v1, what: "stud" }];
    });
}

function edgesOf(rect: Rect, what: string, whatV = what): readonly SnapLine[] {
  return [
    { axis: "u", at: rect.u0, what },
    { axis: "u", at: rect.u1, what },
    { axis: "v", at: rect.v0, what: whatV },
    { axis: "v", at: rect.v1, what: whatV },
  ];
}
