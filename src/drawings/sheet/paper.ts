import type { Rect } from "../../geometry/rect.ts";
import type { System } from "../../units/display.ts";
import { formatLength } from "../../units/format.ts";

/** A size of paper, its drawing frame and the part of the frame that drawings may fill; metres. */
export interface Paper {
  readonly name: string;
  readonly width: number;
  readonly height: number;
  readonly frame: Rect;
  readonly area: Rect;
}

const MM = 0.001;
const INCH = 0.0254;

/** Height of the strip at the foot of the frame that holds the title block. */
export const STRIP = 23 * MM;

/**
 * The papers that a shop has at hand, the usual one first and larger ones for drawings that would not fit it. A sizes
 * (ISO 216) lie with the margins of ISO 5457, 20 mm to bind at the left and 10 mm elsewhere; US sizes after
 * ANSI/ASME Y14.1, B to E. From memory.
 */
export function papersFor(units: System, basis: "US" | "Canada" | "Europe"): readonly Paper[] {
  return units === "imperial" && basis === "US" ? US_PAPERS : A_PAPERS;
}

/** Usual drawing scales 1 : n, largest first; metric after ISO 5455 with the trade's 1:25 and 1:75 (from memory). */
const RATIOS: Readonly<Record<System, readonly number[]>> = {
  metric: [5, 10, 20, 25, 50, 75, 100],
  imperial: [4, 8, 12, 16, 24, 32, 48, 64, 96],
};

export function ratiosFor(units: System): readonly number[] {
  return RATIOS[units];
}

/** Scales for what fits no sheet at a usual one: a thing that the job puts far outside the box, as the checks will say. */
export const LAST_RATIOS: readonly number[] = [200, 500, 1000];

/** A scale in words: "1:50", or `1/4" = 1'-0" (1:48)`. */
export function scaleText(ratio: number, units: System): string {
  if (units === "metric") return `1:${ratio}`;
  return `${formatLength((12 * INCH) / ratio, "imperial")} = 1'-0" (1:${ratio})`;
}

const A_PAPERS: readonly Paper[] = [
  paper("A3", 420 * MM, 297 * MM),
  paper("A2", 594 * MM, 420 * MM),
  paper("A1", 841 * MM, 594 * MM),
  paper("A0", 1189 * MM, 841 * MM),
];

const US_PAPERS: readonly Paper[] = [
  paper("11 × 17 in", 17 * INCH, 11 * INCH),
  paper("17 × 22 in", 22 * INCH, 17 * INCH),
  paper("22 × 34 in", 34 * INCH, 22 * INCH),
  paper("34 × 44 in", 44 * INCH, 34 * INCH),
];

function paper(name: string, width: number, height: number): Paper {
  const frame = { u0: 20 * MM, u1: width - 10 * MM, v0: 10 * MM, v1: height - 10 * MM };
  const inset = 4 * MM;
  const area = { u0: frame.u0 + inset, u1: frame.u1 - inset, v0: frame.v0 + STRIP + inset, v1: frame.v1 - inset };
  return { name, width, height, frame, area };
}
