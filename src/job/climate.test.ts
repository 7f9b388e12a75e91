import { describe, expect, test } from "vitest";
import bunkRoom from "../../examples/trail-crew-bunk-room.job.json" with { type: "json" };
import { issueText } from "./issue.ts";
import { readJob } from "./read.ts";

const said = (value: unknown): string => {
  const read = readJob(JSON.stringify(value));
  return read.ok ? "read" : read.issues.map(issueText).join("\n");
};
const withMonths = (monthly: unknown): unknown => ({ ...bunkRoom, site: { ...bunkRoom.site, monthly } });
const withRoom = (fields: object): unknown => ({ ...bunkRoom, rooms: bunkRoom.rooms.map((room) => ({ ...room, ...fields })) });
const months = bunkRoom.site.monthly;

describe("the months of a site", () => {
  test("read to °C and shares, and may be left out", () => {
    const read = readJob(JSON.stringify(bunkRoom));
    if (!read.ok) throw new Error(said(bunkRoom));
    expect(read.job.site.monthly).toHaveLength(12);
    expect(read.job.site.monthly?.[0]?.temperature).toBeCloseTo((54 - 32) / 1.8, 9);
    expect(read.job.site.monthly?.[0]?.humidity).toBeCloseTo(0.42, 12);
    expect(said(withMonths(undefined))).toBe("read");
  });

  test("are twelve: one less or one more is told with the count", () => {
    expect(said(withMonths(months.slice(1)))).toMatch(/^line 1: site\.monthly is .*; wanted: twelve months in \[ \], January first, at least 12 entries, for example \[/);
    expect(said(withMonths([...months, ...months.slice(0, 1)]))).toMatch(/January first, at most 12 entries/);
    const example: unknown = JSON.parse(/for example (.*)\.$/.exec(said(withMonths([])))?.[1] ?? "");
    expect(said(withMonths(example))).toBe("read");
  });

  test("hold some vapour, and no more than the air can", () => {
    const first = (humidity: string): string => said(withMonths([{ temperature: "5 °C", humidity }, ...months.slice(1)]));
    expect(first("0 %")).toMatch(/site\.monthly\[0\]\.humidity is "0 %".*may not be below 1 %/);
    expect(first("101 %")).toMatch(/may not be above 100 %/);
    expect(first("100 %")).toBe("read");
  });
});

describe("the humidity of a room", () => {
  test("is stated, or follows from a class 1 to 5, not both", () => {
    expect(said(withRoom({ humidityClass: 3 }))).toBe("read");
    expect(said(withRoom({ humidityClass: undefined, humidity: "40 %" }))).toBe("read");
    expect(said(withRoom({ humidity: "40 %" }))).toMatchInlineSnapshot(`"line 1: rooms[0].humidityClass is 4; wanted: either a humidity or a humidity class, not both."`);
    expect(said(withRoom({ humidityClass: 6 }))).toMatchInlineSnapshot(`"line 1: rooms[0].humidityClass is 6; wanted: a whole number without quotes, at most 5, for example 1."`);
    expect(said(withRoom({ humidityClass: 2.5 }))).toMatchInlineSnapshot(`"line 1: rooms[0].humidityClass is 2.5; wanted: a whole number without quotes, for example 1."`);
  });
});
