import { describe, expect, test } from "vitest";
import laboratory from "../../../examples/snow-laboratory.job.json" with { type: "json" };
import { battedJobFile, jobOf } from "../../../test/sampleJob.ts";
import { assemble } from "../../build/assemble.ts";
import { surfaceOf } from "../../build/build.ts";
import { polygonArea } from "../../geometry/polygon.ts";
import { developedLength, troughArea } from "../../geometry/trapezoid.ts";
import type { Vec2 } from "../../geometry/vector.ts";
import { readJobValue } from "../../job/read.ts";
import { draw } from "../draw.ts";
import type { DrawnShape, View } from "../drawing.ts";
import { cutParts } from "./cut.ts";
import { datumsOf } from "./faceNames.ts";

/** Low enough to pass under every window of the demo, above every floor track. */
const LOW = 0.5;

const build = buildOf(laboratory);
const surfaces = new Map(build.surfaces.map((surface) => [surface.id, surface]));

describe("cuts through the true layers", () => {
  const left = surfaceOf(build, "left");
  const { profile, panel } = left;
  if (profile === undefined) throw new Error("the left wall has a sheet");
  const cut = (role: string): readonly Vec2[][] =>
    cutParts(build.parts.filter((part) => part.surface === "left" && part.role === role), surfaces, "z", LOW, ({ x, y }) => ({ x, y })).map(
      (shape) => (shape.kind === "polyline" ? [...shape.points] : []),
    );

  test("a level cut of the sheet is as long as the sheet laid flat (closed form)", () => {
    const [line] = cut("skin");
    const length = (line ?? []).slice(1).reduce((sum, p, index) => sum + Math.hypot(p.x - (line?.[index]?.x as number), p.y - (line?.[index]?.y as number)), 0);
    expect(length).toBeCloseTo(developedLength(profile, 0, panel.u1 - panel.u0), 9);
  });

  test("a level cut of the foam covers its thickness and the troughs of the sheet (closed form)", () => {
    const foam = left.stack.foam;
    if (foam === undefined) throw new Error("the left wall has foam");
    const area = cut("foam").reduce((sum, points) => sum + polygonArea({ outer: points, holes: [] }), 0);
    const { inside } = left;
    const from = Math.max(inside.u0, panel.u0) - panel.u0;
    const to = Math.min(inside.u1, panel.u1) - panel.u0;
    expect(area).toBeCloseTo((inside.u1 - inside.u0) * (foam.to - foam.from) + troughArea(profile, from, to), 9);
  });

  test("a level cut of the batts is as long as the bays that it crosses, in their thickness", () => {
    const batted = assemble(jobOf(battedJobFile()));
    const batts = batted.parts.filter(({ surface, role }) => surface === "left" && role === "batt");
    const shapes = cutParts(batts, new Map(batted.surfaces.map((one) => [one.id, one])), "z", LOW, ({ x, y }) => ({ x, y }));
    const area = shapes.reduce((sum, shape) => sum + (shape.kind === "polyline" ? polygonArea({ outer: shape.points, holes: [] }) : NaN), 0);
    const long = batts.filter(({ rect }) => rect.v0 < LOW && LOW < rect.v1).reduce((sum, { rect }) => sum + rect.u1 - rect.u0, 0);
    expect(long).toBeGreaterThan(4);
    expect(new Set(shapes.map(({ layer }) => layer))).toEqual(new Set(["batts"]));
    expect(area).toBeCloseTo(long * 1.5 * 0.0254, 9);
  });

  test("a detail numbers batts and studs of one middle on one line, and names both", () => {
    const details = draw(assemble(jobOf(battedJobFile()))).filter(({ id }) => id.startsWith("details"));
    const table = details.flatMap(({ tables }) => tables).find(({ title }) => title.endsWith("partition with wool"));
    expect(table?.rows.map(([no, what]) => `${no} ${what}`)).toEqual([
      "1 gypsum board 1/2 in, regular", "2 glass wool batt 2-1/2 in, for studs at 16 in", expect.stringContaining("3 steel stud 2.5 in"), "4 gypsum board 1/2 in, regular",
    ]);
    const shapes = details.flatMap(({ views }) => views).find(({ title }) => title.includes("artition P1"))?.shapes ?? [];
    const numbers = shapes.flatMap((shape) => (shape.kind === "text" ? [shape.text] : []));
    expect(numbers).toEqual(["1", "2, 3", "4"]);
  });

  test("a cut above the box cuts nothing", () => {
    expect(cutParts(build.parts, surfaces, "z", 9, ({ x, y }) => ({ x, y }))).toEqual([]);
  });
});

