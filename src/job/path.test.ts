import fc from "fast-check";
import { expect, test } from "vitest";
import { typedAt } from "./file.ts";
import { pathText, stepsOf } from "./path.ts";

test.for([
  { steps: ["openings", 2, "at", "up"], path: "openings[2].at.up" },
  { steps: ["buildUps", "long wall", "foam"], path: 'buildUps["long wall"].foam' },
  { steps: [], path: "" },
  { steps: [""], path: '[""]' },
])("$path", ({ steps, path }) => {
  expect(pathText(steps)).toBe(path);
  expect(stepsOf(path)).toEqual(steps);
});

test("every path reads back to its steps", () => {
  const steps = fc.array(fc.oneof(fc.string(), fc.string({ unit: "binary" }), fc.nat(100)), { maxLength: 6 });
  fc.assert(
    fc.property(steps, (given) => {
      expect(stepsOf(pathText(given))).toEqual(given);
    }),
    { seed: 7, numRuns: 500 },
  );
});

test("what is no path has no steps", () => {
  for (const text of [".a", "a..b", "a[", "a[x]", "a b", 'a["b]', "1a"]) expect(stepsOf(text)).toBeUndefined();
});

test("the user's own text is found by its path; objects, missing and inherited fields give none", () => {
  const file = { openings: [{ at: { up: "2' 6 in" } }], rooms: [{ people: 4 }] };
  expect(typedAt(file, "openings[0].at.up")).toBe("2' 6 in");
  expect(typedAt(file, "rooms[0].people")).toBe("4");
  for (const path of ["openings[0].at", "openings[1].at.up", "toString", "openings.length", "not a path"]) {
    expect(typedAt(file, path)).toBeUndefined();
  }
});
