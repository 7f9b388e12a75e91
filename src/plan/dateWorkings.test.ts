import { describe, expect, test } from "vitest";
import { checkWorking } from "../../test/checkWorking.ts";
import { demoBuilds } from "../../test/demoBuilds.ts";
import { takeOffBuild } from "../takeoff/takeOffBuild.ts";
import { DAY, dayNumber } from "./calendar.ts";
import { deliveryWorking, itemWorking } from "./dateWorkings.ts";
import { planJob } from "./planJob.ts";
import type { Moment } from "./shopPlan.ts";

const demos = demoBuilds();
const { book } = demos[0]!;

describe.each(demos)("dates of $name", ({ build }) => {
  const { shop } = build.job;
  const plan = planJob(build, takeOffBuild(build), book);
  const hours = ({ day, minute }: Moment): number => ((dayNumber(day) - dayNumber(shop.start)) * DAY + minute) / 60;

  test("every item's working adds up to its start and end, to the second", () => {
    for (const item of plan.items) {
      const [start, end] = itemWorking(plan, shop, item.id) ?? [];
      expect(start?.value, item.id).toBeCloseTo(hours(item.start), 4);
      expect(end?.value, item.id).toBeCloseTo(hours(item.finish), 4);
    }
    expect(itemWorking(plan, shop, "no such item")).toBeUndefined();
  });

  test("the delivery day follows from a chain whose every text gives its value", () => {
    const [days, spare] = deliveryWorking(plan, shop);
    expect(days?.value).toBe(dayNumber(plan.finish.day) - dayNumber(shop.start));
    expect(spare?.value).toBe(plan.daysToSpare);
    expect(checkWorking(deliveryWorking(plan, shop))).toBeGreaterThan(10);
  });

  test("what an item waits for ends last of all that it follows", () => {
    const finishOf = new Map(plan.items.map(({ id, finish }) => [id, hours(finish)]));
    for (const { id, after, waitsFor } of plan.items) {
      if (waitsFor === undefined) expect(after, id).toEqual([]);
      else for (const other of after) expect(finishOf.get(waitsFor), id).toBeGreaterThanOrEqual(finishOf.get(other)!);
    }
  });
});
