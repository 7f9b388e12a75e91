import { z } from "zod";
import { gap, rowOf, size } from "./fields.ts";

/** Half the width of a box: what says more has slipped in its unit, m. */
const THICKEST_FOAM = 1.2;

/** Foam sprayed on the skin; the thickness counts from the inside plane, the profile's troughs come on top. */
const foam = z.strictObject({
  row: rowOf("foams"),
  thickness: size("3 in", THICKEST_FOAM),
});

/** Studs in tracks. `standOff` is the gap between the inside plane and the stud's back, filled with foam. */
const studs = z.strictObject({
  row: rowOf("sections"),
  track: rowOf("sections"),
  pitch: size("16 in"),
  standOff: gap("1 in", 0.5).prefault("0 in"),
  /** Clear distance kept from a corner's stud plane to the first stud, for the foam nozzle. */
  cornerPull: gap("3 in", 0.5).prefault("3 in"),
});

/** Wool between the studs, flush with their inner surface. Foam may lie behind it. */
const batts = z.strictObject({ row: rowOf("batts") });

/** Bars along the inner surface of the studs, square to them. Temporary bars guide the foam and come off again. */
const furring = z.strictObject({
  row: rowOf("sections"),
  pitch: size("4 ft"),
  temporary: z.boolean().default(false),
});

const boardLayer = z.strictObject({
  row: rowOf("boards"),
  /** Long side along the studs, or across them. */
  lay: z.enum(["along studs", "across studs"]).default("along studs"),
});

const coats = z.strictObject({ row: rowOf("coatings"), coats: z.int().min(1).max(6) });

/** The layers on a face from the skin inward. */
export const buildUp = z.strictObject({
  what: z.string().max(200),
  foam: foam.optional(),
  studs: studs.optional(),
  batts: batts.optional(),
  furring: furring.optional(),
  boards: z.array(boardLayer).max(4).default([]),
  paint: z.array(coats).max(4).default([]),
});

/** Floor layers from the bare floor up. */
export const floorLayers = z.strictObject({
  /** Whether the studs stand on the floor layers or the layers are cut to the finished walls. */
  laid: z.enum(["before walls", "after walls"]).default("after walls"),
  layers: z.array(boardLayer).max(4).default([]),
  /** Sprayed from below against the bare floor, between the cross-members. */
  foam: foam.optional(),
});

export const coatList = z.array(coats).max(4).default([]);

export type BuildUp = z.output<typeof buildUp>;
export type FloorLayers = z.output<typeof floorLayers>;
