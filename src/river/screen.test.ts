import { describe, expect, it } from "vitest";
import { DEMO_JOBS } from "../../test/demoJobs.ts";
import { workingView } from "../working/workingView.ts";
import { makeScreenRiver, type WorkingOf } from "./screen.ts";

describe.each(DEMO_JOBS)("numbers on the screen of $name", ({ job, book }) => {
  const river = makeScreenRiver();
  const { build, findings, headline, quote, plan } = river.run(job, book);
  if ("unpriced" in headline) throw new Error(headline.unpriced);
  /** The values that a working ends in. */
  const results = (of: WorkingOf): readonly number[] => {
    const working = river.working(of);
    return (working?.results ?? []).map((label) => working!.steps.find((step) => step.kind !== "comparison" && step.label === label)!).map((step) => (step.kind === "comparison" ? NaN : step.value));
  };

  it("lead to a working that ends in them", () => {
    expect(results({ kind: "price" })).toEqual([headline.priceCents]);
    for (const { id, count, amountCents } of quote) {
      expect(results({ kind: "quote line", id })).toEqual([amountCents]);
      expect(results({ kind: "quote count", id })).toEqual([count]);
    }
    for (const group of new Set(quote.map((line) => line.group))) {
      expect(results({ kind: "quote group", id: group })).toEqual([quote.filter((line) => line.group === group).reduce((sum, { amountCents }) => sum + amountCents, 0)]);
    }
    const stays = build.parts.filter(({ temporary }) => !temporary);
    for (const role of new Set(stays.map((part) => part.role))) {
      expect(results({ kind: "mass of role", id: role })[0]).toBeCloseTo(stays.filter((part) => part.role === role).reduce((sum, { mass }) => sum + mass, 0), 6);
    }
    for (const { id, mass } of stays) expect(results({ kind: "mass of part", id })[0]).toBeCloseTo(mass, 9);
    for (const { id } of plan) expect(results({ kind: "plan item", id })).toHaveLength(2);
    expect(results({ kind: "delivery day" })[1]).toBe(headline.daysToSpare);
    expect(results({ kind: "clear size" })).toHaveLength(3);
    expect(results({ kind: "size of part", id: stays[0]!.id })).toHaveLength(3);
    for (const { id } of findings) expect(river.working({ kind: "finding", id })).toBeDefined();
  });

  it("of heat lead to theirs, before and after the slow checks run apart", () => {
    const { faces, junctions, openings, loss, yearlyHeat } = river.heat()!;
    for (const { surface, field, bridged } of faces) {
      expect(results({ kind: "field transmittance", id: surface })).toEqual([field]);
      expect(results({ kind: "face transmittance", id: surface })).toEqual([bridged]);
    }
    for (const { id, psi } of junctions) expect(results({ kind: "junction transmittance", id })).toEqual([psi]);
    for (const { opening, transmittance } of openings) expect(results({ kind: "opening transmittance", id: opening })).toEqual([transmittance]);
    expect(results({ kind: "heat loss" })).toEqual([loss]);
    expect(results({ kind: "yearly heat" })).toEqual([yearlyHeat]);
    const apart = makeScreenRiver();
    expect(apart.heat()).toBeUndefined();
    expect(apart.sections()).toEqual([]);
    apart.quick(job, book);
    apart.slow(job);
    expect(apart.heat()).toEqual(river.heat());
    expect(apart.sections()).toEqual(river.sections());
  });

  it("stand behind a picture for every section listed, which can be posted between threads", () => {
    const sections = river.sections();
    expect(new Set(sections.map(({ name }) => name)).size).toBe(sections.length);
    for (const { id, coldest } of sections) {
      const picture = river.picture(id, "design", job.units);
      expect(picture?.coldest).toEqual(coldest);
      expect(structuredClone(picture)).toEqual(picture);
    }
    expect(river.picture(sections[0]!.id, 0, job.units)?.hour).toBe(job.site.monthly === undefined ? undefined : 0);
    expect(river.picture("no such section", "design", job.units)).toBeUndefined();
  });

  it("lead nowhere where the last run has no such thing", () => {
    const kinds = ["finding", "mass of part", "mass of role", "size of part", "quote line", "quote count", "quote group", "plan item"] as const;
    const ofHeat = ["field transmittance", "face transmittance", "junction transmittance", "opening transmittance"] as const;
    for (const kind of [...kinds, ...ofHeat]) expect(river.working({ kind, id: "no such thing" })).toBeUndefined();
  });
});

describe("workings set out for reading", () => {
  const style = { system: "metric" } as const;

  it("sets out every working of every demo job with a source in each row", () => {
    for (const { job, book } of DEMO_JOBS) {
      const river = makeScreenRiver();
      const { findings } = river.run(job, book);
      const shown = findings.flatMap(({ id }) => river.working({ kind: "finding", id }) ?? []).map((one) => workingView(one, style));
      expect(shown.length).toBe(findings.length);
      for (const { given, worked } of shown) {
        for (const row of [...given, ...worked]) expect([row.symbol, row.means, row.value, row.source].every((text) => text !== "")).toBe(true);
      }
    }
  });

  it("keeps the price's working short enough to read", () => {
    const [{ job, book }] = DEMO_JOBS as [(typeof DEMO_JOBS)[number]];
    const river = makeScreenRiver();
    river.run(job, book);
    const price = river.working({ kind: "price" });
    if (price === undefined) return expect.unreachable();
    const { given, worked, results } = workingView(price, style);
    expect(given.length + worked.length).toBeLessThan(price.steps.length / 4);
    expect(results).toHaveLength(1);
  });
});
