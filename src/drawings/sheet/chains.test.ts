import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { overlaps } from "../../geometry/rect.ts";
import { parseQuantity } from "../../units/parse.ts";
import type { System } from "../../units/display.ts";
import type { DimensionChain } from "../drawing.ts";
import { chain, lengthText, runningFrom } from "../views/chains.ts";
import { chainShapes } from "./chains.ts";
import { textBox } from "./text.ts";

const RUN = { seed: 20270201, numRuns: 400 };
const systems = fc.constantFrom<System>("metric", "imperial");
const sides = fc.constantFrom<DimensionChain["side"]>("below", "above", "left", "right");
const stretches = fc.array(fc.double({ min: 0.001, max: 6, noNaN: true }), { minLength: 1, maxLength: 25 });
const step = { metric: 0.001, imperial: 0.0254 / 16 } as const;

describe("dimension chains as printed", () => {
  test("the stretches add up to the overall, and none is off by a step", () => {
    fc.assert(
      fc.property(stretches, systems, (lengths, system) => {
        const at = stopsOf(lengths);
        const made = chain({ direction: "across", side: "below", row: 1 }, at, system);
        const printed = made.texts.map((text) => read(text, system));
        const overall = read(lengthText(at.at(-1) as number, system), system);
        expect(printed.reduce((sum, each) => sum + each, 0)).toBeCloseTo(overall, 9);
        for (const [index, each] of printed.entries()) {
          const real = Math.abs((made.stops[index + 1] as number) - (made.stops[index] as number));
          expect(Math.abs(each - real)).toBeLessThan(step[system] + 1e-9);
        }
      }),
      RUN,
    );
  });

  test("a running distance is the sum of the stretches up to it", () => {
    fc.assert(
      fc.property(stretches, systems, (lengths, system) => {
        const at = stopsOf(lengths);
        const parts = chain({ direction: "across", side: "below", row: 1 }, at, system);
        const running = runningFrom({ direction: "across", side: "below", row: 2 }, 0, at, system);
        let sum = 0;
        for (const [index, text] of parts.texts.entries()) {
          sum += read(text, system);
          expect(read(running.texts[index] as string, system)).toBeCloseTo(sum, 9);
        }
      }),
      RUN,
    );
  });

  test("places measured back from the other origin grow away from it", () => {
    const back = runningFrom({ direction: "across", side: "above", row: 1 }, 12, [2, 3, 0], "metric");
    expect(back.stops).toEqual([12, 3, 2, 0]);
    expect(back.texts).toEqual(["9000", "10000", "12000"]);
  });

  test("no two texts of a side overlap at any usual scale, however narrow the stretches", () => {
    const ratios = fc.constantFrom(5, 10, 24, 50, 100);
    fc.assert(
      fc.property(stretches, systems, sides, ratios, (lengths, system, side, ratio) => {
        const direction = side === "below" || side === "above" ? "across" : "up";
        const at = stopsOf(lengths);
        const last = at.at(-1) as number;
        const chains = [
          chain({ direction, side, row: 1, label: "finished" }, at, system),
          runningFrom({ direction, side, row: 2, label: "from post, blind end" }, 0, at, system),
          runningFrom({ direction, side, row: 3, label: "from post, door end" }, last, at, system),
        ];
        const boxes = chainShapes(chains, 0, 1 / ratio).flatMap((shape) => (shape.kind === "text" ? [textBox(shape)] : []));
        expect(boxes.length).toBeGreaterThanOrEqual(3);
        for (const [index, a] of boxes.entries()) {
          for (const b of boxes.slice(index + 1)) expect(overlaps(a, b)).toBe(false);
        }
      }),
      { ...RUN, numRuns: 150 },
    );
  });
});

function stopsOf(lengths: readonly number[]): readonly number[] {
  const stops = [0];
  for (const length of lengths) stops.push((stops.at(-1) as number) + length);
  return stops;
}

function read(text: string, system: System): number {
  const reading = parseQuantity("length", system === "metric" ? `${text} mm` : text);
  if (!reading.ok) throw new Error(`${text}: ${reading.reason}`);
  return reading.value;
}
