import { apply, defineFormula } from "../../working/formula.ts";
import { given, type Quantity } from "../../working/quantity.ts";
import { source } from "../../working/source.ts";
import { saturationPressure, vapourPressure } from "./saturation.ts";

const CLASSES = source("ISO 13788:2012", "memory", "Annex A, inside humidity classes");

/** How damp a room is: by what its use gives off (class 1 to 5), or held at a relative humidity. */
export type RoomHumidity =
  | { readonly kind: "class"; readonly humidityClass: number }
  | { readonly kind: "held"; readonly humidity: Quantity<"1"> };

/** What a room is held at. `coolTo` is left out where nothing cools it. */
export interface RoomClimate {
  readonly heatTo: Quantity<"degC">;
  readonly coolTo?: Quantity<"degC">;
  readonly humidity: RoomHumidity;
}

/** Means of air outdoors, of a month or at a design hour. */
export interface OutdoorAir {
  readonly temperature: Quantity<"degC">;
  readonly humidity: Quantity<"1">;
}

/** Temperature and vapour pressure on both sides. */
export interface Airs {
  readonly T_e: Quantity<"degC">;
  readonly p_e: Quantity<"Pa">;
  readonly T_i: Quantity<"degC">;
  readonly p_i: Quantity<"Pa">;
}

/** Temperature of a room that is heated and not cooled, °C: never under what it is heated to, else that of the outside. */
export const heatedTemperature = defineFormula({
  id: "moisture.heatedTemperature",
  symbol: "T_i",
  means: "temperature of the room",
  unit: "degC",
  text: "max(T_heat, T_e)",
  takes: { T_heat: "degC", T_e: "degC" },
  source: source("a heated room without sun or gains", "derived"),
  compute: ({ T_heat, T_e }) => Math.max(T_heat, T_e),
});

/** Temperature of a room that is heated and cooled, °C. Throws RangeError where it is cooled to less than it is heated to. */
export const heldTemperature = defineFormula({
  id: "moisture.heldTemperature",
  symbol: "T_i",
  means: "temperature of the room",
  unit: "degC",
  text: "max(T_heat, min(T_cool, T_e))",
  takes: { T_heat: "degC", T_cool: "degC", T_e: "degC" },
  source: source("a heated and cooled room without sun or gains", "derived"),
  compute: ({ T_heat, T_cool, T_e }) => {
    if (!(T_cool >= T_heat)) throw new RangeError(`moisture.heldTemperature: T_cool is ${T_cool} degC and may not be below T_heat, ${T_heat}`);
    return Math.max(T_heat, Math.min(T_cool, T_e));
  },
});

/**
 * Vapour pressure in the room above that outdoors by class, Pa: the upper edge of the class up to 0 °C outdoors, falling
 * evenly to nothing at 20 °C.
 */
export const vapourExcess = defineFormula({
  id: "moisture.vapourExcess",
  symbol: "dp_v",
  means: "vapour pressure in the room above that outdoors",
  unit: "Pa",
  text: "dp_class * max(0, min(1, (20 - T_e) / 20))",
  takes: { dp_class: "Pa", T_e: "degC" },
  source: CLASSES,
  compute: ({ dp_class, T_e }) => dp_class * Math.max(0, Math.min(1, (20 - T_e) / 20)),
});

/** Vapour pressure in a room by its class, Pa. */
export const insideByClass = defineFormula({
  id: "moisture.insideByClass",
  symbol: "p_i",
  means: "vapour pressure in the room by its humidity class",
  unit: "Pa",
  text: "p_e + f_safe * dp_v",
  takes: { p_e: "Pa", f_safe: "1", dp_v: "Pa" },
  source: CLASSES,
  compute: ({ p_e, f_safe, dp_v }) => p_e + f_safe * dp_v,
});

/** Vapour pressure in a room held at a humidity, Pa: nothing dries the room below the air that comes in. */
export const insideHeld = defineFormula({
  id: "moisture.insideHeld",
  symbol: "p_i",
  means: "vapour pressure in the room at its stated humidity, or that outdoors where that is more",
  unit: "Pa",
  text: "max(p_v, p_e)",
  takes: { p_v: "Pa", p_e: "Pa" },
  source: source("vapour balance of a room that is moistened and not dried", "derived"),
  compute: ({ p_v, p_e }) => Math.max(p_v, p_e),
});

/** The airs on both sides of a face: outdoors as given, inside by what the room is held at. */
export function airsAt({ temperature: T_e, humidity }: OutdoorAir, room: RoomClimate): Airs {
  const p_e = outdoors(T_e, humidity);
  const T_i = insideTemperature(T_e, room);
  if (room.humidity.kind === "held") {
    const p_sat = saturationPressure(T_i, "saturation pressure in the room");
    const p_v = apply(vapourPressure, { phi: room.humidity.humidity, p_sat }, { means: "vapour pressure at the stated humidity" });
    return { T_e, p_e, T_i, p_i: apply(insideHeld, { p_v, p_e }) };
  }
  const dp_v = apply(vapourExcess, { dp_class: excessOfClass(room.humidity.humidityClass), T_e });
  return { T_e, p_e, T_i, p_i: apply(insideByClass, { p_e, f_safe: SAFETY, dp_v }) };
}

/** Upper edge of a humidity class, Pa. Throws RangeError where the class is not a whole number 1 to 5. */
export function excessOfClass(humidityClass: number): Quantity<"Pa"> {
  const edge = EDGES[humidityClass - 1];
  if (edge === undefined) throw new RangeError(`humidityClass is ${humidityClass} and has to be a whole number 1 to 5`);
  return given(edge, "Pa", "dp_class", `upper edge of humidity class ${humidityClass}`, { kind: "constant", source: CLASSES });
}

/** 1 stores; 2 offices and shops; 3 homes with few people; 4 homes with many, kitchens, canteens; 5 laundries, pools. */
const EDGES: readonly number[] = [270, 540, 810, 1080, 1360];

const SAFETY = given(1.1, "1", "f_safe", "allowance on the excess of a humidity class", {
  kind: "constant",
  source: source("ISO 13788", "memory", "safety margin on the excess of a class"),
});

function outdoors(T_e: Quantity<"degC">, phi: Quantity<"1">): Quantity<"Pa"> {
  const p_sat = saturationPressure(T_e, "saturation pressure outdoors");
  return apply(vapourPressure, { phi, p_sat }, { symbol: "p_e", means: "vapour pressure outdoors" });
}

function insideTemperature(T_e: Quantity<"degC">, { heatTo, coolTo }: RoomClimate): Quantity<"degC"> {
  return coolTo === undefined
    ? apply(heatedTemperature, { T_heat: heatTo, T_e })
    : apply(heldTemperature, { T_heat: heatTo, T_cool: coolTo, T_e });
}
