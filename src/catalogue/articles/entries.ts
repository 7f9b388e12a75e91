import type { ArticleRow } from "../rows.ts";
import { demo } from "./demo.ts";

function sleeve(millimetres: number, outside_mm: number, mass: number): ArticleRow {
  const flange = (outside_mm + 60) / 1000;
  const hole = (outside_mm + 4) / 1000;
  return {
    id: `sleeve-${millimetres}`,
    what: `steel pipe sleeve ${millimetres} mm with outside flange, welded`,
    source: demo,
    kind: "sleeve",
    width: flange,
    height: flange,
    depth: 0.2,
    mass,
    rough: { width: hole, height: hole },
    freeArea: (Math.PI / 4) * (millimetres / 1000) ** 2,
  };
}

/** Cable entries and pipe sleeves. `freeArea` is what cables or pipe may fill before packing. */
export const entryArticles: readonly ArticleRow[] = [
  {
    id: "cable-entry-200x150",
    what: "cable entry frame 200 x 150 mm with packing blocks, for a wall",
    source: demo,
    kind: "cable entry",
    width: 0.29,
    height: 0.24,
    depth: 0.08,
    mass: 7,
    rough: { width: 0.21, height: 0.16 },
    freeArea: 0.2 * 0.15,
  },
  {
    id: "cable-entry-fire-200x150",
    what: "fire-rated cable entry frame 200 x 150 mm with packing blocks, for a wall, 60 minutes",
    source: demo,
    kind: "cable entry",
    width: 0.29,
    height: 0.24,
    depth: 0.12,
    mass: 10,
    rough: { width: 0.21, height: 0.16 },
    freeArea: 0.2 * 0.15,
    fireMinutes: 60,
  },
  {
    id: "cable-transit-300x300",
    what: "floor cable transit 300 x 300 mm with packing blocks and bottom plate",
    source: demo,
    kind: "cable entry",
    width: 0.4,
    height: 0.4,
    depth: 0.1,
    mass: 19,
    rough: { width: 0.31, height: 0.31 },
    freeArea: 0.3 * 0.3,
  },
  sleeve(50, 60.3, 1.9),
  sleeve(100, 114.3, 4.3),
];
