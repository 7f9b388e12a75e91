import { describe, expect, it } from "vitest";
import { DEMO_JOBS } from "../../../test/demoJobs.ts";
import { makeScreenRiver } from "../../river/screen.ts";
import { layerStackOf } from "./layerStack.ts";
import { buildUpsOf } from "./things.ts";

describe("the stack of a build-up as typed", () => {
  it("ends where the assembled face is finished, on every face of every demo job", () => {
    const ends = DEMO_JOBS.flatMap(({ job, file, book }) => {
      const { build } = makeScreenRiver().run(job, book);
      return (["left", "right", "blindEnd", "roof"] as const).flatMap((face) => {
        const name = job.faces[face].buildUp;
        if (name === undefined) return [];
        const finished = build.surfaces.find(({ id }) => id === face)?.stack.finished;
        return [{ typed: layerStackOf(buildUpsOf(file)[name]).total, finished }];
      });
    });
    expect(ends.length).toBeGreaterThan(8);
    for (const { typed, finished } of ends) expect(typed).toBeCloseTo(finished ?? Number.NaN, 12);
  });

  it("adds up by hand: 1/2 in stand-off, 2-1/2 in stud, two boards of 5/8 in", () => {
    const { layers, total } = layerStackOf({
      what: "",
      foam: { row: "foam-closed-cell-2lb", thickness: "2 in" },
      studs: { row: "stud-2-1-2-33mil", track: "track-2-1-2-33mil", pitch: "16 in", standOff: "1/2 in" },
      boards: [{ row: "gypsum-type-x-5-8" }, { row: "gypsum-type-x-5-8" }],
      paint: [{ row: "paint-latex", coats: 2 }],
    });
    const inch = 0.0254;
    expect(total).toBeCloseTo((0.5 + 2.5 + 1.25) * inch, 12);
    expect(layers.map(({ kind }) => kind)).toEqual(["foam", "studs", "board", "board", "paint"]);
    expect(layers[1]?.from).toBeCloseTo(0.5 * inch, 12);
    expect(layers[1]?.pitch).toBeCloseTo(16 * inch, 12);
  });

  it("lays batts back from the inner surface of the studs, over the foam", () => {
    const studs = { row: "stud-2-1-2-33mil", track: "track-2-1-2-33mil", pitch: "16 in", standOff: "1/2 in" };
    const { layers, total } = layerStackOf({ studs, batts: { row: "batt-rock-1-1-2-16" } });
    expect(layers.map(({ kind }) => kind)).toEqual(["batts", "studs"]);
    expect(layers[0]?.from).toBeCloseTo(1.5 * 0.0254, 12);
    expect(layers[0]?.to).toBe(total);
    expect(layerStackOf({ batts: { row: "batt-rock-1-1-2-16" } }).layers).toMatchObject([{ from: undefined, to: undefined }]);
  });

  it("does not guess where a text cannot be read", () => {
    const { layers, total } = layerStackOf({ studs: { row: "stud-2-1-2-33mil", standOff: "1/2" }, boards: [{ row: "gypsum-1-2" }] });
    expect(total).toBeUndefined();
    expect(layers.map(({ from, to }) => [from, to])).toEqual([[undefined, undefined], [undefined, undefined]]);
    expect(layerStackOf({ boards: [{ row: "no such board" }] })).toMatchObject({ total: undefined, layers: [{ what: "not in the catalogue" }] });
  });

  it("gives temporary furring no room, and an empty build-up none at all", () => {
    const studs = { row: "stud-2-1-2-33mil", track: "track-2-1-2-33mil", pitch: "16 in" };
    const stays = layerStackOf({ studs, furring: { row: "hat-7-8-18mil", pitch: "16 in" } }).total;
    const leaves = layerStackOf({ studs, furring: { row: "hat-7-8-18mil", pitch: "16 in", temporary: true } }).total;
    if (stays === undefined || leaves === undefined) return expect.unreachable();
    expect(stays - leaves).toBeCloseTo(0.875 * 0.0254, 12);
    expect(layerStackOf({ what: "bare" })).toEqual({ layers: [], total: 0 });
  });
});
