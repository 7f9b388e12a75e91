import { describe, expect, it } from "vitest";
import { DEMO_JOBS } from "../../../test/demoJobs.ts";
import { makeScreenRiver } from "../../river/screen.ts";
import { amountWords, byStart, heaviest, massByRole, momentText, quoteGroups } from "./lists.ts";

const SCREENS = DEMO_JOBS.map(({ job, book }) => makeScreenRiver().run(job, book));

describe("the lists behind the four numbers", () => {
  it("masses by role come to the mass of the box", () => {
    for (const { build, headline } of SCREENS) {
      const total = massByRole(build.parts).reduce((sum, { mass }) => sum + mass, 0);
      expect(total).toBeCloseTo(headline.mass, 6);
      const [first, second] = heaviest(build.parts, 2);
      expect((first?.mass ?? Number.NaN) >= (second?.mass ?? Number.NaN)).toBe(true);
    }
  });

  it("quote groups hold every line once and add up to the cent", () => {
    for (const { quote } of SCREENS) {
      const groups = quoteGroups(quote);
      expect(groups.flatMap(({ lines }) => lines)).toHaveLength(quote.length);
      const total = quote.reduce((sum, { amountCents }) => sum + amountCents, 0);
      expect(groups.reduce((sum, { amountCents }) => sum + amountCents, 0)).toBe(total);
    }
  });

  it("the plan ends on the delivery day", () => {
    for (const { plan, headline } of SCREENS) {
      const ordered = byStart(plan);
      expect(ordered).toHaveLength(plan.length);
      const starts = ordered.map(({ start }) => momentText(start));
      expect(starts).toEqual(starts.toSorted());
      expect(plan.map(({ finish }) => finish.day).toSorted().at(-1)).toBe("unpriced" in headline ? headline.unpriced : headline.deliveryDay);
    }
  });

  it("say what is bought in the units shown, with the right word", () => {
    expect(["metric", "imperial"].map((system) => amountWords(21.95, "metre of whole bars", system as "metric" | "imperial"))).toEqual(["21.95 m of whole bars", "72.01 ft of whole bars"]);
    expect(amountWords(2.9728, "m2 of whole sheets", "imperial")).toBe("32 ft² of whole sheets");
    expect([amountWords(3.785411784, "litre", "imperial"), amountWords(20, "litre", "metric")]).toEqual(["1 US gal", "20 L"]);
    expect([amountWords(1, "piece", "metric"), amountWords(2, "pack", "imperial"), amountWords(12.5, "hour", "metric")]).toEqual(["1 piece", "2 packs", "12.5 hours"]);
    const measures = new Set(SCREENS.flatMap(({ quote }) => quote.map(({ per }) => per)).filter((per) => !/^(piece|pack|set|hour)$/.test(per)));
    for (const per of measures) expect(amountWords(2, per, "imperial"), per).toMatch(/ (ft|ft²|US gal)( |$)/);
  });

  it("writes a moment on the shop's clock", () => {
    expect(momentText({ day: "2027-02-01", minute: 425 })).toBe("2027-02-01 07:05");
  });
});
