import { describe, expect, test } from "vitest";
import { DEMO_JOBS } from "../../test/demoJobs.ts";
import { catalogue } from "../catalogue/catalogue.ts";
import { readPriceBook, readPriceBookValue } from "./readPriceBook.ts";

const text = DEMO_JOBS[0]!.bookText;
type Raw = Record<string, unknown> & { readonly materials: Record<string, Record<string, Record<string, unknown>>> };
const changed = (change: (raw: Raw & { labour: { tasks: Record<string, Record<string, unknown>> } }) => void) => {
  const raw = JSON.parse(text) as Raw & { labour: { tasks: Record<string, Record<string, unknown>> } };
  change(raw);
  const read = readPriceBookValue(raw);
  return read.ok ? [] : read.issues;
};

describe("the demo book", () => {
  const read = readPriceBook(text);

  test("reads without an issue, says that it is invented, and prices every row that is sold", () => {
    if (!read.ok) throw new Error(JSON.stringify(read.issues));
    expect(read.book.what).toContain("invented");
    for (const table of ["sections", "boards", "foams", "batts", "coatings", "fasteners", "sealants", "articles"] as const) {
      expect(Object.keys(read.book.materials[table]).sort(), table).toEqual(catalogue[table].rows.map(({ id }) => id).sort());
    }
    expect(Object.keys(read.book.boxes).sort()).toEqual(catalogue.boxes.rows.map(({ id }) => id).sort());
  });

  test("money is whole cents, hours are seconds", () => {
    if (!read.ok) throw new Error(JSON.stringify(read.issues));
    expect(read.book.labour.rates["welder"]).toBe(7400);
    expect(read.book.labour.tasks["set framing"].hours).toBeCloseTo(0.22 * 3600, 9);
  });
});

describe("issues", () => {
  test("come all at once, each with its path and a form that would do", () => {
    const issues = changed((raw) => {
      raw["currency"] = "doubloon";
      raw.materials["foams"]!["foam-closed-cell-2lb"]!["price"] = "12.345";
      raw.materials["boards"]!["gypsum-1-3"] = raw.materials["boards"]!["gypsum-1-2"]!;
      raw.labour.tasks["trim"]!["trade"] = "juggler";
      raw.labour.tasks["inspect"]!["hours"] = "0 h";
    });
    expect(issues.map(({ path, code }) => [path, code])).toEqual(
      expect.arrayContaining([
        ["currency", "choice"],
        ['materials.foams["foam-closed-cell-2lb"].price', "unit"],
        ["labour.tasks.inspect.hours", "range"],
      ]),
    );
    expect(issues.every(({ wants }) => wants !== "")).toBe(true);
  });

  test("a row that the catalogue does not have, and a trade without a rate", () => {
    const [row] = changed((raw) => {
      raw.materials["boards"]!["gypsum-1-3"] = raw.materials["boards"]!["gypsum-1-2"]!;
    });
    expect([row?.path, row?.code, row?.example]).toEqual(['materials.boards["gypsum-1-3"]', "reference", '"gypsum-1-2"']);
    const [trade] = changed((raw) => {
      raw.labour.tasks["trim"]!["trade"] = "juggler";
    });
    expect([trade?.path, trade?.code]).toEqual(["labour.tasks.trim.trade", "reference"]);
  });

  test("a task that is left out is missing: no hours are taken for zero", () => {
    const issues = changed((raw) => {
      delete raw.labour.tasks["spray foam"];
    });
    expect(issues.map(({ path, code }) => [path, code])).toEqual([['labour.tasks["spray foam"]', "missing"]]);
  });

  test("text that is no JSON, and JSON that is no book", () => {
    expect(readPriceBook("{")).toMatchObject({ ok: false, issues: [{ code: "json" }] });
    expect(readPriceBookValue([])).toMatchObject({ ok: false, issues: [{ code: "type", path: "" }] });
  });
});
