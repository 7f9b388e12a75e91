import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { DAY, dayNumber, shopCalendar, type ShopCalendar } from "./calendar.ts";
import { dateItems, type Task } from "./dateItems.ts";

const SEED = 4302;
const always: ShopCalendar = { opens: 0, closes: DAY, isWorkDay: () => true };
const shop = shopCalendar({ hoursPerDay: 8 * 3600, workDays: ["Mon", "Tue", "Thu", "Fri"], holidays: ["2027-02-05"] });
const BEGIN = dayNumber("2027-02-01") * DAY + 420;

interface Activity {
  readonly name: string;
  readonly time: number;
  readonly dates: readonly [es: number, ef: number, ls: number, lf: number, slack: number];
}

/**
 * Two networks with activities on arrows: an activity 2-4 follows every activity that ends in node 2. Seen in a public copy of
 * the problem solutions to B. W. Taylor, Introduction to Management Science, chapter 8, Project Management ("network
 * construction and analysis"): times, ES, EF, LS, LF and slack, critical paths 1-3-4-5-6 (20) and 1-3-5-7-8-9 (38).
 */
const NETWORKS: readonly { readonly name: string; readonly length: number; readonly critical: readonly string[]; readonly activities: readonly Activity[] }[] = [
  {
    name: "six nodes",
    length: 20,
    critical: ["1-3", "3-4", "4-5", "5-6"],
    activities: [
      { name: "1-2", time: 7, dates: [0, 7, 2, 9, 2] },
      { name: "1-3", time: 10, dates: [0, 10, 0, 10, 0] },
      { name: "2-4", time: 6, dates: [7, 13, 9, 15, 2] },
      { name: "3-4", time: 5, dates: [10, 15, 10, 15, 0] },
      { name: "3-5", time: 4, dates: [10, 14, 14, 18, 4] },
      { name: "4-5", time: 3, dates: [15, 18, 15, 18, 0] },
      { name: "5-6", time: 2, dates: [18, 20, 18, 20, 0] },
    ],
  },
  {
    name: "nine nodes",
    length: 38,
    critical: ["1-3", "3-5", "5-7", "7-8", "8-9"],
    activities: [
      { name: "1-2", time: 8, dates: [0, 8, 1, 9, 1] },
      { name: "1-3", time: 10, dates: [0, 10, 0, 10, 0] },
      { name: "1-4", time: 9, dates: [0, 9, 6, 15, 6] },
      { name: "2-5", time: 6, dates: [8, 14, 9, 15, 1] },
      { name: "2-6", time: 4, dates: [8, 12, 16, 20, 8] },
      { name: "3-5", time: 5, dates: [10, 15, 10, 15, 0] },
      { name: "4-5", time: 0, dates: [9, 9, 15, 15, 6] },
      { name: "4-7", time: 7, dates: [9, 16, 20, 27, 11] },
      { name: "5-7", time: 12, dates: [15, 27, 15, 27, 0] },
      { name: "5-8", time: 15, dates: [15, 30, 16, 31, 1] },
      { name: "6-9", time: 18, dates: [12, 30, 20, 38, 8] },
      { name: "7-8", time: 4, dates: [27, 31, 27, 31, 0] },
      { name: "8-9", time: 7, dates: [31, 38, 31, 38, 0] },
    ],
  },
];

describe.each(NETWORKS)("published: $name", ({ activities, length, critical }) => {
  const tasks = activities.map(({ name, time }): Task => {
    const after = activities.filter((other) => other.name.split("-")[1] === name.split("-")[0]).map((other) => other.name);
    return { id: name, kind: "work", minutes: time, after, crew: undefined };
  });
  const dates = dateItems(tasks, always, 0);

  test.each(activities.map((activity, at) => ({ ...activity, at })))("$name", ({ dates: wanted, at }) => {
    const { start, finish, slack } = dates[at]!;
    expect([start, finish, start + slack, finish + slack, slack]).toEqual(wanted);
  });

  test("length and critical path", () => {
    expect(Math.max(...dates.map(({ finish }) => finish))).toBe(length);
    expect(tasks.filter((_, at) => dates[at]!.slack === 0).map(({ id }) => id)).toEqual(critical);
  });
});

/** Up to 9 tasks, each after some of those before it. */
const someTasks = (crews: readonly (string | undefined)[]): fc.Arbitrary<readonly Task[]> =>
  fc
    .array(
      fc.record({
        kind: fc.constantFrom("work", "wait", "lead", "hold point"),
        minutes: fc.integer({ min: 1, max: 900 }),
        follows: fc.array(fc.nat({ max: 8 }), { maxLength: 3 }),
        crew: fc.constantFrom(...crews),
      }),
      { minLength: 1, maxLength: 9 },
    )
    .map((drafts) =>
      drafts.map(({ kind, minutes, follows, crew }, at): Task => ({
        id: `t${at}`,
        kind,
        minutes,
        after: at === 0 ? [] : [...new Set(follows.map((place) => `t${place % at}`))],
        crew: kind === "work" ? crew : undefined,
      })),
    );

