import { expect, it } from "vitest";
import { addressOfJob, jobInPath } from "./jobAddress.ts";

it("reads the job that it wrote into an address", () => {
  for (const job of ["snow-laboratory", "a/b", "<img src=x>", "%", "日本"]) expect(jobInPath(addressOfJob(job))).toBe(job);
});

it.each(["/", "/jobs", "/jobs/", "/other/x", "/jobs/%E0"])("finds none in %s", (path) => {
  expect(jobInPath(path)).toBeUndefined();
});
