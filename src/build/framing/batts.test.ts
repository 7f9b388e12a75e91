// Batts in the bays between studs, held to areas by hand and to blocks compared in the surface's own frame.
import { describe, expect, test } from "vitest";
import { battedJobFile, jobOf } from "../../../test/sampleJob.ts";
import { overlaps, rectArea } from "../../geometry/rect.ts";
import { assemble } from "../assemble.ts";
import { type Build, surfaceOf } from "../build.ts";
import type { Part } from "../part.ts";

const inch = 0.0254;
const batted = (change: (file: Record<string, unknown>) => void = () => undefined): Build => {
  const file = battedJobFile();
  change(file);
  return assemble(jobOf(file));
};
const on = (build: Build, surface: string, ...roles: readonly string[]): readonly Part[] =>
  build.parts.filter((part) => part.surface === surface && roles.includes(part.role));
const areaOf = (parts: readonly Part[]): number => parts.reduce((sum, { shape }) => sum + (shape.kind === "panel" ? shape.area : NaN), 0);

describe("batts", () => {
  test("fill what studs and tracks leave of a partition (closed form)", () => {
    const build = batted((file) => void (file["openings"] = []));
    const { inside } = surfaceOf(build, "P1");
    const studs = on(build, "P1", "stud");
    const [stud, track] = [studs[0]!.rect, on(build, "P1", "track")[0]!.rect];
    const free = inside.u1 - inside.u0 - studs.length * (stud.u1 - stud.u0);
    const tall = inside.v1 - inside.v0 - 2 * (track.v1 - track.v0);
    const batts = on(build, "P1", "batt");
    expect(batts).toHaveLength(studs.length - 1);
    expect(areaOf(batts)).toBeCloseTo(free * tall, 9);
  });

  test("weigh their area times thickness and density: glass wool of 12 kg/m3", () => {
    const batts = on(batted(), "P1", "batt");
    expect(batts.reduce((sum, { mass }) => sum + mass, 0)).toBeCloseTo(areaOf(batts) * 2.5 * inch * 12, 9);
  });

  test("keep out of studs, tracks, headers and the door", () => {
    const build = batted();
    for (const surface of ["left", "right", "blindEnd", "doorEnd", "P1"]) {
      const batts = on(build, surface, "batt");
      const framing = on(build, surface, "stud", "jamb stud", "cripple stud", "track", "header", "sill", "blocking");
      const holes = build.openings.filter((one) => one.surface.id === surface).map(({ lining }) => lining);
      expect(batts.length).toBeGreaterThan(3);
      const taken = [...framing.map(({ rect }) => rect), ...holes].map(({ u0, u1, v0, v1 }) => ({ u0: u0 + 1e-6, u1: u1 - 1e-6, v0: v0 + 1e-6, v1: v1 - 1e-6 }));
      expect(batts.filter(({ rect, shape }) => shape.kind === "panel" && Math.abs(shape.area - rectArea(rect)) < 1e-9 && taken.some((one) => overlaps(one, rect))).map(({ id }) => id)).toEqual([]);
    }
    expect(on(build, "roof", "batt")).toEqual([]);
  });

  test("lie flush with the inner surface of the studs, and against the boards of a partition's near side", () => {
    const build = batted();
    // Stand-off 1/2 in and stud 2-1/2 in end 3 in behind the inside plane; a partition's middle is its studs' middle.
    expect(surfaceOf(build, "left").stack.batts).toEqual({ from: expect.closeTo(1.5 * inch, 12) as number, to: expect.closeTo(3 * inch, 12) as number });
    const { stack, farStack } = surfaceOf(build, "P1");
    expect(stack.batts?.from).toBe(stack.boardPlane);
    expect(stack.batts?.to).toBeCloseTo(1.25 * inch, 12);
    expect(farStack?.batts).toEqual(stack.batts);
    expect(on(build, "P1", "batt").map(({ depth }) => depth)).toEqual(on(build, "P1", "batt").map(() => stack.batts));
  });

  test("change no other part", () => {
    const plain = batted((file) => {
      for (const buildUp of Object.values(file["buildUps"] as Record<string, Record<string, unknown>>)) delete buildUp["batts"];
    });
    expect(batted().parts.filter(({ role }) => role !== "batt")).toEqual(plain.parts);
  });
});