describe("identity", () => {
  test("with crews without limit, delivery is the longest chain, every chain walked minute by minute", () => {
    fc.assert(
      fc.property(someTasks([undefined]), (tasks) => {
        const finish = Math.max(...dateItems(tasks, shop, BEGIN).map((one) => one.finish));
        expect(finish).toBe(Math.max(...chainsOf(tasks).map(walked)));
      }),
      { seed: SEED, numRuns: 60 },
    );
  });

  test("nothing starts before what it follows ends, and no crew does two things at once", () => {
    fc.assert(
      fc.property(someTasks(["a", "b", undefined]), (tasks) => {
        const dates = dateItems(tasks, shop, BEGIN);
        const byId = new Map(tasks.map(({ id }, at) => [id, dates[at]!]));
        tasks.forEach(({ after }, at) => {
          for (const id of after) expect(dates[at]!.start).toBeGreaterThanOrEqual(byId.get(id)!.finish);
        });
        for (const crew of ["a", "b"]) {
          const own = tasks.flatMap((task, at) => (task.crew === crew ? [dates[at]!] : [])).sort((a, b) => a.start - b.start);
          own.slice(1).forEach((next, at) => expect(next.start).toBeGreaterThanOrEqual(own[at]!.finish));
        }
      }),
      { seed: SEED, numRuns: 300 },
    );
  });

  test("a longer item makes nothing earlier", () => {
    fc.assert(
      fc.property(someTasks(["a", "b", undefined]), fc.nat({ max: 8 }), fc.integer({ min: 1, max: 3000 }), (tasks, place, more) => {
        const longer = tasks.map((task, at) => (at === place % tasks.length ? { ...task, minutes: task.minutes + more } : task));
        const before = dateItems(tasks, shop, BEGIN);
        dateItems(longer, shop, BEGIN).forEach(({ finish }, at) => expect(finish).toBeGreaterThanOrEqual(before[at]!.finish));
      }),
      { seed: SEED, numRuns: 300 },
    );
  });

  test("work that takes up its slack moves nothing, and with more it moves delivery", () => {
    fc.assert(
      fc.property(someTasks(["a", undefined]), fc.nat({ max: 8 }), (tasks, place) => {
        const at = place % tasks.length;
        const chosen = tasks[at]!;
        fc.pre(chosen.kind === "work");
        const finishWith = (minutes: number): number => {
          const changed = tasks.map((task) => (task === chosen ? { ...task, minutes } : task));
          return Math.max(...dateItems(changed, shop, BEGIN).map(({ finish }) => finish));
        };
        const dates = dateItems(tasks, shop, BEGIN);
        const { slack } = dates[at]!;
        const finish = Math.max(...dates.map((one) => one.finish));
        expect(finishWith(chosen.minutes + slack)).toBe(finish);
        expect(finishWith(chosen.minutes + slack + 1)).toBeGreaterThan(finish);
      }),
      { seed: SEED, numRuns: 300 },
    );
  });
});

describe("domain", () => {
  const task: Task = { id: "a", kind: "work", minutes: 1, after: [], crew: undefined };
  test.for([
    { what: "an id used twice", tasks: [task, task] },
    { what: "a task that follows a later one", tasks: [{ ...task, after: ["b"] }, { ...task, id: "b" }] },
    { what: "minutes that are not whole", tasks: [{ ...task, minutes: 0.5 }] },
    { what: "minutes below zero", tasks: [{ ...task, minutes: -1 }] },
  ])("refuses $what", ({ tasks }) => {
    expect(() => dateItems(tasks, shop, BEGIN)).toThrow(RangeError);
  });
});

/** Every chain of tasks from one that follows nothing. */
function chainsOf(tasks: readonly Task[]): readonly (readonly Task[])[] {
  const byId = new Map(tasks.map((task) => [task.id, task]));
  const chainsTo = (task: Task): readonly (readonly Task[])[] =>
    task.after.length === 0 ? [[task]] : task.after.flatMap((id) => chainsTo(byId.get(id)!).map((chain) => [...chain, task]));
  return tasks.flatMap(chainsTo);
}

/** When a chain ends, by a clock that ticks each minute. */
function walked(chain: readonly Task[]): number {
  let minute = BEGIN;
  for (const { kind, minutes } of chain) {
    const takesWork = kind === "work" || kind === "hold point";
    for (let left = minutes; left > 0; minute += 1) {
      const day = Math.floor(minute / DAY);
      const ofDay = minute - day * DAY;
      const isOpen = shop.isWorkDay(day) && ofDay >= shop.opens && ofDay < shop.closes;
      if (!takesWork || isOpen) left -= 1;
    }
  }
  return minute;
}
