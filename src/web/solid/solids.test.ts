import { describe, expect, it } from "vitest";
import { DEMO_JOBS } from "../../../test/demoJobs.ts";
import { makeScreenRiver } from "../../river/screen.ts";
import { nextToPeel, nextToPutBack, PEELED } from "./layers.ts";
import { boundsOf } from "./geometry/measure.ts";
import { lights, pickSolid, selectionFor, selects, type Ray } from "./picking.ts";
import { eyeOf, poseFrom, rayThrough } from "./pose.ts";
import { makeSolidMaker, solidsOf, type Solid } from "./solids.ts";

const BUILDS = DEMO_JOBS.map(({ name, job, book }) => ({ name, job, book, build: makeScreenRiver().run(job, book).build }));
const [{ job, book, build }] = BUILDS as [(typeof BUILDS)[number]];
const SOLIDS = solidsOf(build, []);

describe.each(BUILDS)("the solids of $name", (one) => {
  it("puts every part with a form on a layer", () => {
    const without = one.build.parts.filter(({ role, temporary }) => role !== "coating" && role !== "rest of the box" && !temporary);
    expect(solidsOf(one.build, [])).toHaveLength(without.length);
  });

  // A build comes from the worker as a copy each time.
  it("keeps every form of a build that comes again as a copy", () => {
    const solidsFor = makeSolidMaker();
    const before = solidsFor(one.build);
    const after = solidsFor(structuredClone(one.build));
    after.forEach(({ form }, at) => expect(form).toBe(before[at]?.form));
  });
});

describe("an edit", () => {
  it("makes again only the forms that it changed", () => {
    const moved = { ...job, items: job.items.map((item, at) => (at === 0 ? { ...item, at: { ...item.at, along: item.at.along + 0.01 } } : item)) };
    const after = solidsOf(makeScreenRiver().run(moved, book).build, SOLIDS);
    const anew = after.filter(({ form }) => !SOLIDS.some((solid) => solid.form === form)).map(({ part }) => part.of);
    expect(anew).toEqual([job.items[0]?.id]);
  });
});

describe("layers", () => {
  it("come off from the outside in and go back the other way", () => {
    const present = PEELED.filter((layer) => SOLIDS.some((solid) => solid.layer === layer));
    const off: (typeof PEELED)[number][] = [];
    for (let next = nextToPeel(present, off); next !== undefined; next = nextToPeel(present, off)) off.push(next);
    expect(off).toEqual(present);
    while (off.length > 0) expect(nextToPutBack(present, off)).toBe(off.pop());
    expect(nextToPutBack(present, [])).toBeUndefined();
  });
});

describe("picking", () => {
  // Through the middle of the left wall's first fan, from outside, square to the wall.
  const fan = SOLIDS.find(({ part }) => part.of === "FN1" && part.role === "article") as Solid;
  const [x, y, z] = [0, 1, 2].map((axis) => (boundsOf(fan.form.triangles).from[axis as 0] + boundsOf(fan.form.triangles).to[axis as 0]) / 2) as [number, number, number];
  const ray: Ray = { from: [x, y - 10, z], toward: [0, 1, 0] };

  it("meets what lies nearest to the eye", () => {
    expect(pickSolid(SOLIDS, ray, undefined)?.part.id).toBe(fan.part.id);
    expect(pickSolid(SOLIDS, { ...ray, toward: [0, -1, 0] }, undefined)).toBeUndefined();
  });

  it("passes through what is peeled and what the section took away", () => {
    expect(pickSolid(SOLIDS.filter(({ layer }) => layer !== "openings"), ray, undefined)?.part.of).not.toBe("FN1");
    expect(pickSolid(SOLIDS, ray, { axis: 1, at: 1.2, takes: -1 })?.part.of).not.toBe("FN1");
    expect(pickSolid(SOLIDS, ray, { axis: 0, at: x - 0.5, takes: 1 })).toBeUndefined();
  });

  it("selects the opening or the item that a part is of, and other parts by themselves", () => {
    expect(selectionFor(fan.part)).toEqual({ kind: "opening", id: "FN1" });
    const item = SOLIDS.find(({ part }) => part.role === "item") as Solid;
    expect(selectionFor(item.part)).toEqual({ kind: "item", id: item.part.of });
    const stud = SOLIDS.find(({ part }) => part.role === "jamb stud") as Solid;
    expect(selectionFor(stud.part)).toEqual({ kind: "part", id: stud.part.id });
  });

  it("shows in return what is selected", () => {
    for (const { part } of SOLIDS) expect(selects(selectionFor(part), part, build), part.id).toBe(true);
    const name = build.job.faces.left.buildUp as string;
    const layered = SOLIDS.filter(({ part }) => selects({ kind: "build-up", id: name }, part, build));
    expect(new Set(layered.map(({ part }) => part.role))).toContain("foam");
    expect(layered.some(({ part }) => part.role === "post")).toBe(false);
  });

  it("lights up parts by their own id, by what they are of, and a face by its sheet", () => {
    const lit = (...ids: readonly string[]): readonly string[] => SOLIDS.filter(({ part }) => lights(new Set(ids), part)).map(({ part }) => part.id);
    expect(lit("left/foam/1")).toEqual(["left/foam/1"]);
    expect(lit("FN1")).toHaveLength(build.parts.filter(({ of }) => of === "FN1").length);
    expect(lit("left")).toEqual(["left/skin/1"]);
  });

  it("finds the same part through the picture", () => {
    const pose = { ...poseFrom("left", fan.bounds, 1.5), target: [x, y, z] as const, distance: 12 };
    expect(eyeOf(pose)[1]).toBeCloseTo(y - 12, 9);
    expect(pickSolid(SOLIDS, rayThrough(pose, 1.5, 0, 0), undefined)?.part.id).toBe(fan.part.id);
  });
});
