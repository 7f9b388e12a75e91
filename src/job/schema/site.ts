import { z } from "zod";
import { day, faceOrPartition, ownId, quantity, words } from "./fields.ts";

const DEGREE = Math.PI / 180;
const temperature = (example: string) => quantity("temperature", example, { least: -80, greatest: 70 });
const share = (example: string) => quantity("ratio", example, { least: 0, greatest: 1 });

export const identity = z.strictObject({
  id: ownId,
  title: words,
  revision: z.string().regex(/^[A-Z0-9]{1,4}$/, "one to four capitals or digits").meta({ examples: ["A"] }),
  date: day,
  drawnBy: words,
  customer: z.strictObject({ name: words, contact: words.optional() }),
  enquiry: z.string().max(2000).optional(),
});

/** A month's means outdoors. Humidity is held above zero, because air without any vapour has no dew point. */
const month = z.strictObject({
  temperature: temperature("-4 °C"),
  humidity: quantity("ratio", "80 %", { least: 0.01, greatest: 1 }),
});

const TWELVE_MONTHS = Array.from({ length: 12 }, () => ({ temperature: "-4 °C", humidity: "80 %" }));

export const site = z.strictObject({
  place: words,
  latitude: quantity("angle", "47.1°", { least: -90 * DEGREE, greatest: 90 * DEGREE }),
  longitude: quantity("angle", "-121.4°", { least: -180 * DEGREE, greatest: 180 * DEGREE }),
  elevation: quantity("length", "2140 m", { least: -500, greatest: 6000 }),
  winterDesign: temperature("-34 °C"),
  summerDesign: z.strictObject({ dryBulb: temperature("35 °C"), wetBulb: temperature("24 °C").optional() }),
  /** Means of each month outdoors. */
  monthly: z
    .array(month)
    .length(12)
    .meta({ description: "twelve months in [ ], January first", examples: [TWELVE_MONTHS] })
    .optional(),
  groundSnow: quantity("pressure", "4.8 kPa", { least: 0, greatest: 50000 }).optional(),
  wind: quantity("speed", "45 m/s", { least: 0, greatest: 120 }).optional(),
  surroundings: z.enum(["open", "sheltered", "marine coast", "desert", "mountain"]),
  /** Direction that the door end looks to, clockwise from north. */
  doorEndFaces: quantity("angle", "180°", { least: 0, greatest: 2 * Math.PI }).optional(),
});

export const codes = z.strictObject({
  basis: z.enum(["US", "Canada", "Europe"]),
  use: z.enum(["laboratory", "electrical room", "control room", "workshop", "office", "bunk room", "storage"]),
});

/** What a room is held at and what is in it. Rooms are named in order from the blind end. */
export const room = z.strictObject({
  id: ownId,
  what: words,
  heatTo: temperature("20 °C").optional(),
  coolTo: temperature("26 °C").optional(),
  /** Relative humidity that the room is held at; else its class says how much vapour its use gives off. */
  humidity: share("50 %").optional(),
  /** Humidity class of ISO 13788, from 1 for stores to 5 for wash rooms and pools. */
  humidityClass: z.int().min(1).max(5).optional(),
  people: z.int().min(0).max(60).default(0),
  airFlow: quantity("airFlow", "120 L/s", { least: 0, greatest: 50 }).optional(),
});

export const fire = z.strictObject({
  /** Foam plastic behind a thermal barrier, as most codes ask for. */
  thermalBarrier: z.boolean().default(true),
  rated: z
    .array(
      z.strictObject({
        face: faceOrPartition,
        rating: quantity("duration", "60 min", { above: 0, greatest: 14400 }),
        from: z.enum(["inside", "outside", "both"]),
        /** Listed design that the shop follows, as its own papers name it. */
        design: words.optional(),
      }),
    )
    .max(20)
    .default([]),
});

const crew = z.strictObject({
  id: ownId,
  what: words,
  people: z.int().min(1).max(40),
  trades: z.array(words).min(1).max(12),
});

export const shop = z.strictObject({
  start: day,
  due: day.optional(),
  hoursPerDay: quantity("duration", "8 h", { above: 0, greatest: 86400 }),
  workDays: z
    .array(z.enum(["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"]))
    .min(1)
    .max(7)
    .default(["Mon", "Tue", "Wed", "Thu", "Fri"]),
  holidays: z.array(day).max(60).default([]),
  crews: z.array(crew).min(1).max(12),
});

export const prices = z.strictObject({
  /** Id of the price book. */
  book: ownId,
  /** In place of the book's own rates. */
  overhead: share("12 %").optional(),
  contingency: share("5 %").optional(),
  margin: quantity("ratio", "18 %", { least: 0, greatest: 0.9 }).optional(),
  tax: share("8 %").optional(),
});

export type Room = z.output<typeof room>;
export type Shop = z.output<typeof shop>;
