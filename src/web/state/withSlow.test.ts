import { expect, it } from "vitest";
import { DEMO_JOBS } from "../../../test/demoJobs.ts";
import { makeScreenRiver } from "../../river/screen.ts";
import { withSlow } from "./withSlow.ts";

it.each(DEMO_JOBS)("quick and slow checks of $name come to the same as all at once", ({ job, book }) => {
  const river = makeScreenRiver();
  const quick = river.quick(job, book);
  const slow = river.slow(job);
  expect(slow.findings.length).toBeGreaterThan(0);
  expect(new Set(slow.findings.map(({ check }) => check))).toEqual(new Set(slow.checks));
  expect(quick.findings.filter(({ check }) => slow.checks.includes(check))).toEqual([]);
  expect(withSlow(quick, slow)).toEqual(river.run(job, book));
  expect(withSlow(quick, undefined)).toBe(quick);
});
