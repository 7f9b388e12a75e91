import type { Part, Role, Surface } from "../../river/screen.ts";
import type { LayerId } from "../state/settings.ts";

/** Layers in the order in which they are peeled, from the outside in. */
export const PEELED = [
  "skin", "frame", "foam", "batts", "studs", "board1", "board2", "board3", "board4", "trim", "openings", "items",
] as const satisfies readonly LayerId[];
export type SolidLayer = (typeof PEELED)[number];

/** The layer that a part is peeled with. The bare floor stays with the frame, so that what stands on it never floats alone. */
export function layerOfSolid({ role, layer }: Part, surface: Surface): SolidLayer | undefined {
  if (role === "board" || role === "floor board") return boardLayer(layer, surface);
  return LAYER_OF[role];
}

/** The first layer still there: what peeling takes next; undefined when all are off. */
export function nextToPeel(present: readonly SolidLayer[], hidden: readonly SolidLayer[]): SolidLayer | undefined {
  return PEELED.find((layer) => present.includes(layer) && !hidden.includes(layer));
}

/** The innermost layer that is off: what is put back next; undefined when none is off. */
export function nextToPutBack(present: readonly SolidLayer[], hidden: readonly SolidLayer[]): SolidLayer | undefined {
  return PEELED.findLast((layer) => present.includes(layer) && hidden.includes(layer));
}

/** A partition's far side counts its boards on after the near side's; both sides are peeled at once. */
function boardLayer(layer: number | undefined, { kind, stack, farStack }: Surface): SolidLayer | undefined {
  if (layer === undefined) return undefined;
  const near = stack.boards.length;
  const fromStuds = kind === "partition" && farStack !== undefined && layer > near ? layer - near : layer;
  return BOARDS[Math.min(fromStuds, BOARDS.length) - 1];
}

const BOARDS = ["board1", "board2", "board3", "board4"] as const satisfies readonly SolidLayer[];

const LAYER_OF: Readonly<Partial<Record<Role, SolidLayer>>> = {
  skin: "skin",
  "cargo door": "skin",
  post: "frame",
  rail: "frame",
  "corner fitting": "frame",
  "cross-member": "frame",
  "bare floor": "frame",
  foam: "foam",
  batt: "batts",
  stud: "studs",
  "jamb stud": "studs",
  "cripple stud": "studs",
  track: "studs",
  header: "studs",
  sill: "studs",
  blocking: "studs",
  "corner angle": "studs",
  furring: "studs",
  trim: "trim",
  "opening frame": "openings",
  article: "openings",
  item: "items",
};
