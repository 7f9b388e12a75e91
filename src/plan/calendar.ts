import type { Shop } from "../job/job.ts";
import type { Moment } from "./shopPlan.ts";

/** The shop's clock: minutes since the first minute of 1970, on no time zone's time. */
export interface ShopCalendar {
  /** Minutes after midnight. */
  readonly opens: number;
  readonly closes: number;
  readonly isWorkDay: (day: number) => boolean;
}

type CalendarFacts = Pick<Shop, "hoursPerDay" | "workDays" | "holidays">;

/**
 * Working hours from 07:00 on, in whole minutes; a day too long to end by midnight starts earlier. No breaks are taken out:
 * hours a day are hours worked.
 */
export function shopCalendar({ hoursPerDay, workDays, holidays }: CalendarFacts): ShopCalendar {
  const length = Math.min(Math.ceil(hoursPerDay / SECONDS_IN_MINUTE), DAY);
  const opens = Math.min(USUAL_OPENING, DAY - length);
  const weekdays = new Set<string>(workDays);
  const closed = new Set(holidays.map(dayNumber));
  return {
    opens,
    closes: opens + length,
    isWorkDay: (day) => weekdays.has(weekdayOf(day)) && !closed.has(day),
  };
}

/** Days since 1 January 1970 of a day written year-month-day. */
export function dayNumber(day: string): number {
  const [year = Number.NaN, month = Number.NaN, date = Number.NaN] = day.split("-").map(Number);
  const milliseconds = Date.UTC(year, month - 1, date);
  if (!Number.isFinite(milliseconds)) throw new RangeError(`"${day}" is not a day written year-month-day`);
  return milliseconds / MILLISECONDS_IN_DAY;
}

/** The first working minute at or after `at`. */
export function nextWork(calendar: ShopCalendar, at: number): number {
  let day = Math.floor(at / DAY);
  if (calendar.isWorkDay(day) && at < day * DAY + calendar.closes) return Math.max(at, day * DAY + calendar.opens);
  do day += 1;
  while (!calendar.isWorkDay(day));
  return day * DAY + calendar.opens;
}

/** When work of `minutes` ends that starts at the first working minute at or after `at`. */
export function addWork(calendar: ShopCalendar, at: number, minutes: number): number {
  let start = nextWork(calendar, at);
  let left = minutes;
  for (;;) {
    const closes = Math.floor(start / DAY) * DAY + calendar.closes;
    if (start + left <= closes) return start + left;
    left -= closes - start;
    start = nextWork(calendar, closes);
  }
}

/** The latest start of work of `minutes` that ends at or before `at`. */
export function subtractWork(calendar: ShopCalendar, at: number, minutes: number): number {
  let end = lastWork(calendar, at);
  let left = minutes;
  for (;;) {
    const opens = dayOfEnd(end) * DAY + calendar.opens;
    if (end - left >= opens) return end - left;
    left -= end - opens;
    end = lastWork(calendar, opens);
  }
}

/** Working minutes between two moments; zero where they are in the other order. */
export function workBetween(calendar: ShopCalendar, from: number, to: number): number {
  let sum = 0;
  for (let at = nextWork(calendar, from); at < to; ) {
    const closes = Math.floor(at / DAY) * DAY + calendar.closes;
    sum += Math.min(closes, to) - at;
    at = nextWork(calendar, closes);
  }
  return sum;
}

/** A start as day and minute. */
export function startMoment(at: number): Moment {
  const day = Math.floor(at / DAY);
  return { day: dayText(day), minute: at - day * DAY };
}

/** A finish as day and minute; midnight belongs to the day that ends, as 24:00. */
export function finishMoment(at: number): Moment {
  const day = dayOfEnd(at);
  return { day: dayText(day), minute: at - day * DAY };
}

export const DAY = 1440;
const SECONDS_IN_MINUTE = 60;
const USUAL_OPENING = 7 * 60;
const MILLISECONDS_IN_DAY = 86_400_000;
const WEEKDAYS = ["Thu", "Fri", "Sat", "Sun", "Mon", "Tue", "Wed"] as const;

/** 1 January 1970 was a Thursday. */
function weekdayOf(day: number): string {
  return WEEKDAYS[((day % 7) + 7) % 7] ?? "";
}

function dayText(day: number): string {
  return new Date(day * MILLISECONDS_IN_DAY).toISOString().slice(0, 10);
}

/** The day that a moment ends on: midnight ends the day before. */
function dayOfEnd(at: number): number {
  return Math.ceil(at / DAY) - 1;
}

/** The last moment at or before `at` that ends working time. */
function lastWork(calendar: ShopCalendar, at: number): number {
  let day = dayOfEnd(at);
  if (calendar.isWorkDay(day) && at > day * DAY + calendar.opens) return Math.min(at, day * DAY + calendar.closes);
  do day -= 1;
  while (!calendar.isWorkDay(day));
  return day * DAY + calendar.closes;
}
