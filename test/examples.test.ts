import { existsSync, readdirSync, readFileSync } from "node:fs";
import { describe, expect, it, test } from "vitest";
import { runRiver } from "../src/river/river.ts";
import type { Quantity } from "../src/working/quantity.ts";
import { brokenNumbers } from "./brokenNumbers.ts";
import { checkWorking } from "./checkWorking.ts";
import { DEMO_JOBS } from "./demoJobs.ts";
import { type HeadlineNumbers, headlineNumbers } from "./headlineNumbers.ts";

test("three demo jobs stand in the examples, each with its headline numbers, and no numbers without a job", () => {
  const names = DEMO_JOBS.map(({ name }) => name);
  expect(names.length).toBeGreaterThanOrEqual(3);
  expect(names.filter((name) => !existsSync(headlinePath(name)))).toEqual([]);
  const numbered = readdirSync("examples").filter((file) => file.endsWith(".headline.json"));
  expect(numbered.map((file) => file.replace(".headline.json", ""))).toEqual(names);
});

describe.each(DEMO_JOBS)("$name", ({ name, job, book }) => {
  const river = runRiver(job, book);

  it("keeps its headline numbers (rewrite with npm run headlines, and read the difference)", () => {
    const kept = JSON.parse(readFileSync(headlinePath(name), "utf8")) as HeadlineNumbers;
    const now = headlineNumbers(river);
    expect(now).toEqual({
      ...kept,
      massKg: near(kept.massKg, 0.001),
      foamM3: near(kept.foamM3, 1e-6),
      labourHours: near(kept.labourHours, 1e-4),
      tightest: Object.fromEntries(
        Object.entries(kept.tightest).map(([check, { margin, ...rest }]) => [
          check,
          { ...rest, margin: near(margin, Math.max(1e-9, 1e-5 * Math.abs(margin))) },
        ]),
      ),
    });
  });

  it("gives a working for every finding that the texts of its formulas give again", () => {
    const steps = river.findings.map(({ id, working, comparison }) => {
      const sides = comparison === undefined ? [] : [comparison.left, comparison.right];
      return { id, steps: checkWorking([...working, ...sides]) };
    });
    expect(steps.length).toBeGreaterThan(0);
    expect(steps.some((finding) => finding.steps > 0)).toBe(true);
  });

  it("gives quantities, prices and hours that the texts of their formulas give again", () => {
    const { takeoff, quote, plan } = river;
    const bought = takeoff.lines.flatMap(({ net, also, buy }) => [net, ...also, buy.count, ...(buy.holds === undefined ? [] : [buy.holds])]);
    const priced = quote.lines.flatMap(({ count, rate, amount }) => [count, rate, amount]);
    const totals = [quote.labourHours, quote.direct, quote.overhead, quote.contingency, quote.cost, quote.margin, quote.price, quote.tax, quote.total];
    const figures: readonly Quantity[] = [...bought, ...priced, ...totals, ...plan.items.map(({ hours }) => hours)];
    expect(checkWorking(figures)).toBeGreaterThan(figures.length / 2);
  });

  it("holds no number that is not finite", () => {
    expect(brokenNumbers(river)).toEqual([]);
  });

  it("weighs what its parts weigh and costs what its lines cost, to the gram and the cent", () => {
    const { build, quote, headline } = river;
    const parts = build.parts.filter(({ temporary }) => !temporary).reduce((sum, { mass }) => sum + mass, 0);
    expect(Math.abs(headline.mass - parts)).toBeLessThan(0.001);
    expect(quote.direct.value).toBe(quote.lines.reduce((sum, { amount }) => sum + amount.value, 0));
    expect(quote.cost.value).toBe(quote.direct.value + quote.overhead.value + quote.contingency.value);
    expect(quote.price.value).toBe(quote.cost.value + quote.margin.value);
    expect(quote.total.value).toBe(quote.price.value + quote.tax.value);
    expect(quote.lines.every(({ amount }) => Number.isInteger(amount.value))).toBe(true);
  });
});

function headlinePath(name: string): string {
  return `examples/${name}.headline.json`;
}

/** Stands in a comparison for any number within `tolerance` of `wanted`. */
function near(wanted: number, tolerance: number): unknown {
  return {
    asymmetricMatch: (found: unknown) => typeof found === "number" && Math.abs(found - wanted) <= tolerance,
    toString: () => `a number within ${tolerance} of ${wanted}`,
  };
}
