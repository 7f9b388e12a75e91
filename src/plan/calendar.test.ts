import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addWork, DAY, dayNumber, finishMoment, nextWork, shopCalendar, startMoment, subtractWork, workBetween } from "./calendar.ts";

const SEED = 4301;
const WEEK = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"] as const;
const usual = shopCalendar({ hoursPerDay: 8 * 3600, workDays: ["Mon", "Tue", "Wed", "Thu", "Fri"], holidays: ["2027-02-15"] });
const at = (day: string, minute: number): number => dayNumber(day) * DAY + minute;

const someCalendar = fc
  .record({
    minutes: fc.integer({ min: 1, max: DAY }),
    workDays: fc.subarray([...WEEK], { minLength: 1 }),
    holidays: fc.subarray(["2027-02-01", "2027-02-02", "2027-02-08", "2027-02-15", "2027-02-16", "2027-02-17"]),
  })
  .map(({ minutes, workDays, holidays }) => shopCalendar({ hoursPerDay: minutes * 60, workDays, holidays }));
const someMoment = fc.integer({ min: at("2027-02-01", 0), max: at("2027-02-20", 0) });
const someWork = fc.integer({ min: 1, max: 4000 });

describe("published", () => {
  /** ISO 8601 weekday 1 is Monday; 4 January 2027 and 29 February 2028 by any printed calendar. */
  test.for([
    { day: "2027-01-04", isWork: true },
    { day: "2027-01-03", isWork: false },
    { day: "2028-02-29", isWork: true },
    { day: "2027-02-15", isWork: false },
  ])("$day is a work day: $isWork", ({ day, isWork }) => expect(usual.isWorkDay(dayNumber(day))).toBe(isWork));
});

describe("by hand", () => {
  test("work goes on after the night, the weekend and a holiday", () => {
    expect(addWork(usual, at("2027-02-01", 420), 8 * 60)).toBe(at("2027-02-01", 900));
    expect(addWork(usual, at("2027-02-01", 420), 8 * 60 + 1)).toBe(at("2027-02-02", 421));
    expect(addWork(usual, at("2027-02-12", 840), 120)).toBe(at("2027-02-16", 480));
  });

  test("midnight ends the day before and starts the next", () => {
    expect(finishMoment(at("2027-02-02", 0))).toEqual({ day: "2027-02-01", minute: DAY });
    expect(startMoment(at("2027-02-02", 0))).toEqual({ day: "2027-02-02", minute: 0 });
  });

  test("a day of 20 hours ends at midnight", () => {
    const long = shopCalendar({ hoursPerDay: 20 * 3600, workDays: ["Mon"], holidays: [] });
    expect([long.opens, long.closes]).toEqual([4 * 60, DAY]);
  });
});

describe("identity", () => {
  test("work from a moment ends where that many open minutes have passed, counted one by one", () => {
    fc.assert(
      fc.property(someCalendar, someMoment, fc.integer({ min: 1, max: 400 }), (calendar, from, minutes) => {
        let left = minutes;
        let minute = from;
        for (; left > 0; minute += 1) {
          const day = Math.floor(minute / DAY);
          const ofDay = minute - day * DAY;
          if (calendar.isWorkDay(day) && ofDay >= calendar.opens && ofDay < calendar.closes) left -= 1;
        }
        expect(addWork(calendar, from, minutes)).toBe(minute);
      }),
      { seed: SEED, numRuns: 60 },
    );
  });

  test("the latest start of work, done from there, ends in time, and a minute later would not", () => {
    fc.assert(
      fc.property(someCalendar, someMoment, someWork, (calendar, by, minutes) => {
        const start = subtractWork(calendar, by, minutes);
        expect(nextWork(calendar, start)).toBe(start);
        expect(addWork(calendar, start, minutes)).toBeLessThanOrEqual(by);
        expect(addWork(calendar, start + 1, minutes)).toBeGreaterThan(by);
      }),
      { seed: SEED, numRuns: 500 },
    );
  });

  test("working time between start and end of work is the work", () => {
    fc.assert(
      fc.property(someCalendar, someMoment, someWork, (calendar, from, minutes) => {
        expect(workBetween(calendar, from, addWork(calendar, from, minutes))).toBe(minutes);
      }),
      { seed: SEED, numRuns: 500 },
    );
  });
});

describe("domain", () => {
  test("a text that is no day is refused", () => {
    expect(() => dayNumber("soon")).toThrow(RangeError);
  });

  test("time the other way round holds no work", () => {
    expect(workBetween(usual, at("2027-02-03", 500), at("2027-02-02", 500))).toBe(0);
  });
});
