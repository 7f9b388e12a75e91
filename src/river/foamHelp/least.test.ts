// Derived: the search is held to predicates whose answer is known.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { leastThickness, type LeastThickness } from "./least.ts";

function search(least: number, greatest: number, passes: (thickness: number) => boolean): { readonly answer: LeastThickness; readonly looks: number } {
  const steps = leastThickness(least, greatest, passes);
  let looks = 0;
  let step = steps.next();
  for (; step.done !== true; step = steps.next()) looks += 1;
  return { answer: step.value, looks };
}

test("finds the whole millimetre from which a threshold is passed, in few looks", () => {
  fc.assert(
    fc.property(fc.integer({ min: 10, max: 40 }), fc.integer({ min: 1, max: 110 }), fc.double({ min: 0, max: 1, noNaN: true }), (from, span, part) => {
      const [least, greatest] = [from / 1000, (from + span) / 1000];
      const limit = least + part * (greatest - least);
      const { answer, looks } = search(least, greatest, (thickness) => thickness >= limit - 1e-12);
      if (answer.kind === "any") expect(limit).toBeLessThanOrEqual(least + 1e-9);
      else if (answer.kind === "found") {
        expect(answer.thickness).toBeGreaterThanOrEqual(limit - 1e-9);
        expect(answer.thickness - limit).toBeLessThan(0.001 + 1e-9);
        expect(answer.failsAgain).toBeUndefined();
      } else expect.unreachable();
      expect(looks).toBeLessThanOrEqual(Math.ceil(span / 8) + 1 + 3);
    }),
    { seed: 7, numRuns: 300 },
  );
});

describe("says so", () => {
  test("where nothing passes, or everything does", () => {
    expect(search(0.02, 0.08, () => false).answer).toEqual({ kind: "none" });
    expect(search(0.02, 0.08, () => true).answer).toEqual({ kind: "any", failsAgain: undefined });
    expect(search(0.02, 0.02, () => true).answer).toEqual({ kind: "any", failsAgain: undefined });
  });

  test("where more foam fails again", () => {
    const { answer } = search(0.02, 0.08, (thickness) => thickness >= 0.031 && thickness < 0.06);
    expect(answer).toEqual({ kind: "found", thickness: 0.031, failsAgain: 0.06 });
  });

  test("at ends that are no whole millimetres", () => {
    expect(search(0.01905, 0.0635, (thickness) => thickness >= 0.0632).answer).toEqual({ kind: "found", thickness: 0.0635, failsAgain: undefined });
    expect(search(0.01905, 0.0635, (thickness) => thickness >= 0.0195).answer).toMatchObject({ kind: "found", thickness: 0.02 });
  });

  test("where the range is none", () => {
    expect(() => search(0, 0.08, () => true)).toThrow(RangeError);
    expect(() => search(0.08, 0.02, () => true)).toThrow(RangeError);
    expect(() => search(Number.NaN, 0.02, () => true)).toThrow(RangeError);
  });
});
