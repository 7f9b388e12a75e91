import { addWork, nextWork, type ShopCalendar, subtractWork, workBetween } from "./calendar.ts";
import type { WorkItem } from "./shopPlan.ts";

/** What dating needs to know of an item. `minutes` is working time for work and hold points, time of the clock otherwise. */
export interface Task {
  readonly id: string;
  readonly kind: WorkItem["kind"];
  readonly minutes: number;
  readonly after: readonly string[];
  /** Items of one crew are done one at a time, in the order of the list; undefined where nobody is kept busy. */
  readonly crew: string | undefined;
}

/** Moments on the shop's clock; slack in working minutes. */
export interface TaskDates {
  /** Place of the last to end of those that it follows; undefined where it waits for none. */
  readonly waitsFor: number | undefined;
  readonly start: number;
  readonly finish: number;
  readonly slack: number;
}

/**
 * Dates items by the critical path method (Kelley and Walker 1959): a forward pass for the earliest start and finish, a
 * backward pass for the latest. Each crew does its items one at a time in the order of the list, so that an item also
 * follows the one before it in its crew; with that order fixed, a longer item or lead never makes delivery earlier.
 * `tasks` in an order in which each comes after those that it follows; throws RangeError otherwise, and where an id is
 * unknown or used twice. Minutes whole, zero or above.
 */
export function dateItems(tasks: readonly Task[], calendar: ShopCalendar, begin: number): readonly TaskDates[] {
  const before = predecessors(tasks);
  const starts: number[] = [];
  const finishes: number[] = [];
  const waitsFor = before.map((): number | undefined => undefined);
  tasks.forEach((task, at) => {
    const ends = (before[at] ?? []).map((other) => ({ other, end: finishes[other] ?? Number.NaN }));
    const ready = Math.max(begin, ...ends.map(({ end }) => end));
    waitsFor[at] = ends.find(({ end }) => end === ready)?.other;
    const start = isWorkingTime(task) ? nextWork(calendar, ready) : ready;
    starts.push(start);
    finishes.push(isWorkingTime(task) ? addWork(calendar, start, task.minutes) : start + task.minutes);
  });
  const latest = latestStarts(tasks, before, calendar, Math.max(begin, ...finishes));
  return tasks.map((_, at) => {
    const [start = Number.NaN, finish = Number.NaN, late = Number.NaN] = [starts[at], finishes[at], latest[at]];
    return { waitsFor: waitsFor[at], start, finish, slack: workBetween(calendar, start, late) };
  });
}

function latestStarts(
  tasks: readonly Task[],
  before: readonly (readonly number[])[],
  calendar: ShopCalendar,
  finish: number,
): readonly number[] {
  const latestFinish = tasks.map(() => finish);
  const latestStart = tasks.map(() => finish);
  for (let at = tasks.length - 1; at >= 0; at -= 1) {
    const task = tasks[at];
    const end = latestFinish[at];
    if (task === undefined || end === undefined) continue;
    const start = isWorkingTime(task) ? subtractWork(calendar, end, task.minutes) : end - task.minutes;
    latestStart[at] = start;
    for (const other of before[at] ?? []) latestFinish[other] = Math.min(latestFinish[other] ?? start, start);
  }
  return latestStart;
}

/** For each task the places of those that it follows: by precedence, and the one before it in its crew. */
function predecessors(tasks: readonly Task[]): readonly (readonly number[])[] {
  const placeOf = new Map<string, number>();
  const lastOf = new Map<string, number>();
  return tasks.map((task, at) => {
    if (placeOf.has(task.id)) throw new RangeError(`dateItems: two items have the id ${task.id}`);
    if (!Number.isInteger(task.minutes) || task.minutes < 0) throw new RangeError(`dateItems: ${task.id} takes ${task.minutes} minutes`);
    const places = task.after.map((id) => {
      const place = placeOf.get(id);
      if (place === undefined) throw new RangeError(`dateItems: ${task.id} follows ${id}, which does not stand before it`);
      return place;
    });
    placeOf.set(task.id, at);
    const last = task.crew === undefined ? undefined : lastOf.get(task.crew);
    if (task.crew !== undefined) lastOf.set(task.crew, at);
    return last === undefined ? places : [...places, last];
  });
}

function isWorkingTime({ kind }: Task): boolean {
  return kind === "work" || kind === "hold point";
}
