import { expect, it } from "vitest";
import { shownText, shownValue } from "./shownText.ts";

it("turns control characters and line breaks into spaces", () => {
  expect(shownText("a\u0000b\nc\u2028d\t e")).toBe("a b c d e");
});

it("takes out marks that turn the direction of writing", () => {
  expect(shownText("safe \u202Eevil\u202C end\u2067")).toBe("safe evil end");
});

it("leaves letters of every script and signs of every markup as they are", () => {
  const text = "#let x = $y$ *b* _i_ `c` <tag> \\n é 日本 Ω ½";
  expect(shownText(text)).toBe(text);
});

it("reaches texts at every depth and nothing else", () => {
  expect(shownValue({ a: ["\u0007x", 1, null, { b: "\u202Ey" }] })).toEqual({ a: ["x", 1, null, { b: "y" }] });
});
