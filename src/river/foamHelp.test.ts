// Derived: the help is held to the checks, the price and the physics that it asks, run by themselves on the job it speaks of.
import { beforeAll, describe, expect, test } from "vitest";
import { DEMO_JOBS } from "../../test/demoJobs.ts";
import { battedJobFile, jobOf, sampleJobFile } from "../../test/sampleJob.ts";
import { assemble } from "../build/assemble.ts";
import { makeContext, runChecks } from "../checks/checks.ts";
import { studyEnvelope } from "../checks/envelope.ts";
import type { JobFile } from "../job/file.ts";
import { priceJob } from "../price/priceJob.ts";
import { takeOffBuild } from "../takeoff/takeOffBuild.ts";
import { foamHelp, type FoamHelp, type FoamProgress, NoFoamHelp } from "./foamHelp.ts";
import { variantOf } from "./foamHelp/variant.ts";

const book = DEMO_JOBS[0]!.book;
const context = makeContext(2000);

const YEAR = [-5, -3, 2, 8, 12, 16, 18, 18, 13, 8, 2, -4].map((temperature) => ({ temperature: `${temperature} °C`, humidity: "80 %" }));

/** The sample job in a short box, heated and damp. */
function dampFile(foam: string, from: Record<string, unknown> = sampleJobFile()): JobFile {
  const buildUps = from["buildUps"] as Record<string, object>;
  return {
    ...from,
    box: { row: "10-standard", condition: "new" },
    site: { ...(from["site"] as object), winterDesign: "-8 °C", monthly: YEAR },
    rooms: [{ id: "R1", what: "Room", heatTo: "20 °C", humidity: "58 %", people: 2 }],
    buildUps: { ...buildUps, wall: { ...buildUps["wall"], foam: { row: "foam-closed-cell-2lb", thickness: foam } } },
  };
}

function helpOf(file: JobFile, name: string): { readonly help: FoamHelp; readonly progress: readonly FoamProgress[] } {
  const steps = foamHelp(file, book, name, context);
  const progress: FoamProgress[] = [];
  let step = steps.next();
  for (; step.done !== true; step = steps.next()) progress.push(step.value);
  return { help: step.value, progress };
}

/** What the envelope check finds wrong on the walls' own surfaces. */
function wallFindings(foam: number): readonly string[] {
  const ids = ["left", "right", "blindEnd", "doorEnd"].map((wall) => `envelope/R1/${wall}`);
  const build = assemble(jobOf(dampFile(`${foam * 1000} mm`)));
  return runChecks(build, context, "slow").flatMap(({ id, verdict, code }) => (verdict !== "pass" && ids.includes(id) ? [code] : []));
}

describe("the wall of a heated, damp box", () => {
  let help: FoamHelp;
  let progress: readonly FoamProgress[];
  beforeAll(() => void ({ help, progress } = helpOf(dampFile("2 in"), "wall")), 120_000);

  test("needs the foam from which the check finds no mould, not a millimetre less, and not too much", () => {
    const { least } = help.needs.find(({ criterion }) => criterion === "mould in a month")!;
    if (least.kind !== "found" || least.failsAgain === undefined) return expect.unreachable();
    expect(wallFindings(least.thickness)).toEqual([]);
    expect(wallFindings(least.thickness - 0.001)).toContain("surface may grow mould");
    expect(wallFindings(least.failsAgain)).toContain("surface may grow mould");
  });

  test("has at the present thickness the losses and the price of the job as it is", () => {
    const present = help.curve.find(({ foam }) => Math.abs(foam - help.present) < 1e-9)!;
    const build = assemble(jobOf(dampFile("2 in")));
    expect(present.numbers!.loss).toBe(studyEnvelope(build, context).losses.whole!.value);
    expect(present.numbers!.priceCents).toBe(priceJob(build, takeOffBuild(build), book).total.value);
    expect(present.objections).toEqual([]);
  });

  test("loses less with every step of foam, over the range that the framing leaves, yet its coldest surface is not always warmer", () => {
    expect(help.curve[0]!.foam).toBeCloseTo(help.least, 9);
    expect(help.curve.at(-1)!.foam).toBeCloseTo(help.greatest, 9);
    help.curve.slice(1).forEach(({ numbers }, at) => expect(numbers!.loss!).toBeLessThan(help.curve[at]!.numbers!.loss!));
    const factors = help.curve.map(({ numbers }) => numbers!.coldest!.factor);
    expect(Math.max(...factors)).toBeGreaterThan(factors.at(-1)!);
  });

  test("is warmer and loses less the further its studs stand off", () => {
    const named = (what: string) => help.variants.find(({ name }) => name.startsWith(what))!;
    const present = help.curve.find(({ foam }) => Math.abs(foam - help.present) < 1e-9)!;
    const byStandOff = [named("studs against"), present, named("studs 1 in"), named("studs in front")];
    expect(byStandOff.map(({ standOff }) => standOff)).toEqual([0, 0.0127, 0.0254, 0.0508]);
    byStandOff.slice(1).forEach(({ numbers }, at) => {
      expect(numbers!.coldest!.factor).toBeGreaterThan(byStandOff[at]!.numbers!.coldest!.factor);
      expect(numbers!.loss!).toBeLessThan(byStandOff[at]!.numbers!.loss!);
    });
  });

  test("tells how far it has come", () => {
    expect(progress.map(({ done }) => done)).toEqual(progress.map((_, at) => at + 1));
    for (const { done, of } of progress) expect(of).toBeGreaterThan(done);
  });
});

describe("what does not fit is said", () => {
  const changed = (file: JobFile, change: Parameters<typeof variantOf>[2]) => variantOf({ file, book, buildUp: "wall", faces: ["left"], context }, "changed", change, []);

  test("foam that would stand proud of the studs, with its numbers", () => {
    const proud = changed(dampFile("2-3/4 in"), { standOff: 0 });
    expect(proud.objections.map(({ verdict }) => verdict)).toContain("stop");
    expect(proud.objections.map(({ says }) => says).join()).toContain("proud");
    expect(proud.numbers).toBeDefined();
  });

  test("studs too far apart for the batts, which cannot be built", () => {
    const wide = changed({ ...dampFile("1 in", battedJobFile()), partitions: [], openings: [] }, { pitch: 24 * 0.0254 });
    expect(wide.numbers).toBeUndefined();
    expect(wide.objections.map(({ says }) => says).join()).toContain("batt");
  });
});

describe("there is no help", () => {
  const first = (file: JobFile, name: string) => () => foamHelp(file, book, name, context).next();

  test("for a build-up without foam, without faces, or not there", () => {
    expect(first(battedJobFile() as JobFile, "between")).toThrow(NoFoamHelp);
    expect(first({ ...(sampleJobFile() as JobFile), faces: { ...(sampleJobFile()["faces"] as object), roof: {} } }, "ceiling")).toThrow(/no face/);
    expect(first(sampleJobFile() as JobFile, "none such")).toThrow(/wall, ceiling/);
  });

  test("for a file with issues", () => {
    expect(first({ ...(sampleJobFile() as JobFile), units: "furlongs" }, "wall")).toThrow(/issues/);
  });
});
