import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { DEMO_JOBS } from "../../../test/demoJobs.ts";
import { makeScreenRiver } from "../../river/screen.ts";
import { cutTo, handReach, movedWithin } from "./heldOnFace.ts";
import { thingsOf, type Thing } from "./things.ts";

const CASES = DEMO_JOBS.flatMap(({ file, job, book }) => {
  const screen = makeScreenRiver().run(job, book);
  return thingsOf(file, screen).map((thing) => ({ thing, surface: screen.build.surfaces.find(({ id }) => id === thing.surface)! }));
});
const within = (rect: Thing["rect"], bounds: Thing["rect"]): boolean =>
  rect.u0 >= bounds.u0 - 1e-9 && rect.u1 <= bounds.u1 + 1e-9 && rect.v0 >= bounds.v0 - 1e-9 && rect.v1 <= bounds.v1 + 1e-9;
const far = fc.double({ min: -30, max: 30, noNaN: true });

describe("a thing in the hand", () => {
  it("keeps its size and stays within reach, however far the hand goes", () => {
    fc.assert(
      fc.property(fc.constantFrom(...CASES), far, far, ({ thing, surface }, du, dv) => {
        const { u0, u1, v0, v1 } = thing.rect;
        const reach = handReach(thing, surface);
        const moved = movedWithin({ u0: u0 + du, u1: u1 + du, v0: v0 + dv, v1: v1 + dv }, reach);
        expect(within(moved, reach)).toBe(true);
        expect([moved.u1 - moved.u0, moved.v1 - moved.v0]).toEqual([expect.closeTo(u1 - u0, 9), expect.closeTo(v1 - v0, 9)]);
        expect(within(cutTo({ u0, u1: u1 + Math.abs(du), v0: v0 - Math.abs(dv), v1 }, reach), reach)).toBe(true);
      }),
      { seed: 20264, numRuns: 300 },
    );
  });

  it("is not moved by being taken, and no item comes off the floor", () => {
    for (const { thing, surface } of CASES) {
      expect(movedWithin(thing.rect, handReach(thing, surface))).toEqual(thing.rect);
      if (thing.kind === "item") expect(handReach(thing, surface)).toEqual(surface.inside);
    }
  });
});
