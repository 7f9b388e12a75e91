import type { ScreenFinding, Verdict } from "../../river/screen.ts";
import type { SectionRow } from "../../river/sections.ts";
import type { Wanted } from "./useHeat.ts";

/** The section to show; undefined for the whole box. */
export function sectionShown(wanted: Wanted | undefined, sections: readonly SectionRow[], findings: readonly ScreenFinding[]): SectionRow | undefined {
  switch (wanted?.kind) {
    case undefined:
      return decisive(sections);
    case "whole box":
      return undefined;
    case "section":
      return sections.find(({ id }) => id === wanted.id) ?? decisive(sections);
    case "finding":
      return sectionOf(findings.find(({ id }) => id === wanted.id), sections);
  }
}

/** The section that a finding names, or the one that decides of those that show what it is about. */
function sectionOf(finding: ScreenFinding | undefined, sections: readonly SectionRow[]): SectionRow | undefined {
  if (finding === undefined) return decisive(sections);
  const { id, about } = finding;
  return sections.find((row) => row.findings.includes(id)) ?? decisive(sections.filter((row) => row.about.some((one) => about.includes(one))));
}

/** From the gravest down; a section of which nothing is asked comes last. */
const GRAVITY: readonly (Verdict | undefined)[] = ["stop", "watch", "note", "pass", undefined];

/** The section that decides: the gravest, and of those the coldest. Undefined where there is none. */
function decisive(sections: readonly SectionRow[]): SectionRow | undefined {
  const gravest = GRAVITY.find((verdict) => sections.some((row) => row.verdict === verdict));
  return sections.filter(({ verdict }) => verdict === gravest).toSorted((a, b) => factorOf(a) - factorOf(b))[0];
}

/** A section without a heated room is colder than none. */
function factorOf({ coldest }: SectionRow): number {
  return coldest?.factor ?? Number.MAX_VALUE;
}
