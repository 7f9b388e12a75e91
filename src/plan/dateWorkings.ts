import type { Shop } from "../job/job.ts";
import { apply } from "../working/formula.ts";
import { given, type Quantity } from "../working/quantity.ts";
import { DAY, dayNumber, type ShopCalendar, shopCalendar, workBetween } from "./calendar.ts";
import { clockEnd, daysToSpare, deliveryDays, itemStart, wholeMinutes, workEnd } from "./formulas.ts";
import type { DatedItem, Moment, ShopPlan } from "./shopPlan.ts";

/**
 * How the delivery day comes about: the chain of items from the start day to the last end, each after the one that it
 * waited for; then the calendar days, and those to spare where a due day is set. Throws RangeError for a plan without items.
 */
export function deliveryWorking(plan: ShopPlan, shop: Shop): readonly Quantity[] {
  const clock = clockOf(plan, shop);
  const last = plan.items.find(({ finish }) => clock.at(finish) === clock.at(plan.finish));
  if (last === undefined) throw new RangeError("the plan has no item that ends it");
  const { end } = datesOf(chainTo(plan, last), clock);
  const days = apply(deliveryDays, { t_end: end }, { means: `calendar days from ${shop.start} to delivery on ${plan.finish.day}` });
  if (shop.due === undefined) return [days];
  const due = dayNumber(shop.due) - dayNumber(shop.start);
  const n_due = given(due, "1", "n_due", `calendar days from ${shop.start} to the due day ${shop.due}`, { kind: "job", path: "shop.due", typed: shop.due });
  return [days, apply(daysToSpare, { n_due, n_deliver: days })];
}

/** How start and end of an item come about, by the chain of items that led to it; undefined where the plan has no such item. */
export function itemWorking(plan: ShopPlan, shop: Shop, id: string): readonly Quantity[] | undefined {
  const item = plan.items.find((one) => one.id === id);
  if (item === undefined) return undefined;
  const { start, end } = datesOf(chainTo(plan, item), clockOf(plan, shop));
  return [start, end];
}

/** The items that an item waited for, one after the other, and the item itself. */
function chainTo(plan: ShopPlan, last: DatedItem): readonly DatedItem[] {
  const byId = new Map(plan.items.map((item) => [item.id, item]));
  const chain: DatedItem[] = [];
  for (let item: DatedItem | undefined = last; item !== undefined; item = item.waitsFor === undefined ? undefined : byId.get(item.waitsFor)) {
    chain.unshift(item);
  }
  return chain;
}

interface Clock {
  readonly calendar: ShopCalendar;
  /** Minutes since the first minute of 1970. */
  readonly at: (moment: Moment) => number;
  readonly beginAt: number;
  /** The same, hours after the first midnight. */
  readonly begin: Quantity<"h">;
}

function clockOf(plan: ShopPlan, shop: Shop): Clock {
  const at = ({ day, minute }: Moment): number => dayNumber(day) * DAY + minute;
  const beginAt = at(plan.start);
  const hours = (beginAt - dayNumber(shop.start) * DAY) / MINUTES;
  const means = `the shop opens on ${momentText(plan.start)}: hours after the first midnight of ${shop.start}`;
  const begin = given(hours, "h", "t_0", means, { kind: "job", path: "shop.start", typed: shop.start });
  return { calendar: shopCalendar(shop), at, beginAt, begin };
}

const MINUTES = 60;

/** Start and end of the last of a chain. Each end has a symbol of its own, so that the chain can be followed. */
function datesOf(chain: readonly DatedItem[], { calendar, at, beginAt, begin }: Clock): { readonly start: Quantity<"h">; readonly end: Quantity<"h"> } {
  let dates = { start: begin, end: begin };
  chain.forEach((item, place) => {
    const { what, kind, hours, start, finish } = item;
    const before = chain[place - 1];
    const t_ready = dates.end;
    const words = { symbol: `t_${place + 1}`, means: `${what}, to ${momentText(finish)}` };
    const H_take = apply(wholeMinutes, { H: hours }, { means: `hours, in whole minutes: ${what}` });
    if (kind === "wait" || kind === "lead") {
      dates = { start: t_ready, end: apply(clockEnd, { t_ready, H_take }, words) };
      return;
    }
    const ready = before === undefined ? beginAt : at(before.finish);
    const H_until = closed((at(start) - ready) / MINUTES, "H_until", `hours until the shop works: ${what}`);
    const shut = at(finish) - at(start) - workBetween(calendar, at(start), at(finish));
    const H_shut = closed(shut / MINUTES, "H_shut", `hours in which the shop is closed: ${what}`);
    dates = {
      start: apply(itemStart, { t_ready, H_until }, { means: `${what}, from ${momentText(start)}` }),
      end: apply(workEnd, { t_ready, H_until, H_take, H_shut }, words),
    };
  });
  return dates;
}

function closed(hours: number, symbol: string, means: string): Quantity<"h"> {
  return given(hours, "h", symbol, means, { kind: "job", path: "shop.hoursPerDay, shop.workDays, shop.holidays" });
}

function momentText({ day, minute }: Moment): string {
  const two = (n: number): string => String(n).padStart(2, "0");
  return `${day} ${two(Math.floor(minute / MINUTES))}:${two(minute % MINUTES)}`;
}
