import { describe, expect, it } from "vitest";
import { DEMO_JOBS } from "../../../test/demoJobs.ts";
import { makeScreenRiver } from "../../river/screen.ts";
import { byStart, heaviest, massByRole, momentText, quoteGroups } from "./lists.ts";

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
      expect(plan.map(({ finish }) => finish.day).toSorted().at(-1)).toBe(headline.deliveryDay);
    }
  });

  it("writes a moment on the shop's clock", () => {
    expect(momentText({ day: "2027-02-01", minute: 425 })).toBe("2027-02-01 07:05");
  });
});
