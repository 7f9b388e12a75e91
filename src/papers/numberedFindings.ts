import { CHECKS, type Finding, type Verdict } from "../checks/checks.ts";

/** A finding in the order of the papers, with the number under which its working is printed; undefined where it has none. */
export interface NumberedFinding {
  readonly finding: Finding;
  readonly number: string | undefined;
}

/** Verdicts from the worst, with the title of their group. */
export const VERDICTS: readonly { readonly verdict: Verdict; readonly title: string }[] = [
  { verdict: "stop", title: "Stops" },
  { verdict: "watch", title: "Watches" },
  { verdict: "note", title: "Notes" },
  { verdict: "pass", title: "Passes" },
];

/** Findings worst first, then in the order of the checks; those with a working are numbered W1, W2 and on. */
export function numberedFindings(findings: readonly Finding[]): readonly NumberedFinding[] {
  const ordered = VERDICTS.flatMap(({ verdict }) =>
    CHECKS.flatMap(({ id }) => findings.filter((one) => one.check === id && one.verdict === verdict)),
  );
  let count = 0;
  return ordered.map((finding) => {
    if (finding.working.length === 0) return { finding, number: undefined };
    count += 1;
    return { finding, number: `W${count}` };
  });
}
