import type { Build } from "../build/build.ts";
import type { Verdict } from "../checks/checks.ts";
import type { Headline, Results } from "./results.ts";
import { currencyOf } from "./write.ts";

/** The numbers that decide a job, taken from the stages' results. */
export function headlineOf({ build, findings, quote, plan }: Pick<Results, "build" | "findings" | "quote" | "plan">): Headline {
  return {
    ...unpricedHeadlineOf({ build, findings }),
    priceCents: quote.total.value,
    currency: currencyOf(quote.currency),
    missingPrices: quote.missing.length,
    deliveryDay: plan.finish.day,
    daysToSpare: plan.daysToSpare,
  };
}

/** Those of the numbers that need no price book. */
export type UnpricedHeadline = Pick<Headline, "stops" | "watches" | "passes" | "notes" | "mass">;

export function unpricedHeadlineOf({ build, findings }: Pick<Results, "build" | "findings">): UnpricedHeadline {
  const count = (verdict: Verdict): number => findings.filter((finding) => finding.verdict === verdict).length;
  return { stops: count("stop"), watches: count("watch"), passes: count("pass"), notes: count("note"), mass: finishedMass(build) };
}

/** Sum of the parts that stay in the box, kg. */
function finishedMass(build: Build): number {
  return build.parts.filter(({ temporary }) => !temporary).reduce((sum, { mass }) => sum + mass, 0);
}
