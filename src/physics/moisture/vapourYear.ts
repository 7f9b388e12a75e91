import { MONTH_DAYS, SECONDS_PER_DAY } from "../months.ts";
import { meshOf, type Mesh, type Plane, type Wall } from "./mesh.ts";
import { nth } from "./nth.ts";
import { stateOf, type VapourState, type WallAirs } from "./vapourState.ts";

/** Water at a plane, kg/m2. */
export interface WaterAt {
  readonly plane: Plane;
  /** Gathered in the month; below zero where it dried. */
  readonly gathered: number;
  /** There at the end of the month. */
  readonly atEnd: number;
}

export interface VapourMonth {
  /** 0 for January. */
  readonly month: number;
  /** Planes that held water in the month, from outside in. */
  readonly water: readonly WaterAt[];
  /** In all planes at the end of the month, kg/m2. */
  readonly atEnd: number;
  /** The state in which the month begins. */
  readonly state: VapourState;
}

/** A year of vapour through a wall. Amounts in kg/m2. */
export interface VapourYear {
  /** Twelve months, from the first that gathers water in a dry wall; from January where none does. */
  readonly months: readonly VapourMonth[];
  readonly condenses: boolean;
  /** Planes that held water at any time, from outside in. */
  readonly planes: readonly Plane[];
  /** Most water in all planes together, and the month that reaches it; undefined where nothing condenses. */
  readonly greatest: { readonly amount: number; readonly month: number } | undefined;
  /** Water left at the end of the year. */
  readonly left: number;
  /** All that the year gathers dries within it. */
  readonly dries: boolean;
}

/**
 * Vapour through a wall month by month (ISO 13788, Glaser), January first, with what has gathered drying at its plane
 * until it is gone; a plane that dries out within a month changes the state from that moment. The year starts in a month
 * that condenses after one that does not; of several such starts, one after which the wall is dry again, if there is one.
 * Throws RangeError where there are not twelve months, or as `vapourState`.
 */
export function vapourYear(wall: Wall, months: readonly WallAirs[]): VapourYear {
  if (months.length !== 12) throw new RangeError(`vapourYear: months are ${months.length} and have to be twelve`);
  const mesh = meshOf(wall);
  const condenses = months.map((airs) => stateOf(mesh, airs, new Set()).rates.some((rate) => rate > 0));
  const starts = condenses.flatMap((wet, month) => (wet && condenses[(month + 11) % 12] === false ? [month] : []));
  const years = (starts.length === 0 ? [0] : starts).map((start) => yearFrom(mesh, months, start));
  return years.find(({ dries }) => dries) ?? nth(years, 0);
}

function yearFrom(mesh: Mesh, months: readonly WallAirs[], start: number): VapourYear {
  const water = mesh.planes.map(() => 0);
  const everWet = new Set<number>();
  let greatest: { amount: number; month: number } | undefined;
  const run = MONTH_DAYS.map((_, after) => {
    const month = (start + after) % 12;
    const airs = nth(months, month);
    const before = [...water];
    const wet = new Set<number>(wetPlanes(water));
    const state = stateOf(mesh, airs, wet);
    passMonth(mesh, airs, nth(MONTH_DAYS, month) * SECONDS_PER_DAY, water, (now) => {
      for (const plane of wetPlanes(now)) wet.add(plane);
      const amount = total(now);
      if (amount > 0 && (greatest === undefined || amount > greatest.amount)) greatest = { amount, month };
    });
    for (const plane of wet) everWet.add(plane);
    const held = [...wet].toSorted((a, b) => a - b);
    return {
      month,
      state,
      atEnd: total(water),
      water: held.map((at) => ({ plane: nth(mesh.planes, at), gathered: nth(water, at) - nth(before, at), atEnd: nth(water, at) })),
    };
  });
  const left = total(water);
  return {
    months: run,
    condenses: everWet.size > 0,
    planes: mesh.planes.filter((_, at) => everWet.has(at)),
    greatest,
    left,
    dries: left === 0,
  };
}

/** Lets a month pass over the water at each plane, which is changed in place; tells it after each change of state. */
function passMonth(mesh: Mesh, airs: WallAirs, seconds: number, water: number[], tell: (water: readonly number[]) => void): void {
  let remaining = seconds;
  // Each round but the last dries a plane out, and a plane that has dried out stays dry for the rest of the month.
  for (let round = 0; remaining > 0; round += 1) {
    if (round > mesh.planes.length) throw new Error("a plane that had dried out became wet again under the same airs");
    const { rates } = stateOf(mesh, airs, new Set(wetPlanes(water)));
    const dryAfter = rates.map((rate, at) => (rate < 0 && nth(water, at) > 0 ? nth(water, at) / -rate : Infinity));
    const step = Math.min(remaining, ...dryAfter);
    for (const [at, rate] of rates.entries()) {
      // A plane whose time has come is dry, whatever the last digit of the product says.
      water[at] = nth(dryAfter, at) <= step * (1 + 1e-12) ? 0 : nth(water, at) + rate * step;
    }
    tell(water);
    remaining -= step;
  }
}

function wetPlanes(water: readonly number[]): readonly number[] {
  return water.flatMap((amount, at) => (amount > 0 ? [at] : []));
}

function total(water: readonly number[]): number {
  return water.reduce((sum, amount) => sum + amount, 0);
}
