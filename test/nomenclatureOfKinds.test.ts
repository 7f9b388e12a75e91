import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { KINDS, SI_UNIT, kindInWords } from "../src/units/kinds.ts";
import { readNomenclature } from "./nomenclature.ts";

const rows = readNomenclature(readFileSync("docs/nomenclature.md", "utf8"));

describe("docs/nomenclature.md", () => {
  it.each(KINDS)("has a row for the kind %s in the unit that the code holds it in", (kind) => {
    const found = rows.filter((row) => row.name === kindInWords(kind));
    expect(found.map((row) => row.unit)).toEqual([SI_UNIT[kind]]);
  });

  it("says the sign of each quantity", () => {
    expect(rows.filter((row) => row.sign === "").map((row) => row.symbol)).toEqual([]);
  });
});
