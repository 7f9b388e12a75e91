import type { Build } from "../build/build.ts";
import type { PriceBook } from "../job/priceBook.ts";
import { holdPointsOf, labourOf } from "../takeoff/labour.ts";
import type { Takeoff } from "../takeoff/takeoff.ts";
import { DAY, dayNumber, finishMoment, nextWork, shopCalendar, startMoment } from "./calendar.ts";
import { crewsOf } from "./crews.ts";
import { dateItems, type Task } from "./dateItems.ts";
import { draft } from "./draft.ts";
import type { DraftItem } from "./draftItem.ts";
import { fitOutItems } from "./fitOutItems.ts";
import { wholeMinutes } from "./formulas.ts";
import { leadsOf } from "./leads.ts";
import { liningItems } from "./liningItems.ts";
import { shellItems } from "./shellItems.ts";
import type { DatedItem, ShopPlan } from "./shopPlan.ts";

/**
 * Plans a job: work items from the build in building order, hours from the price book's tasks, cure and wait times, lead
 * times and hold points, dated by the critical path method with each crew on one item at a time.
 */
export function planJob(build: Build, takeoff: Takeoff, book: PriceBook): ShopPlan {
  const { shop } = build.job;
  const labour = labourOf(build, book);
  const holds = holdPointsOf(build);
  const leads = leadsOf(build, takeoff, book);
  const plan = draft(labour, crewsOf(build.job), leads);
  const shell = shellItems(build, plan, holds, leads.ofBox);
  const lined = liningItems(build, plan, holds, labour, shell);
  fitOutItems(build, plan, holds, labour, shell, lined);

  const calendar = shopCalendar(shop);
  const begin = nextWork(calendar, dayNumber(shop.start) * DAY);
  const dates = dateItems(plan.items.map(taskOf), calendar, begin);
  const items = plan.items.map(({ item }, at): DatedItem => {
    const dated = dates[at];
    if (dated === undefined) throw new RangeError(`item ${item.id} has no dates`);
    const { start, finish, slack, waitsFor } = dated;
    return {
      ...item,
      start: startMoment(start),
      finish: finishMoment(finish),
      waitsFor: waitsFor === undefined ? undefined : plan.items[waitsFor]?.item.id,
      slackHours: slack / MINUTES,
      critical: slack === 0,
    };
  });
  const finish = finishMoment(Math.max(...dates.map((one) => one.finish)));
  return {
    items,
    critical: items.filter(({ critical }) => critical).map(({ id }) => id),
    unknownLeads: leads.unknown,
    start: startMoment(begin),
    finish,
    daysToSpare: shop.due === undefined ? undefined : dayNumber(shop.due) - dayNumber(finish.day),
  };
}

const MINUTES = 60;

function taskOf({ item, resource }: DraftItem): Task {
  const { id, kind, after, hours } = item;
  return { id, kind, after, crew: resource, minutes: Math.round(wholeMinutes.compute({ H: hours.value }) * MINUTES) };
}
