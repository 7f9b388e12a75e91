import type { Build } from "../build/build.ts";
import type { Check, Finding } from "./check.ts";
import { fit } from "./fit/fit.ts";
import { mass } from "./mass/mass.ts";
import { resistance } from "./resistance/resistance.ts";

export type { Check, Finding, Verdict } from "./check.ts";

/** Every check, in the order in which findings are read. A new check is a folder here and a line in this list. */
export const CHECKS: readonly Check[] = [fit, mass, resistance];

/** All findings on a build, check by check, always in the same order. */
export function runChecks(build: Build): readonly Finding[] {
  return CHECKS.flatMap((check) => check.run(build));
}
