import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { checkWorking } from "../../../test/checkWorking.ts";
import { type HandPart, handBuild, type JobFile } from "../../../test/handBuilt.ts";
import type { Build } from "../../build/build.ts";
import { STANDARD_GRAVITY } from "../../physics/rigidBody.ts";
import type { Finding } from "../check.ts";
import { GREATEST_ECCENTRICITY } from "../limits.ts";
import { mass } from "./mass.ts";

const box = handBuild().box;
const middle = { x: box.outside.length / 2, y: box.outside.width / 2 };
const floor = handBuild().surfaces.find(({ id }) => id === "floor")!.origin;
/** A small block on the floor with its centre at a place in the world. */
const block = (x: number, y: number, kilograms: number, more: Partial<HandPart> = {}): HandPart => {
  const [u, v] = [x - floor.x, y - floor.y];
  return { surface: "floor", role: "article", rect: { u0: u - 0.05, u1: u + 0.05, v0: v - 0.05, v1: v + 0.05 }, depth: { from: 0, to: 0.5 }, mass: kilograms, ...more };
};
const finding = (build: Build, at: string): Finding => {
  const findings = mass.run(build);
  for (const { working, comparison } of findings) checkWorking([...working, ...(comparison === undefined ? [] : [comparison.left, comparison.right])]);
  return findings.find(({ id }) => id === `mass/${at}`)!;
};
const box20 = (greatestGross: string) => (file: JobFile) => void (file["box"] = { row: "20-standard", condition: "new", greatestGross, tare: "2200 kg" });

describe("total", () => {
  test("is the sum of the parts that stay, to the gram", () => {
    const parts = [block(1, 1, 10.001), block(2, 1, 20.002), block(3, 1, 99, { temporary: true })];
    expect(finding(handBuild(undefined, parts), "total").facts["total"]).toBeCloseTo(30.003, 9);
  });

  test("passes at the greatest gross mass and stops above it", () => {
    const at = (kilograms: number) => finding(handBuild(box20("5000 kg"), [block(3, 1, kilograms)]), "total");
    expect(at(5000)).toMatchObject({ verdict: "pass", facts: { left: 0 } });
    expect(at(5000.001)).toMatchObject({ verdict: "stop", code: "over gross" });
    expect(at(5000.001).facts["over"]).toBeCloseTo(0.001, 9);
  });

  test("a build without mass is a note", () => {
    expect(mass.run(handBuild())).toMatchObject([{ verdict: "note", code: "no mass" }]);
  });
});

test("a tare that is not the plate's is a note, and modelled steel above the tare is watched", () => {
  expect(finding(handBuild(undefined, [block(3, 1, 100)]), "tare").verdict).toBe("note");
  expect(finding(handBuild(box20("24000 kg"), [block(3, 1, 100)]), "tare")).toBeUndefined();
  const rest = block(3, 1, -40, { role: "rest of the box" });
  expect(finding(handBuild(undefined, [block(3, 1, 100), rest]), "rest-of-box")).toMatchObject({ verdict: "watch", facts: { over: 40 } });
});

describe("centre of mass", () => {
  test("eccentricity flips exactly at its limit, along and across", () => {
    const along = (off: number) => finding(handBuild(undefined, [block(middle.x + off, middle.y, 100)]), "eccentricity/along");
    const limit = GREATEST_ECCENTRICITY.value * box.outside.length;
    expect(along(limit)).toMatchObject({ verdict: "pass", facts: { toward: "toward the door end" } });
    expect(along(limit + 1e-6).verdict).toBe("watch");
    expect(along(-limit - 1e-6)).toMatchObject({ verdict: "watch", facts: { toward: "toward the blind end" } });
    const across = finding(handBuild(undefined, [block(middle.x, middle.y + 0.2, 100)]), "eccentricity/across");
    expect(across).toMatchObject({ verdict: "watch", facts: { toward: "toward the right" } });
    expect(across.facts["share"]).toBeCloseTo(0.2 / box.outside.width, 12);
  });

  test("its height counts from the underside", () => {
    expect(finding(handBuild(undefined, [block(middle.x, middle.y, 100)]), "centre-height").facts["height"]).toBeCloseTo(0.25 + box.insets.floor, 12);
  });
});

describe("corner loads", () => {
  const loadsOf = (build: Build): readonly number[] => finding(build, "corner-loads").working.map(({ value }) => value);

  test("balance weight and moments to 1e-9 for random clouds of parts", () => {
    const part = fc.record({
      x: fc.double({ min: 0.2, max: box.outside.length - 0.2, noNaN: true }),
      y: fc.double({ min: 0.2, max: box.outside.width - 0.2, noNaN: true }),
      m: fc.double({ min: 0.01, max: 3000, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(part, { minLength: 1, maxLength: 40 }), (parts) => {
        const build = handBuild(undefined, parts.map(({ x, y, m }) => block(x, y, m)));
        const [a, b, c, d] = loadsOf(build) as [number, number, number, number];
        const weight = parts.reduce((sum, { m }) => sum + m, 0) * STANDARD_GRAVITY;
        const about = (place: (one: { x: number; y: number }) => number): number => parts.reduce((sum, one) => sum + one.m * STANDARD_GRAVITY * place(one), 0);
        const { holesAlong, holesAcross } = box.fittings;
        const scale = weight * box.outside.length;
        expect(Math.abs(a + b + c + d - weight)).toBeLessThan(1e-9 * scale);
        expect(Math.abs(((c + d - a - b) * holesAlong) / 2 - about(({ x }) => x - middle.x))).toBeLessThan(1e-9 * scale);
        expect(Math.abs(((b + d - a - c) * holesAcross) / 2 - about(({ y }) => y - middle.y))).toBeLessThan(1e-9 * scale);
      }),
      { seed: 20267, numRuns: 60 },
    );
  });

  test("a corner that would lift off is stopped", () => {
    const lifted = mass.run(handBuild(undefined, [block(0.2, 0.2, 500)])).filter(({ code }) => code === "corner lifts off");
    expect(lifted.map(({ id }) => id)).toEqual(["mass/corner-lifts-off/door-end-right"]);
    expect(lifted[0]?.verdict).toBe("stop");
  });
});
