import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { source } from "../working/source.ts";
import type { Row } from "./rows.ts";
import { table } from "./table.ts";

const row = (id: string): Row => ({ id, what: id, source: source("made up for this test", "invented") });
const boards = table("boards", ["gypsum-type-x-1-2", "gypsum-type-x-5-8", "plywood-1-2", "plywood-3-4", "osb-7-16"].map(row));

describe("a table", () => {
  it("finds a row by its id", () => {
    expect(boards.get("plywood-1-2").id).toBe("plywood-1-2");
    expect(boards.has("plywood-1-2")).toBe(true);
  });

  it("names the table, the id and the nearest ids when there is no such row", () => {
    expect(boards.has("plywod-1-2")).toBe(false);
    expect(() => boards.get("plywod-1-2")).toThrow(RangeError);
    expect(() => boards.get("plywod-1-2")).toThrow(/boards.*"plywod-1-2".*plywood-1-2/);
  });

  it("does not take a word of the language for an id", () => {
    for (const id of ["constructor", "__proto__", "toString", ""]) expect(boards.has(id)).toBe(false);
  });

  it.each([
    ["Plywood 1/2", "plywood-1-2"],
    ["type x 5/8", "gypsum-type-x-5-8"],
    ["osb", "osb-7-16"],
    ["gypsum_type_x_1_2", "gypsum-type-x-1-2"],
  ])("suggests for %j first %j", (text, id) => {
    expect(boards.nearest(text)[0]).toBe(id);
  });

  it("refuses two rows with one id", () => {
    expect(() => table("boards", [row("osb-7-16"), row("osb-7-16")])).toThrow(/two rows share the id "osb-7-16"/);
  });

  it("suggests its own ids, without repeats, for any text", () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 200 }), (text) => {
        const found = boards.nearest(text);
        expect(new Set(found).size).toBe(3);
        expect(found.every((id) => boards.has(id))).toBe(true);
      }),
      { seed: 20250, numRuns: 300 },
    );
  });
});
