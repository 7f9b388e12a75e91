import type { Rect, Vec2 } from "../../river/screen.ts";
import type { SectionPicture } from "../../river/sections.ts";

/** How a section lies on the screen: upright where it stands upright in the box, else with the room above. */
export interface Lie {
  /** The section's y runs to the right and its x along the height. */
  readonly isTurned: boolean;
  /** What runs along the height runs down. */
  readonly isDown: boolean;
}

/** Where a section lies on the screen: pixels for each metre, and the picture's size. */
export interface Frame extends Lie {
  readonly window: Rect;
  readonly scale: number;
  readonly width: number;
  readonly height: number;
}

/** A section drawn so that up in the box is up on the screen; one cut level has its y upward. */
export function lieOf({ x, y }: SectionPicture["axes"]): Lie {
  if (Math.abs(x.z) > STEEP) return { isTurned: true, isDown: x.z < 0 };
  return { isTurned: false, isDown: y.z < -STEEP };
}

/** An axis that rises more than this for each metre stands upright. */
const STEEP = 0.5;

/** The largest frame of a section that fits a width and a height, in whole pixels. */
export function frameIn(window: Rect, lie: Lie, width: number, height: number): Frame {
  const [across, up] = spans(window, lie);
  const scale = Math.min(width / (across.to - across.from), height / (up.to - up.from));
  return { ...lie, window, scale, width: Math.round(scale * (across.to - across.from)), height: Math.round(scale * (up.to - up.from)) };
}

export function toPixels(frame: Frame, { x, y }: Vec2): Vec2 {
  const { isTurned, isDown, window, scale } = frame;
  const [across, up] = spans(window, frame);
  const [h, v] = isTurned ? [y, x] : [x, y];
  return { x: (h - across.from) * scale, y: (isDown ? v - up.from : up.to - v) * scale };
}

export function toMetres(frame: Frame, { x, y }: Vec2): Vec2 {
  const { isTurned, isDown, window, scale } = frame;
  const [across, up] = spans(window, frame);
  const h = across.from + x / scale;
  const v = isDown ? up.from + y / scale : up.to - y / scale;
  return isTurned ? { x: v, y: h } : { x: h, y: v };
}

/** A point moved onto the section where it lies beyond it. */
export function inWindow({ u0, u1, v0, v1 }: Rect, { x, y }: Vec2): Vec2 {
  return { x: Math.min(u1, Math.max(u0, x)), y: Math.min(v1, Math.max(v0, y)) };
}

/** What the section spans along the screen's width and height. */
function spans({ u0, u1, v0, v1 }: Rect, { isTurned }: Lie): readonly [{ readonly from: number; readonly to: number }, { readonly from: number; readonly to: number }] {
  const [x, y] = [{ from: u0, to: u1 }, { from: v0, to: v1 }];
  return isTurned ? [y, x] : [x, y];
}
