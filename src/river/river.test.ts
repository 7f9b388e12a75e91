import { expect, it } from "vitest";
import { DEMO_JOBS } from "../../test/demoJobs.ts";
import { checkJob, makeRiver, runRiver, StageError } from "./river.ts";
import { inStage } from "./stageError.ts";

const { job, book } = DEMO_JOBS[0]!;

it("gives the same from the same, whether it remembers or not", () => {
  const river = makeRiver();
  expect(river(job, book)).toEqual(runRiver(job, book));
  expect(checkJob(job).findings).toEqual(river(job, book).findings);
});

it("computes again only what a new price book changes", () => {
  const river = makeRiver();
  const before = river(job, book);
  const after = river(job, { ...book, tax: 0.5 });
  for (const stage of ["build", "findings", "takeoff", "drawings"] as const) expect(after[stage]).toBe(before[stage]);
  expect(after.quote.direct.value).toBe(before.quote.direct.value);
  expect(after.quote.tax.value).not.toBe(before.quote.tax.value);
  expect(after.headline.priceCents).toBe(after.quote.total.value);
});

it("computes everything again for another job, and nothing for the same", () => {
  const river = makeRiver();
  const before = river(job, book);
  const same = river(job, book);
  expect(same.quote).toBe(before.quote);
  const other = river({ ...job, ceilingFirst: !job.ceilingFirst }, book);
  expect(other.build).not.toBe(before.build);
  expect(river(job, book)).toEqual(before);
});

it("names the stage that could not compute, with its cause, and forgets nothing that it had", () => {
  const river = makeRiver();
  const before = river(job, book);
  const broken = { ...job, box: { ...job.box, row: "no-such-box" } };
  expect(() => river(broken, book)).toThrow(StageError);
  expect(() => river(broken, book)).toThrow(/^could not compute the build: .*no-such-box/);
  expect(river(job, book).build).toBe(before.build);
});

it("keeps what was thrown as the cause", () => {
  const cause = new RangeError("speed is NaN");
  try {
    inStage("plan", () => {
      throw cause;
    });
    expect.unreachable();
  } catch (error) {
    expect(error).toMatchObject({ name: "StageError", stage: "plan", message: "could not compute the plan: speed is NaN", cause });
  }
});
