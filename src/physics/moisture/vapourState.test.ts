import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { condensingBySubsets } from "../../../test/condensingBySubsets.ts";
import { nth } from "./nth.ts";
import type { VapourLayer } from "./layer.ts";
import { meshOf, type Wall } from "./mesh.ts";
import { saturationAt } from "./saturation.ts";
import { vapourState, type VapourState, type WallAirs } from "./vapourState.ts";


const RUN = { seed: 20267, numRuns: 400 };
const steel: VapourLayer = { what: "steel", thickness: 0.002, conductivity: 50, mu: null };
const wool: VapourLayer = { what: "mineral wool", thickness: 0.1, conductivity: 0.035, mu: 1 };
const gypsum: VapourLayer = { what: "gypsum", thickness: 0.0125, conductivity: 0.25, mu: 10 };
const wallOf = (...layers: readonly VapourLayer[]): Wall => ({ layers, outsideResistance: 0.04, insideResistance: 0.13 });
const air = (temperature: number, humidity: number) => ({ temperature, vapourPressure: humidity * saturationAt(temperature) });
const total = (rates: readonly number[]): number => rates.reduce((sum, rate) => sum + rate, 0);
const condensing = ({ rates, planes }: VapourState): readonly string[] =>
  planes.filter((_, at) => nth(rates, at) > 0).map(({ outer, inner }) => `${outer} | ${inner}`);

describe("closed form: a steel box with wool, 20 °C and 50 % inside, -5 °C outside", () => {
  const state = vapourState(wallOf(steel, wool, gypsum), { outside: air(-5, 0.8), inside: air(20, 0.5) });

  // Plain layers in series worked by hand: R 3.07718, plane at -4.6747 °C, 1168.48 Pa against 412.49 Pa over 0.225 m of air.
  test("gathers 6.7198e-7 kg/(s m2), 58.06 g/m2 a day, all of it on the steel", () => {
    expect(condensing(state)).toEqual(["steel | mineral wool"]);
    expect(nth(state.temperatures, 1)).toBeCloseTo(-4.6747, 3);
    expect(Math.abs(nth(state.saturation, 1) / 412.49 - 1)).toBeLessThan(1e-3);
    expect(Math.abs(total(state.rates) / 6.7198e-7 - 1)).toBeLessThan(1e-3);
    expect(Math.abs((total(state.rates) * 86400) / 0.05806 - 1)).toBeLessThan(1e-3);
  });

  test("takes all of it from the room; none passes the steel", () => {
    expect(state.fromRoom).toBeCloseTo(total(state.rates), 20);
    expect(state.toOutside).toBe(0);
    expect(nth(state.planes, 1).depth).toBe(0.002);
    expect(state.wetSurfaces).toEqual({ outside: false, inside: false });
  });

  test("a film of 50 m under the gypsum, or foam in place of the wool, cuts it by its share of air", () => {
    const film: VapourLayer = { what: "film", thickness: 0.0002, conductivity: 0.33, airThickness: 50 };
    const airs = { outside: air(-5, 0.8), inside: air(20, 0.5) };
    expect(total(state.rates) / total(vapourState(wallOf(steel, wool, film, gypsum), airs).rates)).toBeCloseTo(50.225 / 0.225, 0);
    const foam: VapourLayer = { what: "foam", thickness: 0.1, conductivity: 0.035, mu: 60 };
    expect(total(state.rates) / total(vapourState(wallOf(steel, foam, gypsum), airs).rates)).toBeCloseTo(6.125 / 0.225, 6);
  });
});

describe("the line against all subsets of planes", () => {
  test("two planes at once: a vapour-open layer between two that are not, where the enumeration finds both", () => {
    const board: VapourLayer = { what: "board", thickness: 0.02, conductivity: 0.1, mu: 50 };
    const open: VapourLayer = { what: "open", thickness: 0.008, conductivity: 0.035, mu: 1 };
    const tile: VapourLayer = { what: "tile", thickness: 0.01, conductivity: 1, mu: 200 };
    const wall = wallOf(tile, open, board, open, gypsum);
    const airs = { outside: air(-10, 0.8), inside: air(20, 0.7) };
    const state = vapourState(wall, airs);
    expect(condensing(state).length).toBeGreaterThanOrEqual(2);
    expectSameAs(state, wall, airs);
  });

  test("any wall of up to five layers, vapour-tight ones among them, in any airs", () => {
    let [wet, severalPlanes] = [0, 0];
    fc.assert(
      fc.property(anyWall(5, 0.24), anyAirs(), (wall, airs) => {
        const state = vapourState(wall, airs);
        expectSameAs(state, wall, airs);
        const planes = condensing(state).length;
        if (planes > 0) wet += 1;
        if (planes > 1) severalPlanes += 1;
      }),
      RUN,
    );
    expect(wet).toBeGreaterThan(50);
    expect(severalPlanes).toBeGreaterThan(5);
  });
});

