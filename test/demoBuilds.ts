import { assemble } from "../src/build/assemble.ts";
import type { Build } from "../src/build/build.ts";
import { DEMO_JOBS, type DemoJob } from "./demoJobs.ts";

/** The demo jobs with their builds; every figure of their price books is invented. */
export function demoBuilds(): readonly (DemoJob & { readonly build: Build })[] {
  return DEMO_JOBS.map((demo) => ({ ...demo, build: assemble(demo.job) }));
}
