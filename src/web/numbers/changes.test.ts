import { describe, expect, it } from "vitest";
import type { Headline } from "../../river/screen.ts";
import { daysBetween, fourNumbers } from "./changes.ts";

const now: Headline = {
  stops: 2, watches: 1, passes: 9, notes: 3, mass: 3450.4, priceCents: 4_993_914, currency: "USD",
  missingPrices: 0, deliveryDay: "2027-03-01", daysToSpare: 4,
};
const changes = (saved: Headline | undefined, system: "metric" | "imperial" = "metric") => fourNumbers(now, saved, system).map(({ change }) => change);

describe("the four numbers", () => {
  it("are stops, mass, price and delivery day, each with what has to be said", () => {
    expect(fourNumbers(now, undefined, "metric").map(({ value, note }) => [value, note])).toEqual([
      ["2", "and 1 watch"],
      ["3,450 kg", "finished box"],
      ["49,939.14 USD", "with tax"],
      ["2027-03-01", "4 days before it is due"],
    ]);
  });

  it("say that stops are not all counted before the slow checks have answered", () => {
    expect(fourNumbers(now, undefined, "metric", true).map(({ note }) => note)).toEqual(["and 1 watch so far, without heat", "finished box", "with tax", "4 days before it is due"]);
  });

  it("say what changed since the save", () => {
    const saved = { ...now, stops: 0, mass: 3400.4, priceCents: 5_000_000, deliveryDay: "2027-02-26" };
    expect(changes(saved)).toEqual(["+2", "+50 kg", "−60.86 USD", "3 days later"]);
    expect(fourNumbers(now, saved, "metric").map(({ worse }) => worse)).toEqual([true, true, false, true]);
  });

  it("say nothing where nothing changed, or the saved file is not worked out", () => {
    expect(changes(now)).toEqual(["", "", "", ""]);
    expect(changes(undefined)).toEqual(["", "", "", ""]);
    expect(changes({ ...now, mass: now.mass - 1e-9 })[1]).toBe("");
  });

  it("never take two currencies for one", () => {
    expect(changes({ ...now, currency: "EUR" })[2]).toBe("was 49,939.14 EUR");
  });

  it("say when a price is not complete and when it is late", () => {
    const notes = fourNumbers({ ...now, missingPrices: 2, daysToSpare: -1 }, undefined, "metric").map(({ note }) => note);
    expect(notes[2]).toBe("not complete: 2 prices are missing");
    expect(notes[3]).toBe("1 day late");
  });

  it("have no price and no day without a price book, say why, and keep the rest", () => {
    const unpriced = { stops: 2, watches: 1, passes: 9, notes: 3, mass: 3450.4, unpriced: "The price book X is not here.", mend: "Choose another." };
    expect(fourNumbers(unpriced, now, "metric").map(({ value, note, change }) => [value, note, change])).toEqual([
      ["2", "and 1 watch", ""],
      ["3,450 kg", "finished box", ""],
      ["none", "The price book X is not here.", ""],
      ["none", "lead times are in the price book", ""],
    ]);
    expect(fourNumbers(now, unpriced, "metric").map(({ change }) => change)).toEqual(["", "", "", ""]);
  });

  it("count calendar days over a leap day and a year's end", () => {
    expect(daysBetween("2028-02-28", "2028-03-01")).toBe(2);
    expect(daysBetween("2027-01-02", "2026-12-30")).toBe(-3);
  });
});
