import { expect, it } from "vitest";
import type { TypstSource } from "./paper.ts";
import { compilePdf } from "./pdf.ts";

const source = (main: string): TypstSource => ({ files: { "main.typ": main, "data.json": '"#text"' }, day: "2027-02-01" });

it("gives the same bytes twice, dated by the source", () => {
  const small = source('#set document(date: datetime(year: 2027, month: 2, day: 1))\n#json("data.json")');
  const first = compilePdf(small);
  expect(compilePdf(small)).toEqual(first);
  expect(new TextDecoder("latin1").decode(first)).toContain("D:20270201000000Z");
});

it("says why a source does not compile", () => {
  expect(() => compilePdf(source("#nothing-of-that-name"))).toThrow(/could not be set: .*unknown variable/);
});

it("reads no file but the source's own", () => {
  expect(() => compilePdf(source('#read("/etc/hostname")'))).toThrow(/could not be set/);
  expect(() => compilePdf(source('#read("../package.json")'))).toThrow(/could not be set/);
});
