import { describe, expect, it } from "vitest";
import { catalogue } from "./catalogue.ts";

const { materials, boards, foams, coatings } = catalogue;

describe("materials", () => {
  // ISO 10077-2 / EN 12524 / ISO 10456 design values, seen in public copies: kg/m3, W/(m K), J/(kg K).
  const published: readonly [string, number, number, number][] = [
    ["steel", 7800, 50, 450],
    ["stainless-steel", 7900, 17, 460],
    ["aluminium", 2800, 160, 880],
    ["copper", 8900, 380, 380],
    ["pvc", 1390, 0.17, 900],
  ];

  it.each(published)("%s has density %s, conductivity %s and specific heat %s", (id, density, conductivity, specificHeat) => {
    expect(materials.get(id)).toMatchObject({ density, conductivity, specificHeat });
  });

  it("are vapour-tight exactly where they are metal or glass", () => {
    const tight = materials.rows.filter(({ vapourResistance }) => vapourResistance === null).map(({ id }) => id);
    expect(tight).toEqual(["steel", "weathering-steel", "galvanised-steel", "stainless-steel", "aluminium", "copper", "glass"]);
  });

  it("read treated and floor plywood off the line between the standard's densities", () => {
    // Plywood of ISO 10456, from memory: 500 kg/m3 0.13 and mu 200; 700 kg/m3 0.17 and 220; 1000 kg/m3 0.24 and 250.
    const between = (density: number, low: number, high: number, a: number, b: number): number =>
      a + ((b - a) * (density - low)) / (high - low);
    const treated = materials.get("plywood-treated");
    expect(treated.conductivity).toBeCloseTo(between(treated.density, 500, 700, 0.13, 0.17), 2);
    expect(treated.vapourResistance).toBeCloseTo(between(treated.density, 500, 700, 200, 220), 0);
    const floor = materials.get("container-floor-plywood");
    expect(floor.conductivity).toBeCloseTo(between(floor.density, 700, 1000, 0.17, 0.24), 2);
    expect(floor.vapourResistance).toBeCloseTo(between(floor.density, 700, 1000, 220, 250), 0);
  });
});

describe("foams", () => {
  const closed = foams.get("foam-closed-cell-2lb");
  const open = foams.get("foam-open-cell-half-lb");

  it("closed cell meets the limits of CAN/ULC-S705.1", () => {
    // Read in public evaluation pages: core density at least 28 kg/m3, aged resistance of 50 mm at least 1.8 m2 K/W.
    const { density, conductivity, vapourResistance } = materials.get(closed.material);
    expect(density).toBeGreaterThanOrEqual(28);
    expect(0.05 / conductivity).toBeGreaterThanOrEqual(1.8);
    // At most 60 ng/(Pa s m2) through 50 mm, which is also the vapour barrier of NBC 9.25.4.2; 2e-10 kg/(m s Pa) in air (ISO 13788).
    const permeance = (thickness: number): number => 2e-10 / (vapourResistance! * thickness);
    expect(permeance(0.05)).toBeLessThanOrEqual(60e-12);
    // Usual product data is no product's own figure: practice says from which thickness the foam is its own barrier.
    expect(closed.barrierThickness).toBeNull();
  });

  it("open cell meets the limits of CAN/ULC-S712.1", () => {
    // Read in a public table of requirements: core density 6.8 to 12 kg/m3, resistance of 50 mm at least 1.20 m2 K/W.
    const { density, conductivity } = materials.get(open.material);
    expect(density).toBeGreaterThanOrEqual(6.8);
    expect(density).toBeLessThanOrEqual(12);
    expect(0.05 / conductivity).toBeGreaterThanOrEqual(1.2);
    expect(open.barrierThickness).toBeNull();
  });

  it("do not weigh more on the wall than in the drums", () => {
    for (const foam of foams.rows) {
      const onTheWall = foam.setYield * materials.get(foam.material).density;
      expect(onTheWall / foam.setMass).toBeGreaterThan(0.5);
      expect(onTheWall / foam.setMass).toBeLessThan(1);
      expect(foam.passThickness.least).toBeLessThan(foam.passThickness.greatest);
    }
  });
});

describe("boards", () => {
  it("weigh what thickness times density says, within a fifth", () => {
    for (const board of boards.rows.filter(({ id }) => !id.startsWith("checker-plate"))) {
      const reckoned = board.thickness * materials.get(board.material).density;
      expect(Math.abs(board.massPerArea / reckoned - 1), board.id).toBeLessThan(0.2);
    }
  });

  it("checker plate weighs one pattern more than smooth plate, whatever its thickness", () => {
    const pattern = (id: string): number => {
      const board = boards.get(id);
      return board.massPerArea - board.thickness * 7850;
    };
    expect(Math.abs(pattern("checker-plate-3-16") - pattern("checker-plate-1-8"))).toBeLessThan(0.2);
    expect(pattern("checker-plate-1-8")).toBeGreaterThan(4);
  });

  // Pounds to the square foot on public tables of building material weights, seen; makes differ by about a tenth.
  const listed: readonly [string, number][] = [
    ["gypsum-1-2", 1.6],
    ["gypsum-type-x-5-8", 2.2],
    ["osb-7-16", 1.4],
    ["osb-3-4", 2.5],
    ["plywood-1-2", 1.42],
    ["plywood-5-8", 1.56],
    ["plywood-3-4", 1.9],
  ];

  it.each(listed)("%s weighs about %s lb/ft2", (id, pounds) => {
    const kilograms = (pounds * 0.45359237) / 0.3048 ** 2;
    expect(Math.abs(boards.get(id).massPerArea / kilograms - 1)).toBeLessThan(0.15);
  });
});

describe("coatings", () => {
  it("spread their solids over the dry film", () => {
    for (const coating of coatings.rows) {
      expect(coating.spread * coating.dryFilm, coating.id).toBeCloseTo(coating.solidsByVolume, 12);
      expect(coating.recoatHours).toBeLessThan(coating.cureHours);
    }
  });

  it("spread as the trade's rule says: 1604 ft2 a US gallon at one mil of solids", () => {
    const { spread, solidsByVolume, dryFilm } = coatings.get("topcoat-polyurethane");
    const squareFeetAGallon = (spread / 0.3048 ** 2) * 3.785411784e-3;
    expect(squareFeetAGallon).toBeCloseTo((1604.2 * solidsByVolume) / (dryFilm / 25.4e-6), 0);
  });

  it("lose a liquid as heavy as solvent or water", () => {
    // Balance of mass: what evaporates lies between white spirit (about 770 kg/m3) and water (1000 kg/m3), within 5 %.
    for (const { id, solidsByVolume, wetDensity, dryDensity } of coatings.rows) {
      const lost = (wetDensity - solidsByVolume * dryDensity) / (1 - solidsByVolume);
      expect(lost, id).toBeGreaterThan(770 * 0.95);
      expect(lost, id).toBeLessThan(1000 * 1.05);
    }
  });
});
