import type { Build } from "../build/build.ts";
import type { Verdict } from "../checks/checks.ts";
import type { Headline, Results } from "./results.ts";
import { currencyOf } from "./write.ts";

/** The numbers that decide a job, taken from the stages' results. */
export function headlineOf({ build, findings, quote, plan }: Pick<Results, "build" | "findings" | "quote" | "plan">): Headline {
  const count = (verdict: Verdict): number => findings.filter((finding) => finding.verdict === verdict).length;
  return {
    stops: count("stop"),
    watches: count("watch"),
    passes: count("pass"),
    notes: count("note"),
    mass: finishedMass(build),
    priceCents: quote.total.value,
    currency: currencyOf(quote.currency),
    missingPrices: quote.missing.length,
    deliveryDay: plan.finish.day,
    daysToSpare: plan.daysToSpare,
  };
}

/** Sum of the parts that stay in the box, kg. */
function finishedMass(build: Build): number {
  return build.parts.filter(({ temporary }) => !temporary).reduce((sum, { mass }) => sum + mass, 0);
}
