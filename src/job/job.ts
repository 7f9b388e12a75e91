import { z } from "zod";
import { buildUp, coatList, floorLayers } from "./schema/buildUp.ts";
import { buildUpName, quantity, rowOf } from "./schema/fields.ts";
import { item, opening, partition, supplied } from "./schema/opening.ts";
import { codes, fire, identity, prices, room, shop, site } from "./schema/site.ts";

export type { BuildUp, FloorLayers } from "./schema/buildUp.ts";
export type { Item, Opening, Partition } from "./schema/opening.ts";
export type { Room, Shop } from "./schema/site.ts";

/** The six surfaces of the box. Left and right are as seen standing outside, facing the cargo doors. */
export const FACES = ["left", "right", "blindEnd", "doorEnd", "roof", "floor"] as const;
export type FaceId = (typeof FACES)[number];

export const JOB_FORMAT = "cornerpost-job";
export const JOB_VERSION = 1;

const sideFace = z.strictObject({
  buildUp: buildUpName.optional(),
  studsFrom: z.enum(["blind end", "door end"]).default("blind end"),
});
const blindEndFace = z.strictObject({
  buildUp: buildUpName.optional(),
  /** The side wall from which the pitch starts. */
  studsFrom: z.enum(["left", "right"]).default("left"),
});
const doorEndFace = z.strictObject({
  /** Whether the cargo doors go on working after the conversion. */
  cargoDoors: z.enum(["working", "fixed shut"]),
  /** Layers on the inside of each leaf. */
  leafLining: buildUpName.optional(),
  /** A framed wall inside the cargo doors. */
  buildUp: buildUpName.optional(),
  studsFrom: z.enum(["left", "right"]).default("left"),
});

/** The job file: what the customer wants. Every quantity is text with its unit; reading turns it into SI numbers. */
export const jobSchema = z
  .strictObject({
    $schema: z.string().optional(),
    format: z.literal(JOB_FORMAT),
    version: z.literal(JOB_VERSION),
    job: identity,
    units: z.enum(["metric", "imperial"]),
    site,
    codes,
    box: z.strictObject({
      row: rowOf("boxes"),
      condition: z.enum(["new", "one trip", "cargo worthy", "as is"]),
      /** From the plate of the box in hand, in place of the catalogue's. */
      tare: quantity("mass", "3900 kg", { above: 0, greatest: 10000 }).optional(),
      greatestGross: quantity("mass", "30480 kg", { above: 0, greatest: 50000 }).optional(),
    }),
    buildUps: z.record(z.string().regex(/^[A-Za-z][A-Za-z0-9 -]{0,39}$/), buildUp),
    faces: z.strictObject({
      left: sideFace,
      right: sideFace,
      blindEnd: blindEndFace,
      doorEnd: doorEndFace,
      roof: sideFace,
    }),
    /** Ceiling boards go up first and stand on the wall boards; otherwise they are cut in between. */
    ceilingFirst: z.boolean().default(true),
    floor: floorLayers,
    partitions: z.array(partition).max(6).default([]),
    rooms: z.array(room).min(1).max(7),
    openings: z.array(opening).max(60).default([]),
    items: z.array(item).max(120).default([]),
    supplied: z.array(supplied).max(40).default([]),
    fire: fire.prefault({}),
    coatings: z
      .strictObject({ outside: coatList, roof: coatList, underside: coatList })
      .prefault({}),
    prices,
    shop,
    notes: z.array(z.string().max(1000)).max(60).default([]),
  })
  .meta({ title: "Cornerpost job file" });

/** A job as read: intent in SI numbers. */
export type Job = z.output<typeof jobSchema>;
