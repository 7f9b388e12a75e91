import { expect, it } from "vitest";
import { wholeJson } from "./wholeJson.ts";

it("keeps fields in the order in which they were made and every digit of a number", () => {
  const value = { b: 0.1 + 0.2, a: [1e-300, null, "x"] };
  const text = wholeJson(value);
  expect(Object.keys(JSON.parse(text) as object)).toEqual(["b", "a"]);
  expect(JSON.parse(text)).toEqual(value);
  expect(text.endsWith("}\n")).toBe(true);
});

it.each([Number.NaN, Infinity, -Infinity])("refuses %s with its path, where JSON would write null", (broken) => {
  expect(() => wholeJson({ a: [{ b: broken }] })).toThrow(new RangeError(`a.0.b is ${broken}`));
});
