// Batts of the takeoff, their labour and their place in the plan, counted again from the parts of a plain job.
import { describe, expect, test } from "vitest";
import { checkWorking } from "../../test/checkWorking.ts";
import { demoBuilds } from "../../test/demoBuilds.ts";
import { battedJobFile, jobOf } from "../../test/sampleJob.ts";
import { assemble } from "../build/assemble.ts";
import { catalogue } from "../catalogue/catalogue.ts";
import { rectHeight, rectWidth } from "../geometry/rect.ts";
import { labourOf } from "./labour.ts";
import { takeOffBuild } from "./takeOffBuild.ts";

const { book } = demoBuilds()[0]!;
const build = assemble(jobOf(battedJobFile()));
const takeoff = takeOffBuild(build);
const lines = takeoff.lines.filter(({ group }) => group === "batts");
const bays = build.parts.filter(({ role }) => role === "batt");

describe("batts in the takeoff", () => {
  test("stand in one line a row, with the area of their bays", () => {
    expect(lines.map(({ id }) => id).sort()).toEqual(["batts/batt-glass-2-1-2-16", "batts/batt-rock-1-1-2-16"]);
    for (const { row, net, parts } of lines) {
      const own = bays.filter((bay) => bay.row?.id === row?.id);
      expect(parts).toEqual(own.map(({ id }) => id));
      expect(net.value).toBeCloseTo(own.reduce((sum, { shape }) => sum + (shape.kind === "panel" ? shape.area : NaN), 0), 9);
    }
  });

  test("need no fewer batts than their area, and no more than every piece from its own", () => {
    for (const { row, also } of lines) {
      const { id, width, length } = catalogue.batts.get(row?.id ?? "");
      const own = bays.filter((bay) => bay.row?.id === id);
      const area = own.reduce((sum, { rect }) => sum + rectWidth(rect) * rectHeight(rect), 0);
      const most = own.reduce((sum, { rect }) => sum + Math.ceil(rectWidth(rect) / width) * Math.ceil(rectHeight(rect) / length), 0);
      expect(also[0]?.value).toBeGreaterThanOrEqual(Math.ceil(area / (width * length)));
      expect(also[0]?.value).toBeLessThanOrEqual(most);
    }
  });

  test("are bought in whole packs with a twentieth more, priced by the area of the packs", () => {
    for (const { row, also, buy } of lines) {
      const { pack, width, length } = catalogue.batts.get(row?.id ?? "");
      expect(buy.count.value).toBe(Math.ceil((also[0]!.value * 1.05) / pack - 1e-9));
      expect(buy.holds?.value).toBeCloseTo(pack * width * length, 12);
      checkWorking([buy.count, ...also]);
    }
  });

  test("are set by area on each surface that has them", () => {
    const work = labourOf(build, book).filter(({ task }) => task === "set batts");
    expect(work.map(({ place }) => place).sort()).toEqual(["P1", "blindEnd", "doorEnd", "left", "right"]);
    const hours = work.reduce((sum, one) => sum + one.hours.value, 0);
    const area = lines.reduce((sum, { net }) => sum + net.value, 0);
    expect(hours).toBeCloseTo((area * book.labour.tasks["set batts"].hours) / 3600, 9);
  });
});
