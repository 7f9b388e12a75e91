import { describe, expect, it } from "vitest";
import { DEMO_JOBS } from "../../../test/demoJobs.ts";
import { makeScreenRiver } from "../../river/screen.ts";
import { distancesOf } from "./distances.ts";
import { thingsOf } from "./things.ts";

describe("distances shown while a thing is moved", () => {
  const demo = DEMO_JOBS.find(({ name }) => name === "snow-laboratory");
  if (demo === undefined) throw new Error("no demo job");
  const screen = makeScreenRiver().run(demo.job, demo.book);
  const things = thingsOf(demo.file, screen);
  const left = screen.build.surfaces.find(({ id }) => id === "left");
  const [w1, w2] = ["W1", "W2"].map((id) => things.find((one) => one.id === id));
  if (left === undefined || w1 === undefined || w2 === undefined) throw new Error("the demo job has changed");
  const found = distancesOf(w1.rect, left, things, "W1");
  const to = (what: string, axis: "u" | "v"): readonly number[] => found.filter((one) => one.toWhat === what && one.axis === axis).map(({ length }) => length);

  // The file says along 4600 mm and up 1100 mm for W1, and along 7300 mm for W2.
  it("lead to both posts, the bare floor and the top rail", () => {
    expect(to("post", "u")[0]).toBeCloseTo(4.6, 9);
    expect(to("post", "u")[1]).toBeCloseTo(left.panel.u1 - w1.rect.u1, 9);
    expect(to("bare floor", "v")[0]).toBeCloseTo(1.1, 9);
    expect(to("top rail", "v")[0]).toBeCloseTo(left.panel.v1 - w1.rect.v1, 9);
  });

  it("lead to the nearest neighbour on each side", () => {
    expect(to("W2", "u")[0]).toBeCloseTo(7.3 - w1.rect.u1, 9);
    expect(found.some(({ toWhat }) => toWhat === "FX1")).toBe(false);
  });

  it("leave out what does not stand beside", () => {
    const high = { ...w1.rect, v0: 2.3, v1: 2.5 };
    expect(distancesOf(high, left, things, "W1").some(({ toWhat, axis }) => toWhat === "W2" && axis === "u")).toBe(false);
  });
});
