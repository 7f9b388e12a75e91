import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseQuantity } from "../../units/parse.ts";
import { lengthText, nudgeStep } from "./lengthText.ts";

describe("lengths written into the job file", () => {
  it("are read back to within half a step, in either system", () => {
    for (const units of ["metric", "imperial"] as const) {
      fc.assert(
        fc.property(fc.double({ min: -20, max: 20, noNaN: true }), (metres) => {
          const read = parseQuantity("length", lengthText(metres, units));
          expect(read.ok && Math.abs(read.value - metres) <= nudgeStep(units) / 2 + 1e-9).toBe(true);
        }),
        { seed: 4 },
      );
    }
  });

  // 1/16 in by the definition of the inch, 25.4 mm.
  it("step by 1 mm and 1/16 in", () => {
    expect(nudgeStep("metric")).toBe(0.001);
    expect(nudgeStep("imperial")).toBeCloseTo(0.0015875, 12);
  });
});
