import fc from "fast-check";
import { expect, test } from "vitest";
import { spread } from "./spread.ts";
import { oneLine, textWidth, wrap } from "./text.ts";

const RUN = { seed: 20270201, numRuns: 500 };

test("DejaVu Sans Mono advances 1233 of 2048 units; a capital is 1493 high (its own metrics tables)", () => {
  expect(textWidth("0", 1493 / 2048)).toBeCloseTo(1233 / 2048, 3);
});

test("dashes and primes are as wide as a letter, letters of other scripts may be twice as wide", () => {
  expect(textWidth("A\u2013A\u2212\u2026", 1)).toBeCloseTo(textWidth("AAAAA", 1), 12);
  expect(textWidth("\u65E5", 1)).toBeCloseTo(2 * textWidth("A", 1), 12);
});

test("wrapped lines keep every letter in order and none is wider than asked", () => {
  fc.assert(
    fc.property(fc.string({ maxLength: 300 }), fc.double({ min: 0.004, max: 0.09, noNaN: true }), (text, width) => {
      const lines = wrap(text, 0.0018, width);
      expect(lines.join("").replace(/ /g, "")).toBe(oneLine(text).replace(/ /g, ""));
      for (const line of lines) expect(textWidth(line, 0.0018)).toBeLessThanOrEqual(width + 1e-9);
    }),
    RUN,
  );
});

test("line breaks and control characters become spaces", () => {
  expect(oneLine("a\nb\u0000c\r\n\td\u2028e")).toBe("a b c d e");
});

test("spread labels keep their order and their gaps, and stay where they wish when there is room", () => {
  const wish = fc.record({ at: fc.double({ min: 0, max: 1, noNaN: true }), width: fc.double({ min: 0.001, max: 0.1, noNaN: true }) });
  fc.assert(
    fc.property(fc.array(wish, { minLength: 1, maxLength: 30 }), (wishes) => {
      const places = spread(wishes, 0.01);
      const order = wishes.map((each, index) => ({ ...each, place: places[index] as number, index })).sort((a, b) => a.place - b.place);
      for (const [index, each] of order.entries()) {
        const before = order[index - 1];
        if (before === undefined) continue;
        expect(each.place - before.place).toBeGreaterThanOrEqual((each.width + before.width) / 2 + 0.01 - 1e-9);
        expect(each.at).toBeGreaterThanOrEqual(before.at);
      }
    }),
    RUN,
  );
  expect(spread([{ at: 0.1, width: 0.02 }, { at: 0.5, width: 0.02 }], 0.01)).toEqual([0.1, 0.5]);
});
