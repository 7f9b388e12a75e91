import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { condensingBySubsets } from "../../../test/condensingBySubsets.ts";
import { MONTH_DAYS } from "../months.ts";
import type { VapourLayer } from "./layer.ts";
import type { Wall } from "./mesh.ts";
import { saturationAt } from "./saturation.ts";
import { vapourYear, type VapourYear } from "./vapourYear.ts";
import { vapourState, type WallAirs } from "./vapourState.ts";

const RUN = { seed: 20268, numRuns: 150 };
const DAY = 86_400;
const steel: VapourLayer = { what: "steel", thickness: 0.002, conductivity: 50, mu: null };
const wool: VapourLayer = { what: "mineral wool", thickness: 0.1, conductivity: 0.035, mu: 1 };
const gypsum: VapourLayer = { what: "gypsum", thickness: 0.0125, conductivity: 0.25, mu: 10 };
const wallOf = (...layers: readonly VapourLayer[]): Wall => ({ layers, outsideResistance: 0.04, insideResistance: 0.13 });
const side = (temperature: number, humidity: number) => ({ temperature, vapourPressure: humidity * saturationAt(temperature) });
const airs = (outside: number, inside: number, humidity: number): WallAirs => ({ outside: side(outside, 0.8), inside: side(inside, humidity) });
const sum = (values: readonly number[]): number => values.reduce((total, one) => total + one, 0);
const winterBox = wallOf(steel, wool, gypsum);
const frost = airs(-5, 20, 0.5);
/** As warm outside as in: what is on the steel dries through the gypsum, at 20 °C and 50 %. */
const mild = airs(20, 20, 0.5);
const yearOf = (cold: readonly number[]): VapourYear => vapourYear(winterBox, MONTH_DAYS.map((_, month) => (cold.includes(month) ? frost : mild)));

describe("by hand: the steel box in frost in January, and mild the rest of the year", () => {
  const year = yearOf([0]);

  // Gathers 6.7198e-7 kg/(s m2) over 31 days: 1.79983 kg/m2. Dries at 2e-10 x (2337 - 1168.5) / 0.225 = 1.03867e-6, which
  // is 2.5128 kg/m2 in the 28 days of February: dry within it.
  test("gathers 1.7998 kg/m2 in January and is dry in February", () => {
    expect(year.months[0]!.month).toBe(0);
    expect(Math.abs(year.months[0]!.atEnd / 1.79983 - 1)).toBeLessThan(1e-3);
    expect(year.greatest).toEqual({ amount: year.months[0]!.atEnd, month: 0 });
    expect(year.months[1]!.atEnd).toBe(0);
    expect(year.dries).toBe(true);
    expect(year.planes.map(({ outer, inner }) => `${outer} | ${inner}`)).toEqual(["steel | mineral wool"]);
    const drying = -sum(year.months[1]!.state.rates);
    expect(Math.abs(drying / 1.03867e-6 - 1)).toBeLessThan(1e-3);
    expect(year.months[1]!.state.fromRoom).toBeCloseTo(-drying, 18);
  });

  test("starts in the first cold month wherever it stands, and adds up cold months", () => {
    const winter = yearOf([0, 10, 11]);
    expect(winter.months.map(({ month }) => month)).toEqual([10, 11, 0, 1, 2, 3, 4, 5, 6, 7, 8, 9]);
    expect(Math.abs(winter.greatest!.amount / (6.7198e-7 * 92 * DAY) - 1)).toBeLessThan(1e-3);
    expect(winter.greatest!.month).toBe(0);
    // 5.3412 kg/m2 dry at 1.03867e-6 kg/(s m2) in 59.5 days: 2.5128 in February, the rest in March and a part of April.
    expect(Math.abs(winter.months[3]!.atEnd / (5.3414 - 2.5128) - 1)).toBeLessThan(2e-3);
    expect(winter.months.map(({ atEnd }) => atEnd > 0)).toEqual([true, true, true, true, true, ...Array.from({ length: 7 }, () => false)]);
  });

  test("that stays cold all year never dries, and keeps all that it gathers", () => {
    const cold = yearOf(MONTH_DAYS.map((_, month) => month));
    expect(cold.dries).toBe(false);
    expect(Math.abs(cold.left / (6.7198e-7 * 365 * DAY) - 1)).toBeLessThan(1e-3);
    expect(cold.greatest?.amount).toBe(cold.left);
  });

  test("that is mild all year gathers nothing", () => {
    const dry = yearOf([]);
    expect(dry).toMatchObject({ condenses: false, dries: true, left: 0, planes: [], greatest: undefined });
    expect(dry.months.map(({ month }) => month)).toEqual(MONTH_DAYS.map((_, month) => month));
  });
});

