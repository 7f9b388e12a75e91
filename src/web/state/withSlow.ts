import type { Screen, SlowScreen, Verdict } from "../../river/screen.ts";

/** The answer of the quick checks with the findings of the slow ones, counted together. */
export function withSlow(quick: Screen, slow: SlowScreen | undefined): Screen {
  if (slow === undefined) return quick;
  const { findings, headline } = quick;
  const count = (verdict: Verdict): number => slow.findings.filter((finding) => finding.verdict === verdict).length;
  return {
    ...quick,
    findings: [...findings, ...slow.findings],
    headline: {
      ...headline,
      stops: headline.stops + count("stop"),
      watches: headline.watches + count("watch"),
      passes: headline.passes + count("pass"),
      notes: headline.notes + count("note"),
    },
  };
}
