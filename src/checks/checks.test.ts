import { describe, expect, test } from "vitest";
import { checkWorking } from "../../test/checkWorking.ts";
import { demoBuilds } from "../../test/demoBuilds.ts";
import { handBuild } from "../../test/handBuilt.ts";
import { typedAt } from "../job/file.ts";
import type { Quantity } from "../working/quantity.ts";
import { CHECKS, checksAt, runChecks } from "./checks.ts";

test("every check says what it asks, needs, leaves out and who decides", () => {
  for (const check of CHECKS) {
    expect(check.asks).toMatch(/\?$/);
    expect(check.needs.length).toBeGreaterThan(0);
    expect(check.leavesOut).not.toBe("");
    expect(check.decides).not.toBe("");
  }
});

test("quick and slow checks are all of them, the slow ones last", () => {
  expect([...checksAt("quick"), ...checksAt("slow")]).toEqual(CHECKS);
  expect(checksAt("slow").length).toBeGreaterThan(0);
});

describe.each(demoBuilds())("job fields behind the findings of $name", ({ build, file }) => {
  test("are places where something is typed", () => {
    const paths = new Set(runChecks(build).flatMap(({ working, comparison }) => [...working, ...(comparison === undefined ? [] : [comparison.left, comparison.right])]).flatMap(jobPaths));
    expect(paths.size).toBeGreaterThan(0);
    expect([...paths].filter((path) => typedAt(file, path) === undefined)).toEqual([]);
  });
});

/** The job fields that a quantity rests on. */
function jobPaths({ origin }: Quantity): readonly string[] {
  if (origin.kind === "given") return origin.from.kind === "job" ? [origin.from.path] : [];
  return Object.values(origin.inputs).flat().flatMap((input) => jobPaths(input));
}

describe.each([...demoBuilds(), { name: "bare sample", build: handBuild() }])("$name", ({ build }) => {
  const findings = runChecks(build);

  test("finding ids are their own, under the check's id", () => {
    const ids = findings.map(({ id }) => id);
    expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([]);
    for (const { id, check } of findings) expect(id.startsWith(`${check}/`)).toBe(true);
  });

  test("the same build gives the same findings in the same order", () => {
    expect(JSON.stringify(runChecks(build))).toBe(JSON.stringify(findings));
  });

  test("every working gives the same from its text", () => {
    const checked = findings.map(({ working, comparison }) =>
      checkWorking([...working, ...(comparison === undefined ? [] : [comparison.left, comparison.right])]),
    );
    expect(checked.reduce((sum, count) => sum + count, 0)).toBeGreaterThan(0);
  });

  test("a comparison that holds is never a stop or a watch, and one that fails never a pass", () => {
    for (const { comparison, verdict, id } of findings) {
      if (comparison === undefined) continue;
      expect(comparison.holds || verdict !== "pass", id).toBe(true);
      expect(!comparison.holds || (verdict !== "stop" && verdict !== "watch"), id).toBe(true);
    }
  });

  test("facts and sentences hold no broken number", () => {
    for (const { facts, says, id } of findings) {
      for (const fact of Object.values(facts)) if (typeof fact === "number") expect(Number.isFinite(fact), id).toBe(true);
      expect(says).toMatch(/^\S.*\.$/);
      expect(says).not.toMatch(/NaN|undefined|Infinity|\s{2}/);
    }
  });

  test("what a finding is about is in the build", () => {
    const known = new Set([
      ...build.parts.map(({ id }) => id),
      ...build.openings.map(({ opening }) => opening.id),
      ...build.surfaces.map(({ id }) => id),
      ...build.job.items.map(({ id }) => id),
      ...build.rooms.map(({ room, name }) => room?.id ?? name),
    ]);
    for (const { about, id } of findings) expect(about.filter((one) => !known.has(one)), id).toEqual([]);
  });
});