test("of two seasons that gather, the year starts where the wall is dry again at its end", () => {
  // One warm month is too short for what three cold ones leave; the long warm season dries all.
  const year = yearOf([0, 1, 2, 4]);
  expect(yearOf([0, 1, 2]).months[3]!.atEnd).toBeGreaterThan(0);
  expect(year.months[0]!.month).toBe(0);
  expect(year.dries).toBe(true);
  const turned = yearOf([4, 0, 1, 2].map((month) => (month + 8) % 12));
  expect(turned.months[0]!.month).toBe(8);
  expect(turned.dries).toBe(true);
});

describe("any wall in any year", () => {
  test("keeps account of its water, and has no less than none at any plane", () => {
    let [wet, driesOut] = [0, 0];
    fc.assert(
      fc.property(anyWall(), anyYear(), (wall, months) => {
        const year = vapourYear(wall, months);
        const gathered = year.months.flatMap(({ water }) => water.map((one) => one.gathered));
        const scale = Math.max(1e-12, sum(gathered.map(Math.abs)));
        expect(Math.abs(sum(gathered) - year.left)).toBeLessThan(1e-9 * scale);
        for (const { water, atEnd } of year.months) {
          expect(Math.abs(sum(water.map((one) => one.atEnd)) - atEnd)).toBeLessThan(1e-12 * scale);
          for (const one of water) expect(one.atEnd).toBeGreaterThanOrEqual(0);
        }
        expect(year.greatest === undefined).toBe(!year.condenses);
        if (year.condenses) wet += 1;
        if (year.condenses && year.dries) driesOut += 1;
      }),
      RUN,
    );
    expect(wet).toBeGreaterThan(20);
    expect(driesOut).toBeGreaterThan(5);
  });

  test("gathers in its first month what the steady state gives, for the days of the month", () => {
    fc.assert(
      fc.property(anyWall(), anyYear(), (wall, months) => {
        const [first] = vapourYear(wall, months).months;
        const { month, atEnd } = first!;
        const wanted = sum(vapourState(wall, months[month]!).rates) * MONTH_DAYS[month]! * DAY;
        expect(Math.abs(atEnd - wanted)).toBeLessThanOrEqual(1e-9 * Math.max(1e-12, wanted));
      }),
      RUN,
    );
  });

});

test("agrees with steps of two hours, each by trying all subsets of planes, which know no moment of drying", () => {
  const board: VapourLayer = { what: "board", thickness: 0.02, conductivity: 0.1, mu: 20 };
  const open: VapourLayer = { what: "open", thickness: 0.008, conductivity: 0.035, mu: 1 };
  const wall = wallOf({ ...board, mu: 60 }, open, board, open, gypsum);
  const months = MONTH_DAYS.map((_, month) => airs(9 - 18 * Math.cos((month * Math.PI) / 6), 21, 0.55));
  const year = vapourYear(wall, months);
  expect(year.planes.length).toBeGreaterThanOrEqual(2);
  expect(year.dries).toBe(true);
  const step = DAY / 12;
  let water = wall.layers.map(() => 0);
  for (const { month, atEnd } of year.months) {
    for (let time = 0; time < MONTH_DAYS[month]! * DAY; time += step) {
      const rates = condensingBySubsets(wall, months[month]!, new Set(water.flatMap((amount, face) => (amount > 0 ? [face] : []))));
      // What a face would give beyond what it has is the error of the step.
      water = water.map((amount, face) => Math.max(0, amount + rates[face]! * step));
    }
    expect(Math.abs(sum(water) - atEnd)).toBeLessThan(0.005 * year.greatest!.amount);
  }
});

test("outside the domain it throws and names the input", () => {
  expect(() => vapourYear(winterBox, [frost, mild])).toThrow(/months are 2/);
});

function anyWall(): fc.Arbitrary<Wall> {
  const layer = fc.record({
    thickness: fc.double({ min: 0.002, max: 0.2, noNaN: true }),
    conductivity: fc.double({ min: 0.025, max: 1, noNaN: true }),
    mu: fc.oneof({ weight: 6, arbitrary: fc.integer({ min: 0, max: 2500 }).map((k) => 10 ** (k / 1000)) }, { weight: 1, arbitrary: fc.constant(null) }),
  });
  return fc.array(layer, { minLength: 1, maxLength: 4 }).map((layers) => wallOf(...layers.map((one, nr) => ({ what: `layer ${nr + 1}`, ...one }))));
}

/** A year that swings about a mean outside, with a room held at one humidity. */
function anyYear(): fc.Arbitrary<readonly WallAirs[]> {
  const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  return fc.record({ mean: number(0, 22), swing: number(2, 22), humidity: number(0.3, 0.6) }).map(({ mean, swing, humidity }) =>
    MONTH_DAYS.map((_, month) => airs(mean - swing * Math.cos((month * Math.PI) / 6), 21, humidity)),
  );
}
