import type { Layer } from "./drawing.ts";

/** How a layer looks. Lengths on paper in metres, colours as hexadecimal. Every layer reads in black and white too. */
export interface LayerStyle {
  readonly weight: number;
  readonly ink: string;
  /** Strokes and gaps in turn; none for a full line. */
  readonly dash: readonly number[] | undefined;
  /** Fill of shapes that are marked as filled. */
  readonly fill: string;
  /** Colour number and line type in a DXF file. */
  readonly dxf: { readonly colour: number; readonly lineType: LineType };
}


export type LineType = "Continuous" | "DASHED";

const MM = 0.001;
const BLACK = "#000000";
const DARK = "#333333";
const GREY = "#6b6b6b";
const BLUE = "#1d4a70";
const SHORT_DASH = [1.6 * MM, 0.9 * MM];

/** The one table of looks, from the heaviest that is cut to the lightest that explains. */
export const STYLE: Readonly<Record<Layer, LayerStyle>> = {
  "section-cut": look(0.5, BLACK, "#e4e4e4", 7),
  outline: look(0.35, BLACK, "#ffffff", 7),
  frame: look(0.35, BLACK, "#d0d0d0", 8),
  skin: look(0.3, BLACK, "#ffffff", 7),
  foam: look(0.09, GREY, "#f1ede0", 51),
  batts: look(0.09, GREY, "#e9e6e2", 33),
  studs: look(0.25, DARK, "#c4c4c4", 4),
  furring: look(0.18, DARK, "#e0e0e0", 6),
  boards: look(0.18, BLACK, "#ffffff", 3),
  seams: look(0.18, DARK, "#ffffff", 3),
  openings: look(0.35, BLACK, "#ffffff", 1),
  swing: look(0.13, DARK, "#ffffff", 1, SHORT_DASH, "DASHED"),
  trim: look(0.18, DARK, "#ffffff", 30),
  articles: look(0.18, DARK, "#f4f4f4", 30),
  items: look(0.25, BLACK, "#f4f4f4", 5),
  "clear-space": look(0.13, BLUE, "#ffffff", 5, SHORT_DASH, "DASHED"),
  dimensions: look(0.13, BLUE, BLUE, 150),
  text: look(0.13, BLACK, BLACK, 7),
  origin: look(0.25, BLUE, BLUE, 150),
  hidden: look(0.13, GREY, "#ffffff", 8, SHORT_DASH, "DASHED"),
  sheet: look(0.25, BLACK, "#ffffff", 7),
};

/** Line types by the lengths of their strokes and gaps on paper, metres. */
export const LINE_TYPES: Readonly<Record<Exclude<LineType, "Continuous">, readonly number[]>> = {
  DASHED: SHORT_DASH,
};

/** The dash of a shape that is drawn dashed on a layer of full lines. */
export const DASH: readonly number[] = SHORT_DASH;

/** Heights of capitals on paper, metres. */
export const TEXT = { small: 1.6 * MM, usual: 1.8 * MM, label: 2.2 * MM, title: 3 * MM, large: 4 * MM } as const;

function look(
  weight: number,
  ink: string,
  fill: string,
  colour: number,
  dash?: readonly number[],
  lineType: LineType = "Continuous",
): LayerStyle {
  return { weight: weight * MM, ink, dash, fill, dxf: { colour, lineType } };
}
