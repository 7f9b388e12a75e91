import { describe, expect, it } from "vitest";
import { catalogue } from "./catalogue.ts";

const { articles, boxes, sections } = catalogue;

describe("articles", () => {
  it("that stand in a hole have one, and it takes the part that passes through", () => {
    for (const { id, kind, rough } of articles.rows) {
      expect(rough === null, id).toBe(kind === "heater" || kind === "split unit");
    }
  });

  it("doors and windows leave a gap of a few millimetres all round", () => {
    for (const { id, kind, rough, width, height } of articles.rows) {
      if (kind !== "door" && kind !== "window") continue;
      expect((rough!.width - width) / 2, id).toBeCloseTo(0.006, 12);
      expect((rough!.height - height) / 2, id).toBeCloseTo(0.006, 12);
    }
  });

  it("flanged articles cover their hole", () => {
    for (const { id, kind, rough, width, height } of articles.rows) {
      if (kind === "door" || kind === "window" || rough === null) continue;
      expect(width, id).toBeGreaterThan(rough.width);
      expect(height, id).toBeGreaterThan(rough.height);
    }
  });

  it("no free area is larger than the hole", () => {
    for (const { id, rough, freeArea } of articles.rows) {
      if (freeArea === undefined || rough === null) continue;
      expect(freeArea, id).toBeLessThanOrEqual(rough.width * rough.height * (1 + 1e-12));
    }
  });

  it("the escape window clears 5.7 ft2", () => {
    // International Residential Code R310.2.1, from memory: 5.7 ft2, at least 20 in wide and 24 in high.
    expect(articles.get("window-escape-36x48").freeArea).toBeGreaterThanOrEqual(5.7 * 0.3048 ** 2);
  });

  it("every personnel door stands under the top rail of a standard box with a header of 3 in", () => {
    const { outside, insets, rails } = boxes.get("20-standard");
    const clear = outside.height - insets.floor - rails.topSide.face - sections.get("hss-3x3x3-16").depth;
    for (const { id, kind, rough } of articles.rows) {
      if (kind === "door") expect(rough!.height, id).toBeLessThan(clear);
    }
  });

  it("the wall exhaust fan moves 0.9 m3/s and the others less", () => {
    const fans = articles.rows.filter(({ kind }) => kind === "fan");
    for (const { id, airFlow, pressure, power } of fans) {
      expect(airFlow, id).toBeDefined();
      // Air power may not exceed shaft power: total efficiency below one.
      expect((airFlow! * pressure!) / power!, id).toBeLessThan(0.7);
    }
    expect(articles.get("fan-wall-400").airFlow).toBe(0.9);
  });

  it("split units give more cold than they draw, heaters exactly what they draw", () => {
    for (const { id, kind, cooling, heating, power } of articles.rows) {
      if (kind === "heater") expect(heating, id).toBe(power);
      if (kind === "split unit" && cooling !== undefined) expect(cooling / power!, id).toBeGreaterThan(2.5);
    }
  });
});
