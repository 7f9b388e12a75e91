import type { ArticleRow } from "../rows.ts";
import { demo } from "./demo.ts";

interface Split {
  readonly id: string;
  readonly what: string;
  readonly size: readonly [width: number, height: number, depth: number];
  readonly mass: number;
}

/** The part in the room cools and heats; `power` is what the pair draws when cooling. */
function indoor({ size, ...kept }: Split, cooling: number, heating: number, power: number): ArticleRow {
  const [width, height, depth] = size;
  return { ...kept, source: demo, kind: "split unit", width, height, depth, rough: null, cooling, heating, power };
}

/** The part outside hangs on the wall or stands by it, and works only with its indoor part. */
function outdoor({ size, ...kept }: Split): ArticleRow {
  const [width, height, depth] = size;
  return { ...kept, source: demo, kind: "split unit", width, height, depth, rough: null };
}

function heater(id: string, what: string, size: readonly [number, number, number], mass: number, power: number): ArticleRow {
  const [width, height, depth] = size;
  return { id, what, source: demo, kind: "heater", width, height, depth, mass, rough: null, heating: power, power };
}

/** Split units and heaters. */
export const temperatureArticles: readonly ArticleRow[] = [
  indoor({ id: "split-3-5-kw-indoor", what: "split unit 3.5 kW, indoor part, wall hung", size: [0.86, 0.3, 0.22], mass: 11 }, 3500, 4000, 1000),
  outdoor({ id: "split-3-5-kw-outdoor", what: "split unit 3.5 kW, outdoor part", size: [0.85, 0.56, 0.33], mass: 32 }),
  indoor({ id: "split-7-kw-indoor", what: "split unit 7 kW, indoor part, wall hung", size: [1.1, 0.34, 0.25], mass: 16 }, 7000, 8000, 2200),
  outdoor({ id: "split-7-kw-outdoor", what: "split unit 7 kW, outdoor part", size: [0.92, 0.72, 0.37], mass: 52 }),
  indoor({ id: "split-7-kw-marine-indoor", what: "split unit 7 kW with coated coils for salt air, indoor part", size: [1.1, 0.34, 0.25], mass: 17 }, 7000, 8000, 2250),
  outdoor({ id: "split-7-kw-marine-outdoor", what: "split unit 7 kW with coated coils and stainless case for salt air, outdoor part", size: [0.92, 0.72, 0.37], mass: 56 }),
  heater("heater-1-5-kw", "electric wall heater 1.5 kW with thermostat", [0.75, 0.4, 0.09], 6, 1500),
  heater("heater-3-kw", "electric fan heater 3 kW with thermostat", [0.45, 0.4, 0.2], 9, 3000),
  heater("heater-5-kw", "electric unit heater 5 kW, ceiling hung, with thermostat", [0.42, 0.42, 0.26], 14, 5000),
];
