import type { Build } from "../../../build/build.ts";
import type { Part } from "../../../build/part.ts";
import { type Surface, toWorld } from "../../../build/surface.ts";
import type { Rect } from "../../../geometry/rect.ts";
import type { Section } from "../../../physics/conduction.ts";
import type { Films } from "../cuts/airs.ts";
import { type Cut, worldOf } from "../cuts/cut.ts";
import { cutSection } from "../cuts/cutSection.ts";

/** A section that a build asks for: where it is cut, and what it is called. The window starts at (0, 0). */
export interface Planned {
  /** Stable and readable: "left/stud/on-inner-flat". */
  readonly id: string;
  /** In words: "left wall at the stud 1.6 m along". */
  readonly name: string;
  readonly about: readonly string[];
  readonly cut: Cut;
  readonly window: Rect;
  /** How much of the face it shows, m. */
  readonly width: number;
  readonly without?: (part: Part) => boolean;
}

/** A stretch of a face that runs into a junction, from the reference line to the edge of the window. */
export interface Flank {
  readonly surface: string;
  /** In words: "left wall". */
  readonly name: string;
  readonly length: number;
  /** The undisturbed face, for its transmittance by the metre. */
  readonly field: Planned;
  /** Studs and cross-members in the flank, which the face counts by themselves. */
  readonly bars: readonly Part[];
}

/** A line where heat passes beyond the plain faces: two faces that meet, a partition, an edge of an opening. */
export interface Junction {
  readonly id: string;
  readonly name: string;
  readonly main: Planned;
  readonly flanks: readonly Flank[];
  /** Whole length of such lines in the box, m. */
  readonly length: number;
}

/** Outside air and room air shown beyond a face, m. */
export const OUTSIDE_SHOWN = 0.02;
export const ROOM_SHOWN = 0.05;

/** The section itself. */
export function sectionOf(build: Build, { cut, window, without }: Planned, films: Films = "heat flow"): Section {
  return cutSection(build, cut, window, { films, ...(without === undefined ? {} : { without }) });
}

/**
 * A planned section whose origin is moved to its window's corner, so that the same geometry elsewhere is the same section. It
 * shows its face over its x, unless said otherwise.
 */
export function plan(wanted: Omit<Planned, "width"> & { readonly width?: number }): Planned {
  const { cut, window } = wanted;
  return {
    width: window.u1 - window.u0,
    ...wanted,
    cut: { ...cut, origin: worldOf(cut, window.u0, window.v0) },
    window: { u0: 0, u1: window.u1 - window.u0, v0: 0, v1: window.v1 - window.v0 },
  };
}

/** The plane square to a face along `runs` at `at`, with x along the face from t = 0 and y inward from the inside plane. */
export function planeAcross(surface: Surface, runs: "u" | "v", at: number): Cut {
  const [x, u, v] = runs === "u" ? [surface.along, 0, at] : [surface.up, at, 0];
  return { origin: toWorld(surface, u, v, 0), x, y: surface.inward };
}

/** A window over a stretch of a face, through all its layers, or as far as something reaches beyond them. */
export function throughFace({ skinDepth, stack }: Surface, from: number, to: number, reach = stack.finished): Rect {
  return { u0: from, u1: to, v0: -skinDepth - OUTSIDE_SHOWN, v1: Math.max(stack.finished, reach) + ROOM_SHOWN };
}