describe("any wall", () => {
  const thick = anyWall(6, 6);

  test("is nowhere above saturation, gathers nowhere less than nothing, and loses no vapour", () => {
    fc.assert(
      fc.property(thick, anyAirs(), (wall, airs) => {
        const { pressures, saturation, rates, fromRoom, toOutside } = vapourState(wall, airs);
        pressures.forEach((p, at) => {
          if (p !== undefined) expect(p).toBeLessThanOrEqual(nth(saturation, at) * (1 + 1e-12));
        });
        for (const rate of rates) expect(rate).toBeGreaterThanOrEqual(0);
        const scale = Math.abs(fromRoom) + Math.abs(toOutside) + total(rates);
        expect(Math.abs(fromRoom - toOutside - total(rates))).toBeLessThanOrEqual(1e-12 * scale);
      }),
      RUN,
    );
  });

  test("gathers no less when the room is damper", () => {
    fc.assert(
      fc.property(thick, anyAirs(), fc.double({ min: 1, max: 2, noNaN: true }), (wall, airs, times) => {
        const { inside, outside } = airs;
        const damper = { outside, inside: { ...inside, vapourPressure: inside.vapourPressure * times } };
        const before = total(vapourState(wall, airs).rates);
        expect(total(vapourState(wall, damper).rates)).toBeGreaterThanOrEqual(before * (1 - 1e-9));
      }),
      RUN,
    );
  });

  test("turned round with its airs gathers the same in mirrored planes", () => {
    fc.assert(
      fc.property(thick, anyAirs(), (wall, airs) => {
        const turned = { layers: wall.layers.toReversed(), outsideResistance: wall.insideResistance, insideResistance: wall.outsideResistance };
        const state = vapourState(wall, airs);
        const mirror = vapourState(turned, { outside: airs.inside, inside: airs.outside });
        const scale = Math.max(1e-12, total(state.rates));
        state.rates.forEach((rate, at) => expect(Math.abs(nth(mirror.rates, state.rates.length - 1 - at) - rate)).toBeLessThan(1e-6 * scale));
        expect(Math.abs(mirror.fromRoom + state.toOutside)).toBeLessThan(1e-6 * Math.max(1e-12, Math.abs(state.toOutside)));
      }),
      RUN,
    );
  });
});

test("planes lie on the layers' faces and cut layers over 0.25 m2K/W into equal slices", () => {
  const { planes, shares } = meshOf(wallOf(steel, wool, gypsum));
  expect(planes.map(({ depth }) => depth).slice(0, 2)).toEqual([0, 0.002]);
  expect(planes.filter(({ outer, inner }) => outer === "mineral wool" && inner === "mineral wool")).toHaveLength(11);
  expect(planes.at(-1)).toEqual({ depth: expect.closeTo(0.1145, 12) as number, outer: "gypsum", inner: "room" });
  expect(nth(shares, 0)).toBeCloseTo(0.04 / 3.07718, 5);
});

test("between two vapour-tight layers nothing is known of the vapour, and nothing condenses", () => {
  const { pressures, rates } = vapourState(wallOf(steel, wool, steel), { outside: air(-20, 0.9), inside: air(20, 0.9) });
  expect(pressures.slice(1, -1).every((p) => p === undefined)).toBe(true);
  expect(total(rates)).toBe(0);
});

test("a surface that is wet itself is told, and the wall starts from saturated air there", () => {
  const single = vapourState(wallOf(steel, gypsum), { outside: air(-20, 0.8), inside: air(20, 0.9) });
  expect(single.wetSurfaces).toEqual({ outside: false, inside: true });
  expect(single.pressures.at(-1)).toBe(single.saturation.at(-1));
});

test("outside the domain it throws and names the input", () => {
  const airs = { outside: air(-5, 0.8), inside: air(20, 0.5) };
  expect(() => vapourState(wallOf(), airs)).toThrow(/layers/);
  expect(() => vapourState({ ...wallOf(wool), insideResistance: 0 }, airs)).toThrow(/insideResistance/);
  expect(() => vapourState(wallOf({ ...wool, thickness: Number.NaN }), airs)).toThrow(/thickness/);
  expect(() => vapourState(wallOf({ ...wool, conductivity: 0 }), airs)).toThrow(/lambda/);
  expect(() => vapourState(wallOf({ ...wool, thickness: 100 }), airs)).toThrow(/resistance of mineral wool/);
  expect(() => vapourState(wallOf(wool), { ...airs, inside: { temperature: Number.NaN, vapourPressure: 1 } })).toThrow(/inside.temperature/);
  expect(() => vapourState(wallOf(wool), { ...airs, outside: { temperature: 0, vapourPressure: -1 } })).toThrow(/outside.vapourPressure/);
});

function expectSameAs(state: VapourState, wall: Wall, airs: WallAirs): void {
  const found = condensingBySubsets(wall, airs);
  const scale = Math.max(1e-13, total(state.rates));
  found.forEach((rate, at) => expect(Math.abs(nth(state.rates, at) - rate)).toBeLessThan(1e-6 * scale));
}

/** Walls of layers up to a thermal resistance each, some of them vapour-tight. */
function anyWall(most: number, mostResistance: number): fc.Arbitrary<Wall> {
  const layer = fc.record({
    thickness: fc.double({ min: 0.001, max: 0.2, noNaN: true }),
    resistance: fc.double({ min: 0.001, max: mostResistance, noNaN: true }),
    mu: fc.oneof({ weight: 8, arbitrary: fc.integer({ min: 0, max: 3000 }).map((k) => 10 ** (k / 1000)) }, { weight: 1, arbitrary: fc.constant(null) }),
  });
  return fc.array(layer, { minLength: 1, maxLength: most }).map((layers) =>
    wallOf(...layers.map(({ thickness, resistance, mu }, nr) => ({ what: `layer ${nr + 1}`, thickness, conductivity: thickness / resistance, mu }))),
  );
}

function anyAirs(): fc.Arbitrary<WallAirs> {
  const side = (from: number, to: number) =>
    fc.tuple(fc.double({ min: from, max: to, noNaN: true }), fc.double({ min: 0.05, max: 1, noNaN: true })).map(([T, phi]) => air(T, phi));
  return fc.record({ outside: side(-40, 40), inside: side(5, 35) });
}
