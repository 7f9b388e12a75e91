import type { Build } from "../../../build/build.ts";
import { type Airs, dewPoint, heatedTemperature, heldTemperature } from "../../../physics/moisture.ts";
import { environmentOf, OUTSIDE } from "../cuts/airs.ts";
import { dampRooms, MONTHS } from "../moisture/rooms.ts";

/** The winter design hour, or a month by its mean: 0 January to 11 December. */
export type Hour = "design" | number;

/** The air of an environment at an hour. */
export interface AirThen {
  /** In words: "outside", "bunk room". */
  readonly name: string;
  /** °C */
  readonly temperature: number;
  readonly isHeated: boolean;
  /** °C; undefined where nothing says how damp the air is. */
  readonly dewPoint: number | undefined;
}

/**
 * The airs of all environments at an hour, by id. A room that is not heated counts as the outside. Undefined for a month of a
 * site that states no monthly means. Throws RangeError for a number that is no month.
 */
export function airsThen(build: Build, hour: Hour): ReadonlyMap<string, AirThen> | undefined {
  if (hour !== "design" && MONTHS[hour] === undefined) throw new RangeError(`hour is ${hour} and has to be a month 0 to 11 or "design"`);
  const { winterDesign, monthly } = build.job.site;
  const outside = hour === "design" ? winterDesign : monthly?.[hour]?.temperature;
  if (outside === undefined) return undefined;
  const damp = new Map(dampRooms(build).rooms.map(({ environment, months, design }) => [environment, hour === "design" ? design : months?.[hour]]));
  const rooms = build.rooms.map((placed): readonly [string, AirThen] => {
    const environment = environmentOf(placed);
    const airs: Airs | undefined = damp.get(environment);
    const { heatTo, coolTo } = placed.room ?? {};
    const temperature = heatTo === undefined ? outside : held(outside, heatTo, coolTo);
    return [environment, { name: placed.name, temperature, isHeated: heatTo !== undefined, dewPoint: airs === undefined ? undefined : dewPoint(airs.p_i).value }];
  });
  return new Map([[OUTSIDE, { name: OUTSIDE, temperature: outside, isHeated: false, dewPoint: undefined }], ...rooms]);
}

function held(T_e: number, T_heat: number, T_cool: number | undefined): number {
  return T_cool === undefined ? heatedTemperature.compute({ T_heat, T_e }) : heldTemperature.compute({ T_heat, T_cool, T_e });
}
