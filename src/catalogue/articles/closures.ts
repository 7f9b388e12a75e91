import { inch } from "../imperial.ts";
import type { ArticleRow } from "../rows.ts";
import { demo, roughAround } from "./demo.ts";

interface Leaf {
  readonly id: string;
  readonly what: string;
  /** Leaf or leaves, inches; the frame's face adds 2 in at each jamb and at the head. */
  readonly leafWidth: number;
  readonly leafHeight: number;
  readonly leafCount?: 2;
  readonly depth: number;
  readonly mass: number;
  readonly fireMinutes?: number;
  readonly glazed?: boolean;
  readonly transmittance?: number;
}

const FRAME_FACE = 2;
const DOOR_GAP = 0.006;

/** `width` and `height` are the frame's outside; `freeArea` is the leaf's, which the doorway gives when open. */
function door({ leafWidth, leafHeight, leafCount, ...kept }: Leaf): ArticleRow {
  const width = (leafWidth + 2 * FRAME_FACE) * inch;
  const height = (leafHeight + FRAME_FACE) * inch;
  return {
    ...kept,
    source: demo,
    kind: "door",
    width,
    height,
    rough: roughAround(width, height, DOOR_GAP),
    freeArea: leafWidth * inch * leafHeight * inch,
    leaves: { count: leafCount ?? 1, width: (leafWidth * inch) / (leafCount ?? 1) },
  };
}

interface Pane {
  readonly id: string;
  readonly what: string;
  readonly width: number;
  readonly height: number;
  readonly mass: number;
  readonly transmittance: number;
  /** Clear opening in m2; left out where the window does not open. */
  readonly freeArea?: number;
}

const WINDOW_GAP = 0.006;

function window({ width, height, ...kept }: Pane): ArticleRow {
  const size = { width: width * inch, height: height * inch };
  return {
    ...kept,
    ...size,
    source: demo,
    kind: "window",
    depth: 0.083,
    rough: roughAround(size.width, size.height, WINDOW_GAP),
    glazed: true,
  };
}

/** Doors, windows and hatches. */
export const closureArticles: readonly ArticleRow[] = [
  door({ id: "door-steel-36x80", what: "insulated steel door 36 x 80 in, single leaf, frame and sill", leafWidth: 36, leafHeight: 80, depth: 0.122, mass: 62, transmittance: 2.2 }),
  door({ id: "door-steel-glazed-36x80", what: "insulated steel door 36 x 80 in with vision panel", leafWidth: 36, leafHeight: 80, depth: 0.122, mass: 66, transmittance: 2.5, glazed: true }),
  door({ id: "door-fire-90-36x80", what: "steel fire door 36 x 80 in, 90 minutes, with closer and panic bar", leafWidth: 36, leafHeight: 80, depth: 0.122, mass: 88, transmittance: 2.8, fireMinutes: 90 }),
  door({ id: "door-steel-72x84", what: "insulated steel equipment door 72 x 84 in, two leaves", leafWidth: 72, leafHeight: 84, leafCount: 2, depth: 0.122, mass: 128, transmittance: 2.3 }),
  door({ id: "door-interior-32x80", what: "interior door 32 x 80 in, hollow core, steel frame", leafWidth: 32, leafHeight: 80, depth: 0.12, mass: 28 }),
  door({ id: "door-interior-36x80", what: "interior door 36 x 80 in, solid core, steel frame", leafWidth: 36, leafHeight: 80, depth: 0.12, mass: 46 }),
  window({ id: "window-fixed-24x36", what: "fixed window 24 x 36 in, double glazed, thermally broken frame", width: 24, height: 36, mass: 21, transmittance: 2 }),
  window({ id: "window-fixed-36x36", what: "fixed window 36 x 36 in, triple glazed, thermally broken frame", width: 36, height: 36, mass: 38, transmittance: 1.3 }),
  window({ id: "window-fixed-48x36", what: "fixed window 48 x 36 in, triple glazed, thermally broken frame", width: 48, height: 36, mass: 50, transmittance: 1.3 }),
  window({ id: "window-slider-36x36", what: "sliding window 36 x 36 in, double glazed, with insect screen", width: 36, height: 36, mass: 27, transmittance: 2.4, freeArea: 0.34 }),
  window({ id: "window-slider-48x36", what: "sliding window 48 x 36 in, double glazed, with insect screen", width: 48, height: 36, mass: 35, transmittance: 2.4, freeArea: 0.46 }),
  window({ id: "window-escape-36x48", what: "side-hung escape window 36 x 48 in, clear opening 0.62 x 0.95 m, double glazed", width: 36, height: 48, mass: 37, transmittance: 2.2, freeArea: 0.62 * 0.95 }),
  {
    id: "hatch-roof-30x36",
    what: "insulated roof hatch 30 x 36 in with curb",
    source: demo,
    kind: "hatch",
    width: 0.86,
    height: 1.01,
    depth: 0.3,
    mass: 48,
    rough: { width: 30 * inch, height: 36 * inch },
    freeArea: 30 * inch * 36 * inch,
    transmittance: 1.6,
  },
  {
    id: "hatch-wall-24x24",
    what: "insulated wall hatch 24 x 24 in, lockable",
    source: demo,
    kind: "hatch",
    width: 0.66,
    height: 0.66,
    depth: 0.08,
    mass: 16,
    rough: { width: 0.62, height: 0.62 },
    freeArea: 0.56 * 0.56,
    transmittance: 1.8,
  },
];
