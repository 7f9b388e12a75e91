import type { Surface } from "../../build/surface.ts";
import type { BuildUp, Job } from "../../job/job.ts";

/** The build-up of a wall or of the roof with its name in the job; undefined where it has none, and on floor and partitions. */
export function buildUpOn(job: Job, surface: Surface): { readonly name: string; readonly buildUp: BuildUp } | undefined {
  if (surface.kind === "partition" || surface.id === "floor") return undefined;
  const name = job.faces[surface.id as keyof Job["faces"]].buildUp;
  const buildUp = name === undefined ? undefined : job.buildUps[name];
  return name === undefined || buildUp === undefined ? undefined : { name, buildUp };
}
