import { Color } from "three";
import type { SolidLayer } from "../layers.ts";

/** The colours of the stage, read from the tokens that the page has now. */
export interface Palette {
  readonly fill: Readonly<Record<SolidLayer, Color>>;
  readonly line: Readonly<Record<SolidLayer, Color>>;
  readonly picked: Color;
  readonly lit: Color;
  readonly ink: Color;
}

export function readPalette(element: Element): Palette {
  const style = getComputedStyle(element);
  const token = (name: string): Color => new Color(style.getPropertyValue(`--${name}`).trim());
  const all = (kind: "fill" | "line"): Palette["fill"] => ({
    skin: token(`skin-${kind}`),
    frame: token(`frame-${kind}`),
    foam: token(`foam-${kind}`),
    batts: token(`batt-${kind}`),
    studs: token(`stud-${kind}`),
    board1: token(`board-${kind}`),
    board2: token(`board-${kind}`),
    board3: token(`board-${kind}`),
    board4: token(`board-${kind}`),
    trim: token(`trim-${kind}`),
    openings: token(`opening-${kind}`),
    items: token(`item-${kind}`),
  });
  return { fill: all("fill"), line: all("line"), picked: token("accent"), lit: token("lit"), ink: token("ink") };
}
