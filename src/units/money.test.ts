import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CURRENCIES, allocateCents, formatMoney, parseMoney, roundCents } from "./money.ts";

describe("money as it is typed", () => {
  it.each<[string, number, string | undefined]>([
    ["12.50", 1250, undefined], ["12.5", 1250, undefined], ["12", 1200, undefined], ["1,234.50", 123_450, undefined],
    ["$12.50", 1250, undefined], ["$ 12.50", 1250, undefined], ["-$12.50", -1250, undefined], ["$-12.50", -1250, undefined],
    ["1,234.50 USD", 123_450, "USD"], ["USD 1,234.50", 123_450, "USD"], ["usd 1", 100, "USD"], ["US$12", 1200, "USD"],
    ["C$12", 1200, "CAD"], ["CA$ 12", 1200, "CAD"], ["€0.05", 5, "EUR"], ["0.05 €", 5, "EUR"], ["£3", 300, "GBP"],
    ["−3.00 CAD", -300, "CAD"], ["-0.00", 0, undefined], ["0", 0, undefined],
  ])("%s", (text, cents, currency) => {
    const parsed = parseMoney(text);
    expect(parsed).toEqual(currency === undefined ? { ok: true, cents } : { ok: true, cents, currency });
  });

  it.each<[string, RegExp]>([
    ["", /nothing/], ["12.345", /two decimals/], ["12,50", /comma parts thousands/], ["1,23 EUR", /comma parts thousands/],
    ["12.50 JPY", /not a currency/], ["12.50 XYZ", /not a currency/], ["USD 12 USD", /twice/], ["-$-1", /two signs/],
    ["cheap", /not an amount/], ["12k", /not an amount/], ["99999999999999999", /too large/], ["con12", /not a currency/],
    ["NaN", /not an amount/], ["1e5", /not an amount/],
  ])("refuses %s", (text, reason) => {
    const parsed = parseMoney(text);
    expect(parsed.ok ? `read as ${parsed.cents}` : parsed.reason).toMatch(reason);
  });

  it("reads back what it writes, to the cent", () => {
    fc.assert(
      fc.property(fc.integer({ min: -1e12, max: 1e12 }), fc.constantFrom(...CURRENCIES), (cents, currency) => {
        expect(parseMoney(formatMoney(cents, currency))).toEqual({ ok: true, cents, currency });
      }),
      { seed: 11, numRuns: 2000 },
    );
    expect(formatMoney(123_456_789, "USD")).toBe("1,234,567.89 USD");
    expect(formatMoney(-5, "EUR")).toBe("-0.05 EUR");
    expect(() => formatMoney(0.5, "USD")).toThrow(RangeError);
  });

  it("never throws on any text", () => {
    const pieces = fc.array(fc.constantFrom("1", "23", ",", ".", "$", "US", "€", "-", " ", "(", ")", "CAD", "e5"), { maxLength: 8 });
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: "binary" }), pieces.map((parts) => parts.join(""))), (text) => {
        const parsed = parseMoney(text);
        if (parsed.ok) expect(Number.isSafeInteger(parsed.cents)).toBe(true);
        else expect(parseMoney(parsed.example).ok).toBe(true);
      }),
      { seed: 11, numRuns: 10_000 },
    );
  });
});

describe("cents", () => {
  it.each<[number, number]>([
    [0.5, 1], [-0.5, -1], [1.5, 2], [2.5, 3], [-2.5, -3], [2.4, 2], [1.005 * 100, 101], [8.165 * 100, 817], [0.49, 0],
    [-0.49, 0], [1e15 + 1, 1e15 + 1], [1e14 + 0.25, 1e14],
  ])("%s becomes %s", (x, cents) => {
    expect(roundCents(x)).toBe(cents);
  });

  it("refuses what cannot be counted", () => {
    for (const x of [NaN, Infinity, 1e17]) expect(() => roundCents(x)).toThrow(RangeError);
  });

  it("splits a total to the cent, each part within a cent of its share", () => {
    const weights = fc.array(fc.oneof(fc.constant(0), fc.double({ min: 1e-6, max: 1e6, noNaN: true })), { minLength: 1, maxLength: 40 }).filter((list) => list.some((w) => w > 0));
    fc.assert(
      fc.property(fc.integer({ min: -1e10, max: 1e10 }), weights, (total, list) => {
        const parts = allocateCents(total, list);
        const sum = list.reduce((running, weight) => running + weight, 0);
        expect(parts.reduce((running, part) => running + part, 0)).toBe(total);
        parts.forEach((part, index) => {
          const weight = list[index] ?? NaN;
          expect(Math.abs(part - (total * weight) / sum)).toBeLessThanOrEqual(1 + 1e-4);
          if (weight === 0) expect(part).toBe(0);
        });
      }),
      { seed: 11, numRuns: 2000 },
    );
    expect(allocateCents(100, [1, 1, 1])).toEqual([33, 34, 33]);
    expect(allocateCents(-100, [1, 1, 1])).toEqual([-33, -34, -33]);
  });

  it("refuses weights that share nothing", () => {
    for (const list of [[], [0, 0], [-1, 2], [NaN], [Infinity]]) expect(() => allocateCents(100, list)).toThrow(RangeError);
  });
});
