import { z } from "zod";
import { jobSchema } from "./job.ts";

/** JSON Schema (draft 2020-12) of a job file as people write it, for editors. */
export function jobJsonSchema(): Record<string, unknown> {
  return z.toJSONSchema(jobSchema, { io: "input", reused: "ref" });
}
