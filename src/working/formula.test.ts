import { describe, expect, expectTypeOf, test } from "vitest";
import { layersResistance } from "../../test/exampleWall.ts";
import { compare } from "./comparison.ts";
import { apply, defineFormula } from "./formula.ts";
import { given, type Quantity } from "./quantity.ts";
import { commonPractice, source, sourceText } from "./source.ts";

const bench = { kind: "measured", on: "the bench" } as const;
const d = given(0.1, "m", "d", "thickness", bench);
const lambda = given(0.04, "W/(m K)", "lambda", "conductivity", bench);

const ratio = defineFormula({
  id: "test.ratio",
  symbol: "r",
  means: "ratio of two thicknesses",
  unit: "1",
  text: "a / b",
  takes: { a: "m", b: "m" },
  source: commonPractice,
  compute: ({ a, b }) => a / b,
});

describe("values that are not finite", () => {
  test.each([NaN, Infinity, -Infinity])("given refuses %d", (value) => {
    expect(() => given(value, "m", "d", "thickness", bench)).toThrow(new RangeError(`d (thickness) is ${value}, not a finite number`));
  });

  test("apply refuses a result that is not finite, with the numbers that caused it", () => {
    const none = given(0, "m", "d", "thickness", bench);
    expect(() => apply(ratio, { a: d, b: none })).toThrow(new RangeError('test.ratio gave Infinity from {"a":0.1,"b":0}'));
    expect(() => apply(ratio, { a: none, b: none })).toThrow(new RangeError('test.ratio gave NaN from {"a":0,"b":0}'));
    expect(() => apply(ratio, { a: { ...d, value: NaN }, b: d })).toThrow(RangeError);
  });
});

describe("apply", () => {
  test("gives a value that knows where it came from", () => {
    const r = apply(ratio, { a: d, b: d }, { symbol: "r_wall", means: "ratio in the wall" });
    expectTypeOf(r).toEqualTypeOf<Quantity<"1">>();
    expect(r).toEqual({
      value: 1,
      unit: "1",
      symbol: "r_wall",
      means: "ratio in the wall",
      origin: { kind: "formula", formula: ratio, inputs: { a: d, b: d } },
    });
  });

  test("binds the types of compute to what the formula takes", () => {
    expectTypeOf<Parameters<typeof layersResistance.compute>[0]>().toEqualTypeOf<{
      readonly d: readonly number[];
      readonly lambda: readonly number[];
    }>();
  });

  test("a missing input does not compile, and throws", () => {
    // @ts-expect-error an input is missing
    expect(() => apply(ratio, { a: d })).toThrow(new RangeError("test.ratio: input b is missing"));
  });

  test("an input in another unit, or one for a list, does not compile", () => {
    // @ts-expect-error a conductivity is no thickness
    apply(ratio, { a: d, b: lambda });
    // @ts-expect-error lists are swapped, so that both units are wrong
    apply(layersResistance, { d: [lambda], lambda: [d] });
    // @ts-expect-error a list is wanted
    expect(() => apply(layersResistance, { d, lambda: [lambda] })).toThrow();
  });

  test("a result does not stand for a quantity in another unit", () => {
    // @ts-expect-error a ratio is no length
    const length: Quantity<"m"> = apply(ratio, { a: d, b: d });
    expect(length.unit).toBe("1");
  });

  test("a formula whose compute reads what it does not take does not compile", () => {
    const stray = defineFormula({
      ...ratio,
      takes: { a: "m" },
      // @ts-expect-error b is not among the inputs
      compute: ({ a, b }: { a: number; b: number }) => a / b,
    });
    expect(stray.takes).toEqual({ a: "m" });
  });
});

describe("compare", () => {
  const at = (value: number): Quantity<"m"> => given(value, "m", "d", "thickness", bench);

  test.each([
    { left: 1, relation: "<=", right: 1, tolerance: 0, holds: true, margin: 0 },
    { left: 1, relation: ">=", right: 1, tolerance: 0, holds: true, margin: 0 },
    { left: 1, relation: "<=", right: 3, tolerance: 0, holds: true, margin: 2 },
    { left: 1, relation: ">=", right: 3, tolerance: 0, holds: false, margin: -2 },
    { left: 3, relation: "<=", right: 1, tolerance: 2, holds: true, margin: -2 },
    { left: 3, relation: "<=", right: 1, tolerance: 1, holds: false, margin: -2 },
  ] as const)("$left $relation $right within $tolerance: $holds", ({ left, relation, right, tolerance, holds, margin }) => {
    expect(compare(at(left), relation, at(right), tolerance)).toMatchObject({ holds, margin, tolerance });
  });

  test("sides in different units do not compile, and throw", () => {
    // @ts-expect-error a conductivity is no thickness
    expect(() => compare(d, "<=", lambda)).toThrow(new RangeError("d in m cannot be compared with lambda in W/(m K)"));
  });

  test.each([-1, NaN])("a tolerance of %d is refused", (tolerance) => {
    expect(() => compare(at(1), "<=", at(2), tolerance)).toThrow(RangeError);
  });
});

test("a source's text carries its caution", () => {
  expect(sourceText(source("ISO 6946:2017", "memory", "6.7"))).toBe("ISO 6946:2017, 6.7 (from memory, to be confirmed)");
  expect(sourceText(source("ISO 668:2020", "seen"))).toBe("ISO 668:2020");
  expect(sourceText(commonPractice)).toBe("common practice");
});
