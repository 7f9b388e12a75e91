import type { Vec2 } from "../../river/screen.ts";

/** A short text that wants to stand at one of some spots, the best first. Pixels; `half` of its width. */
export interface Label {
  readonly key: string;
  readonly text: string;
  readonly half: number;
  readonly spots: readonly Vec2[];
}

export interface PlacedLabel extends Vec2 {
  readonly key: string;
  readonly text: string;
}

/** Height of a line of the small text, pixels. */
const LINE = 12;

/** Gives each label the first of its spots that is free of the labels before it; one that finds none is left out. */
export function placeLabels(labels: readonly Label[]): readonly PlacedLabel[] {
  const taken: { readonly x: number; readonly y: number; readonly half: number }[] = [];
  return labels.flatMap(({ key, text, half, spots }) => {
    const free = spots.find(({ x, y }) => taken.every((one) => Math.abs(one.x - x) >= one.half + half || Math.abs(one.y - y) >= LINE));
    if (free === undefined) return [];
    taken.push({ ...free, half });
    return [{ key, text, ...free }];
  });
}
