import { describe, expect, it } from "vitest";
import { DEMO_JOBS } from "../../../test/demoJobs.ts";
import { makeScreenRiver } from "../../river/screen.ts";
import { sectionShown } from "./sectionShown.ts";

describe.each(DEMO_JOBS)("the sections of $name", ({ job }) => {
  const river = makeScreenRiver();
  const { findings } = river.slow(job);
  const sections = river.sections();

  it("show first the gravest, and of those the coldest", () => {
    const shown = sectionShown(undefined, sections, findings)!;
    const gravest = (["stop", "watch", "note", "pass"] as const).find((verdict) => sections.some((row) => row.verdict === verdict));
    expect(shown.verdict).toBe(gravest);
    for (const { verdict, coldest } of sections) if (verdict === gravest && coldest !== undefined) expect(shown.coldest!.factor).toBeLessThanOrEqual(coldest.factor);
  });

  it("show the one that a finding names, or one of what it is about", () => {
    const named = sections.filter((row) => row.findings.length > 0);
    expect(named.length).toBeGreaterThan(0);
    for (const { findings: ids } of named) {
      for (const id of ids) expect(sectionShown({ kind: "finding", id }, sections, findings)!.findings).toContain(id);
    }
    const foam = findings.find(({ id }) => id.startsWith("envelope/foam/"))!;
    expect(sectionShown({ kind: "finding", id: foam.id }, sections, findings)!.about).toContain(foam.about[0]);
    expect(sectionShown({ kind: "finding", id: "envelope/heat-loss" }, sections, findings)).toBeUndefined();
  });

  it("show the one that is asked for, and the one that decides where it is gone", () => {
    const last = sections.at(-1)!;
    expect(sectionShown({ kind: "section", id: last.id }, sections, findings)).toBe(last);
    expect(sectionShown({ kind: "section", id: "gone" }, sections, findings)).toBe(sectionShown(undefined, sections, findings));
    expect(sectionShown({ kind: "whole box" }, sections, findings)).toBeUndefined();
    expect(sectionShown(undefined, [], findings)).toBeUndefined();
  });
});
