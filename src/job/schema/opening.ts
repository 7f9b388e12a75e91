import { z } from "zod";
import { buildUpName, faceOrPartition, gap, ownId, place, quantity, rowOf, size, words } from "./fields.ts";

export const OPENING_KINDS = [
  "personnel door", "window", "fan", "intake", "cable entry", "pipe sleeve", "split-unit lines", "hatch",
] as const;

/** How a leaf turns; left and right as seen from outside (from the door end, for a partition). */
const swing = z.strictObject({
  hinge: z.enum(["left", "right"]),
  opens: z.enum(["out", "in"]),
  angle: quantity("angle", "90°", { above: 0, greatest: Math.PI }).prefault("90°"),
});

/** The hollow or angle frame welded into the skin around the clear opening. */
const frame = z.strictObject({ row: rowOf("sections") });

export const opening = z.strictObject({
  id: ownId,
  kind: z.enum(OPENING_KINDS),
  what: words.optional(),
  face: faceOrPartition,
  /** Lower left corner of the clear opening as seen from outside. On roof and floor: nearest the blind end and the left wall; `up` is then the distance across. */
  at: z.strictObject({ along: place("1200 mm"), up: place("900 mm") }),
  /** Clear opening inside the frame; left out where the article says it. */
  size: z.strictObject({ width: size("36 in"), height: size("80 in") }).optional(),
  article: rowOf("articles").optional(),
  /** Damper, screen, louvre and the like that stand in the same opening. */
  fittings: z.array(rowOf("articles")).max(6).default([]),
  frame: frame.optional(),
  /** Trim around the opening on the lining. */
  trim: rowOf("sections").optional(),
  swing: swing.optional(),
  /** Closer, panic bar, lock and the like, for the opening schedule. */
  hardware: z.array(words).max(12).default([]),
  fireRating: quantity("duration", "60 min", { least: 0, greatest: 14400 }).optional(),
  /** True where people leave by it in an emergency. */
  escape: z.boolean().default(false),
});

const clearSpace = z.strictObject({
  front: gap("1 m").prefault("0 mm"),
  back: gap("0 mm").prefault("0 mm"),
  sides: gap("0 mm").prefault("0 mm"),
  above: gap("0 mm").prefault("0 mm"),
});

/** Something placed in the box. Length runs along the box, width across it. */
export const item = z.strictObject({
  id: ownId,
  what: words,
  article: rowOf("articles").optional(),
  size: z.strictObject({ length: size("900 mm"), width: size("600 mm"), height: size("2 m") }),
  mass: quantity("mass", "350 kg", { above: 0, greatest: 40000 }),
  /** Corner nearest the blind end and the left wall, from the inside planes; `up` from the finished floor. */
  at: z.strictObject({ along: place("3 m"), across: place("200 mm"), up: gap("0 mm").prefault("0 mm") }),
  /** The side that people work at. */
  front: z.enum(["blindEnd", "doorEnd", "left", "right"]).default("right"),
  clear: clearSpace.prefault({}),
  heat: quantity("power", "450 W", { least: 0, greatest: 1e6 }).optional(),
  fixedTo: z.enum(["floor", "wall", "ceiling", "loose"]).default("floor"),
});

/** What leaves with the box but stands beside it, as the outdoor part of a split unit: bought, not placed and not weighed. */
export const supplied = z.strictObject({
  article: rowOf("articles"),
  count: z.int().min(1).max(100).default(1),
});

export const partition = z.strictObject({
  id: ownId,
  what: words.optional(),
  /** Middle of the partition's studs, along the box from the blind end's inside plane. */
  at: place("4 m"),
  buildUp: buildUpName,
  /** Boards on the side toward the blind end; the build-up's own boards stand on the side toward the door end. Left out: the same on both. */
  blindSide: buildUpName.optional(),
  studsFrom: z.enum(["left", "right"]).default("left"),
});

export type OpeningKind = (typeof OPENING_KINDS)[number];
export type Opening = z.output<typeof opening>;
export type Item = z.output<typeof item>;
export type Partition = z.output<typeof partition>;
