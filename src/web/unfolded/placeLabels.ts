import type { Vec2 } from "../../river/screen.ts";

/** A rectangle of the screen, pixels. */
export interface Box {
  readonly x0: number;
  readonly x1: number;
  readonly y0: number;
  readonly y1: number;
}

/** A short text that wants to stand at one of some spots, the best first. Pixels; `half` of its width. */
export interface Label {
  readonly key: string;
  readonly text: string;
  readonly half: number;
  readonly spots: readonly Vec2[];
  /** Where it may not stand, for it would be read as another thing's. */
  readonly not?: readonly Box[];
}

export interface PlacedLabel extends Vec2 {
  readonly key: string;
  readonly text: string;
}

/** Height of a line of the small text, pixels; its foot is a little under the spot. */
const LINE = 12;
const FOOT = 2;

/** Gives each label the first of its spots that is free of what is taken and of the labels before it; one that finds none is left out. */
export function placeLabels(labels: readonly Label[], taken: readonly Box[] = []): readonly PlacedLabel[] {
  const full = [...taken];
  return labels.flatMap(({ key, text, half, spots, not = [] }) => {
    const free = spots.find((spot) => [...full, ...not].every((one) => isApart(boxAt(spot, half), one)));
    if (free === undefined) return [];
    full.push(boxAt(free, half));
    return [{ key, text, ...free }];
  });
}

function boxAt({ x, y }: Vec2, half: number): Box {
  return { x0: x - half, x1: x + half, y0: y + FOOT - LINE, y1: y + FOOT };
}

function isApart(a: Box, b: Box): boolean {
  return a.x0 >= b.x1 || b.x0 >= a.x1 || a.y0 >= b.y1 || b.y0 >= a.y1;
}
