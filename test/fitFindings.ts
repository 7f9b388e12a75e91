import { expect } from "vitest";
import type { Build } from "../src/build/build.ts";
import type { Finding } from "../src/checks/check.ts";
import { fit } from "../src/checks/fit/fit.ts";
import { checkWorking } from "./checkWorking.ts";

/** What one rule of the fit check finds, its workings evaluated from their texts. */
export function found(build: Build, rule: string): readonly Finding[] {
  const findings = fit.run(build).filter(({ id }) => id === `fit/${rule}` || id.startsWith(`fit/${rule}/`));
  for (const { working, comparison } of findings) {
    checkWorking([...working, ...(comparison === undefined ? [] : [comparison.left, comparison.right])]);
  }
  return findings;
}

/** The one finding of a rule. */
export function only(build: Build, rule: string): Finding {
  const findings = found(build, rule);
  expect(findings).toHaveLength(1);
  return findings[0]!;
}
