import type { Build, PlacedRoom } from "../../../build/build.ts";
import { pathText } from "../../../job/path.ts";
import { type Airs, airsAt, type OutdoorAir, type RoomClimate } from "../../../physics/moisture.ts";
import { given, type Quantity } from "../../../working/quantity.ts";
import { commonPractice } from "../../../working/source.ts";
import { environmentOf } from "../cuts/airs.ts";

/** A heated room as moisture meets it. */
export interface DampRoom {
  readonly placed: PlacedRoom;
  readonly environment: string;
  readonly heatTo: Quantity<"degC">;
  /** Airs of the twelve months; undefined where the site states none. */
  readonly months: readonly Airs[] | undefined;
  readonly design: Airs;
  /** People stay in it. */
  readonly stayedIn: boolean;
}

/** A heated room of which nothing says how damp it is. */
export interface UnstatedRoom {
  readonly placed: PlacedRoom;
  readonly environment: string;
  readonly field: string;
}

/** Outdoor humidity at the winter design hour: cold air holds so little vapour that the figure hardly counts. */
const DESIGN_HUMIDITY = given(0.9, "1", "phi", "relative humidity outdoors at the winter design hour", { kind: "constant", source: commonPractice });

/** The heated rooms with their airs, and those that state no humidity. */
export function dampRooms(build: Build): { readonly rooms: readonly DampRoom[]; readonly unstated: readonly UnstatedRoom[] } {
  const { job } = build;
  const heated = build.rooms.flatMap((placed, index) => {
    const { room } = placed;
    return room?.heatTo === undefined ? [] : [{ placed, room, index, heatTo: atJob(room.heatTo, "degC", "T_heat", `temperature that ${room.what} is heated to`, ["rooms", index, "heatTo"]) }];
  });
  const rooms: DampRoom[] = [];
  const unstated: UnstatedRoom[] = [];
  const design: OutdoorAir = {
    temperature: atJob(job.site.winterDesign, "degC", "T_e", "outside temperature at the winter design hour", ["site", "winterDesign"]),
    humidity: DESIGN_HUMIDITY,
  };
  const outdoors = job.site.monthly?.map((month, at): OutdoorAir => ({
    temperature: atJob(month.temperature, "degC", "T_e", `mean temperature outdoors, ${MONTHS[at]}`, ["site", "monthly", at, "temperature"]),
    humidity: atJob(month.humidity, "1", "phi", `mean humidity outdoors, ${MONTHS[at]}`, ["site", "monthly", at, "humidity"]),
  }));
  for (const { placed, room, index, heatTo } of heated) {
    const humidity = humidityOf(room, index);
    if (humidity === undefined) {
      unstated.push({ placed, environment: environmentOf(placed), field: `${pathText(["rooms", index])}.humidity` });
      continue;
    }
    const cooled = room.coolTo === undefined ? {} : { coolTo: atJob(room.coolTo, "degC", "T_cool", `temperature that ${room.what} is cooled to`, ["rooms", index, "coolTo"]) };
    const climate: RoomClimate = { heatTo, humidity, ...cooled };
    rooms.push({
      placed,
      environment: environmentOf(placed),
      heatTo,
      months: outdoors?.map((one) => airsAt(one, climate)),
      design: airsAt(design, climate),
      stayedIn: room.people > 0,
    });
  }
  return { rooms, unstated };
}

export const MONTHS = [
  "January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December",
] as const;

function humidityOf({ what, humidity, humidityClass }: NonNullable<PlacedRoom["room"]>, index: number): RoomClimate["humidity"] | undefined {
  if (humidity !== undefined) return { kind: "held", humidity: atJob(humidity, "1", "phi", `relative humidity of ${what}`, ["rooms", index, "humidity"]) };
  return humidityClass === undefined ? undefined : { kind: "class", humidityClass };
}

function atJob<U extends string>(value: number, unit: U, symbol: string, means: string, path: readonly PropertyKey[]): Quantity<U> {
  return given(value, unit, symbol, means, { kind: "job", path: pathText(path) });
}
