import type { Vec2 } from "../../river/screen.ts";
import type { SheetRect } from "./unfold.ts";

/** How the sheet lies on the screen: pixels for a metre, and where the sheet's origin is in pixels. */
export interface View {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** From a whole 45 ft box on a phone to a fastener's head across the screen. */
const SMALLEST = 8;
const LARGEST = 8000;

export function toScreen({ scale, x, y }: View, at: Vec2): Vec2 {
  return { x: x + at.x * scale, y: y + at.y * scale };
}

export function fromScreen({ scale, x, y }: View, at: Vec2): Vec2 {
  return { x: (at.x - x) / scale, y: (at.y - y) / scale };
}

export function panned(view: View, by: Vec2): View {
  return { ...view, x: view.x + by.x, y: view.y + by.y };
}

/** Larger or smaller by a factor about a point of the screen, which stays where it is. */
export function zoomed(view: View, about: Vec2, times: number): View {
  const scale = Math.min(LARGEST, Math.max(SMALLEST, view.scale * times));
  const by = scale / view.scale;
  return { scale, x: about.x - (about.x - view.x) * by, y: about.y - (about.y - view.y) * by };
}

/** The view that shows a rectangle of the sheet whole, in the middle, with a margin of pixels around it. */
export function fitted({ x0, x1, y0, y1 }: SheetRect, { width, height }: Size, margin = 28): View {
  const across = Math.max(1, width - 2 * margin) / (x1 - x0);
  const down = Math.max(1, height - 2 * margin) / (y1 - y0);
  const scale = Math.min(LARGEST, Math.max(SMALLEST, Math.min(across, down)));
  return { scale, x: width / 2 - ((x0 + x1) / 2) * scale, y: height / 2 - ((y0 + y1) / 2) * scale };
}
