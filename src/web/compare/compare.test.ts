import { describe, expect, it } from "vitest";
import { DEMO_JOBS } from "../../../test/demoJobs.ts";
import type { JobFile } from "../../job/file.ts";
import { changesBetween } from "../../job/merge.ts";
import { readJobValue } from "../../job/read.ts";
import { makeScreenRiver, type Screen } from "../../river/screen.ts";
import { copyOf, type Draft, putAt } from "../box/edits.ts";
import { removeThing } from "../box/things.ts";
import { compareFindings, comparePlans, compareQuotes, sameCurrency } from "./differences.ts";
import { compareParts, partSummary } from "./parts.ts";

const SCREENS = DEMO_JOBS.map(({ job, book }) => makeScreenRiver().run(job, book));
const BUNK = DEMO_JOBS.findIndex(({ name }) => name === "trail-crew-bunk-room");
const demo = DEMO_JOBS[BUNK]!;
const base = SCREENS[BUNK]!;

function changedBy(recipe: (draft: Draft) => void): { readonly file: JobFile; readonly screen: Screen } {
  const file = copyOf(demo.file) as Draft;
  recipe(file);
  const read = readJobValue(file);
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  return { file, screen: makeScreenRiver().run(read.job, demo.book) };
}

describe("comparing a job with itself", () => {
  it("finds no difference", () => {
    for (const { build, findings, quote, plan } of SCREENS) {
      expect(compareParts(build.parts, build.parts)).toEqual([]);
      expect(compareFindings(findings, findings)).toEqual([]);
      expect(compareQuotes(quote, quote)).toEqual([]);
      expect(comparePlans(plan, plan)).toEqual([]);
    }
  });
});

describe("comparing two jobs", () => {
  it("accounts for every part, every cent and every finding", () => {
    for (const [index, after] of SCREENS.entries()) {
      const before = SCREENS[(index + 1) % SCREENS.length]!;
      const differences = compareParts(before.build.parts, after.build.parts);
      const count = (kind: string) => differences.filter((one) => one.kind === kind).length;
      expect(after.build.parts.length - before.build.parts.length).toBe(count("added") - count("removed"));
      const masses = (screen: Screen) => screen.build.parts.reduce((sum, { mass }) => sum + mass, 0);
      expect(partSummary(differences).reduce((sum, { mass }) => sum + mass, 0)).toBeCloseTo(masses(after) - masses(before), 2);
      const direct = (screen: Screen) => screen.quote.reduce((sum, { amountCents }) => sum + amountCents, 0);
      if (sameCurrency(before, after)) {
        expect(compareQuotes(before.quote, after.quote).reduce((sum, { cents }) => sum + cents, 0)).toBe(direct(after) - direct(before));
      }
      const found = compareFindings(before.findings, after.findings);
      const news = found.filter(({ kind }) => kind === "new").length - found.filter(({ kind }) => kind === "gone").length;
      expect(news).toBe(after.findings.length - before.findings.length);
    }
  });
});

describe("comparing a revision with the next", () => {
  it("an item moved is one part moved and one field of the input", () => {
    const { file, screen } = changedBy((draft) => putAt(draft, ["items", 3, "at", "along"], "7' 2 in"));
    expect(changesBetween(demo.file, file)).toEqual([{ path: "items.TB1.at.along", before: "7' 1 in", after: "7' 2 in" }]);
    const differences = compareParts(base.build.parts, screen.build.parts);
    expect(differences.map(({ kind, part }) => [kind, part.of])).toEqual([["moved", "TB1"]]);
    expect(compareQuotes(base.quote, screen.quote)).toEqual([]);
  });

  it("an opening taken away takes its parts and its money with it", () => {
    const { screen } = changedBy((draft) => removeThing(draft, "openings", "CE1"));
    const differences = compareParts(base.build.parts, screen.build.parts);
    const removed = differences.filter(({ kind, part }) => kind === "removed" && part.of === "CE1");
    expect(removed).toHaveLength(base.build.parts.filter(({ of }) => of === "CE1").length);
    const article = compareQuotes(base.quote, screen.quote).find(({ id }) => id.startsWith("articles/cable-entry"));
    expect(article).toMatchObject({ afterCents: undefined });
    expect(article!.cents).toBe(-article!.beforeCents!);
  });

  it("a later start is later work and a later delivery", () => {
    const { screen } = changedBy((draft) => putAt(draft, ["shop", "start"], "2027-01-25"));
    const plan = comparePlans(base.plan, screen.plan);
    expect(plan.length).toBeGreaterThan(5);
    for (const { later } of plan) expect(later).toBeGreaterThan(0);
  });

  it("parts numbered anew at the same place are the same", () => {
    const [first, second] = base.build.parts.filter(({ role }) => role === "stud");
    if (first === undefined || second === undefined) return expect.unreachable();
    const renumbered = [{ ...first, id: second.id }, { ...second, id: first.id }];
    expect(compareParts([first, second], renumbered)).toEqual([]);
  });

  it("a verdict that turned comes first", () => {
    const [one, two] = base.findings;
    if (one === undefined || two === undefined) return expect.unreachable();
    const turned = { ...two, verdict: two.verdict === "stop" ? ("pass" as const) : ("stop" as const) };
    const told = compareFindings([one, two], [{ ...one, says: "other" }, turned]);
    expect(told.map(({ kind }) => kind)).toEqual(["other verdict", "other numbers"]);
  });
});