describe("sections", () => {
  test("both cuts across show the same box, one the mirror of the other", () => {
    const [blind, door] = [viewNamed("section-across-blind"), viewNamed("section-across-door")];
    const mirrored = (shapes: readonly DrawnShape[], layer: string): readonly string[] =>
      shapes.flatMap((shape) => (shape.kind === "polyline" && shape.layer === layer ? [shape.points.map(({ x, y }) => `${Math.abs(x).toFixed(6)} ${y.toFixed(6)}`).join(",")] : []));
    for (const layer of ["frame", "skin", "foam", "studs", "boards"]) {
      expect(mirrored(blind.shapes, layer).length).toBeGreaterThan(0);
      expect(mirrored(door.shapes, layer)).toEqual(mirrored(blind.shapes, layer));
    }
  });

  test("an item beyond the cut or cut by it is named in one of the two, as far as the room goes", () => {
    const { x } = build.rooms.find(({ name }) => name === "snow laboratory") ?? build.rooms[0]!;
    const floor = surfaceOf(build, "floor");
    const named = ["section-across-blind", "section-across-door"].flatMap((id) => textsOf(viewNamed(id)));
    const drawn = build.job.items.filter(({ at, size }) => floor.origin.x + at.along > x.from && floor.origin.x + at.along + size.length < x.to).map(({ id }) => id);
    expect(drawn.filter((id) => named.includes(id))).toEqual(expect.arrayContaining(["FH1", "HT3", "EP1"]));
    expect(named).not.toContain("CF1");
  });

  test("the cut along meets a leaf of the cargo doors", () => {
    for (const id of ["section-along-left", "section-along-right"]) {
      const ends = viewNamed(id).shapes.flatMap((shape) => (shape.kind === "polyline" && shape.layer === "skin" ? [shape.points.map(({ x }) => Math.abs(x))] : []));
      const { length } = build.box.outside;
      expect(ends.some((xs) => Math.min(...xs) > length - 0.2)).toBe(true);
    }
  });
});

describe("places from both origins", () => {
  test("from inside a wall reads from right to left: an opening is as far from the view's origin as from its post, mirrored", () => {
    for (const placed of build.openings.filter(({ surface }) => surface.kind === "face" && surface.inward.z === 0)) {
      const inside = viewNamed(`${placed.surface.id}-framing`);
      const outside = viewNamed(`${placed.surface.id}-outside`);
      const [a, b] = [idPlace(inside, placed.opening.id), idPlace(outside, placed.opening.id)];
      expect(a.x).toBeCloseTo(-b.x, 9);
      expect(a.y).toBeCloseTo(b.y, 9);
    }
  });

  test("the distances of each opening from its two origins and its own width add up to the distance between the origins", () => {
    for (const { surface, clear } of build.openings) {
      const { u, v } = datumsOf(surface);
      expect(clear.u0 - u[0].at + (clear.u1 - clear.u0) + (u[1].at - clear.u1)).toBeCloseTo(u[1].at - u[0].at, 12);
      expect(v[1].at).toBeGreaterThan(v[0].at);
      expect(u[1].at).toBeGreaterThan(u[0].at);
    }
  });

  test("each framing view with openings is measured from both ends and from both heights", () => {
    for (const placed of build.openings) {
      const running = viewNamed(`${placed.surface.id}-framing`).dimensions.filter((chain) => chain.running === true);
      for (const side of ["below", "above", "left", "right"]) expect(running.some((chain) => chain.side === side)).toBe(true);
    }
  });
});

test("each leaf in the plan ends on its own swing arc", () => {
  const plan = viewNamed("plan");
  const arcs = plan.shapes.filter((shape) => shape.kind === "arc");
  const sweeps = build.openings.flatMap((placed) => placed.sweeps);
  expect(sweeps.length).toBeGreaterThan(0);
  expect(arcs.map(({ radius }) => radius)).toEqual(sweeps.map(({ radius }) => radius));
  for (const arc of arcs) {
    const leaf = plan.shapes.find((shape) => shape.kind === "line" && shape.layer === "openings" && shape.from.x === arc.centre.x && shape.from.y === arc.centre.y);
    const tip = leaf?.kind === "line" ? leaf.to : { x: Number.NaN, y: Number.NaN };
    expect(Math.hypot(tip.x - arc.centre.x, tip.y - arc.centre.y)).toBeCloseTo(arc.radius, 9);
  }
});

test("no view holds a number that is not finite", () => {
  for (const view of draw(build).flatMap(({ views }) => views)) {
    expect(JSON.stringify(view), view.id).not.toContain("null");
  }
});

function buildOf(file: unknown) {
  const reading = readJobValue(file);
  if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
  return assemble(reading.job);
}

function viewNamed(id: string): View {
  const found = draw(build).flatMap(({ views }) => views).find((view) => view.id === id);
  if (found === undefined) throw new Error(`no view ${id}`);
  return found;
}

function idPlace(view: View, id: string): Vec2 {
  const found = view.shapes.find((shape): shape is Extract<DrawnShape, { kind: "text" }> => shape.kind === "text" && shape.text === id);
  if (found === undefined) throw new Error(`no ${id} in ${view.id}`);
  return found.at;
}

function textsOf(view: View): readonly string[] {
  return view.shapes.flatMap((shape) => (shape.kind === "text" ? [shape.text] : []));
}
