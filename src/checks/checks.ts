import type { Build } from "../build/build.ts";
import type { Check, Finding } from "./check.ts";
import { type CheckContext, makeContext } from "./context.ts";
import { envelope } from "./envelope/envelope.ts";
import { fit } from "./fit/fit.ts";
import { mass } from "./mass/mass.ts";
import { resistance } from "./resistance/resistance.ts";

export type { Check, Finding, Verdict } from "./check.ts";
export { type CheckContext, makeContext } from "./context.ts";

/** Every check, in the order in which findings are read, the slow ones last. A new check is a folder here and a line in this list. */
export const CHECKS: readonly Check[] = [fit, mass, resistance, envelope];

/** Checks that answer at once, those that solve for a while, or all. */
export type Pace = "quick" | "slow" | "any";

/** The checks of a pace, in the order of the list. */
export function checksAt(pace: Pace): readonly Check[] {
  return CHECKS.filter(({ isSlow = false }) => pace === "any" || isSlow === (pace === "slow"));
}

/** All findings on a build, check by check, always in the same order. A context kept from build to build saves solving again what did not change. */
export function runChecks(build: Build, context: CheckContext = makeContext(), pace: Pace = "any"): readonly Finding[] {
  return checksAt(pace).flatMap((check) => check.run(build, context));
}
