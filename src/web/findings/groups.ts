import type { ScreenFinding, Verdict } from "../../river/screen.ts";

/** Verdicts in the order in which they are read: what needs a person first. */
const VERDICTS: readonly Verdict[] = ["stop", "watch", "note", "pass"];

/** How the screen speaks of a verdict. */
export const VERDICT_WORDS: Readonly<Record<Verdict, { readonly one: string; readonly many: string; readonly says: string }>> = {
  stop: { one: "stop", many: "stops", says: "has to change before the box is built" },
  watch: { one: "watch", many: "watches", says: "can be built; someone has to look at it" },
  note: { one: "note", many: "notes", says: "worth knowing, or an input is missing" },
  pass: { one: "pass", many: "passes", says: "holds by its working" },
};

/** How the screen speaks of a check; its id stands in where there are no words. */
export function checkName(check: string): string {
  return CHECK_NAMES[check] ?? check;
}

const CHECK_NAMES: Readonly<Record<string, string>> = {
  fit: "Fit",
  mass: "Mass and centre of mass",
  resistance: "Resistance to heat",
  envelope: "Heat and moisture",
};

export interface CheckGroup {
  readonly check: string;
  readonly findings: readonly ScreenFinding[];
}

export interface VerdictGroup {
  readonly verdict: Verdict;
  readonly count: number;
  readonly checks: readonly CheckGroup[];
}

/** Findings by verdict, then by check in the order in which checks run; verdicts without findings are left out. */
export function groupFindings(findings: readonly ScreenFinding[]): readonly VerdictGroup[] {
  const checks = [...new Set(findings.map(({ check }) => check))];
  return VERDICTS.flatMap((verdict) => {
    const ofVerdict = findings.filter((one) => one.verdict === verdict);
    if (ofVerdict.length === 0) return [];
    const groups = checks.map((check) => ({ check, findings: ofVerdict.filter((one) => one.check === check) }));
    return [{ verdict, count: ofVerdict.length, checks: groups.filter((group) => group.findings.length > 0) }];
  });
}

/** "3 stops", "1 watch". */
export function countWords(verdict: Verdict, count: number): string {
  return `${count} ${count === 1 ? VERDICT_WORDS[verdict].one : VERDICT_WORDS[verdict].many}`;
}
