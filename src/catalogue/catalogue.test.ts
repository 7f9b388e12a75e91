import { describe, expect, it } from "vitest";
import type { Source } from "../working/source.ts";
import { catalogue } from "./catalogue.ts";
import type { Row } from "./rows.ts";

const tables = Object.entries(catalogue).map(([name, { rows }]): [string, readonly Row[]] => [name, rows]);

/** Every source that stands anywhere in a row. */
function sourcesIn(value: unknown): readonly Source[] {
  if (typeof value !== "object" || value === null) return [];
  const within = Object.values(value).flatMap(sourcesIn);
  return "work" in value && "standing" in value ? [value as Source, ...within] : within;
}

/** Every number in a row, with its path. */
function numbersIn(value: unknown, path: string): readonly [string, number][] {
  if (typeof value === "number") return [[path, value]];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => numbersIn(inner, `${path}.${key}`));
}

describe.each(tables)("%s", (name, rows) => {
  it("has rows with well-formed ids and words", () => {
    expect(rows.length).toBeGreaterThan(0);
    for (const row of rows) {
      expect(row.id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
      expect(row.what.length).toBeGreaterThan(0);
    }
  });

  it("gives a source for every row, and every source names its work", () => {
    for (const row of rows) {
      expect(row.source.work.length, row.id).toBeGreaterThan(0);
      for (const source of sourcesIn(row)) expect(source.work.trim(), row.id).not.toBe("");
    }
  });

  it("holds only finite numbers above zero", () => {
    for (const row of rows) {
      for (const [path, value] of numbersIn(row, `${name}.${row.id}`)) {
        expect(Number.isFinite(value), path).toBe(true);
        // A grip may start at nothing: a screw needs no layer to hold.
        if (!path.endsWith("grip.least")) expect(value, path).toBeGreaterThan(0);
      }
    }
  });
});

describe("references between tables", () => {
  it("name rows that exist", () => {
    for (const { material } of catalogue.profiles.rows) expect(catalogue.materials.has(material), material).toBe(true);
    for (const { material } of catalogue.sections.rows) expect(catalogue.materials.has(material), material).toBe(true);
    for (const { material } of catalogue.foams.rows) expect(catalogue.materials.has(material), material).toBe(true);
    for (const { material } of catalogue.batts.rows) expect(catalogue.materials.has(material), material).toBe(true);
    for (const box of catalogue.boxes.rows) {
      expect(catalogue.materials.has(box.floor.material)).toBe(true);
      for (const sheet of Object.values(box.sheets)) expect(catalogue.profiles.has(sheet), sheet).toBe(true);
    }
    for (const board of catalogue.boards.rows) {
      expect(catalogue.materials.has(board.material), board.material).toBe(true);
      if (board.fixing !== null) expect(catalogue.fasteners.has(board.fixing.fastener), board.fixing.fastener).toBe(true);
      if (board.bond !== undefined) expect(catalogue.sealants.has(board.bond.sealant), board.bond.sealant).toBe(true);
      expect(board.fixing === null, board.id).toBe(board.bond !== undefined);
    }
  });

  it("give each screwed or riveted board a fastener that can hold it to a 33 mil stud", () => {
    const stud = catalogue.sections.get("stud-2-1-2-33mil").thickness;
    for (const board of catalogue.boards.rows) {
      if (board.fixing === null) continue;
      const { grip } = catalogue.fasteners.get(board.fixing.fastener);
      expect(board.thickness + stud, board.id).toBeGreaterThanOrEqual(grip.least);
      expect(board.thickness + stud, board.id).toBeLessThanOrEqual(grip.greatest);
    }
  });

  it("have a screw for a second layer of 5/8 in board", () => {
    const twice = 2 * catalogue.boards.get("gypsum-type-x-5-8").thickness;
    const stud = catalogue.sections.get("stud-2-1-2-33mil").thickness;
    const { grip } = catalogue.fasteners.get("screw-drywall-41");
    expect(twice + stud).toBeLessThanOrEqual(grip.greatest);
    expect(twice + stud).toBeGreaterThan(catalogue.fasteners.get("screw-drywall-25").grip.greatest);
  });
});

describe("standing of sources", () => {
  /** What was read, and in what. A row may say "seen" only of a work in this list. */
  const READ: Readonly<Record<string, string>> = {
    "ISO 668:2013": "outside sizes, on a forwarder's page that quotes the standard and on encyclopaedia pages",
    "ISO 10077-2 and EN 12524 table of design values, as carried in ISO 10456:2007":
      "density, conductivity and heat capacity, in two public copies of the table",
    "AISC shapes database v16": "weights and areas, in a public data file copied from the database",
  };

  it("says seen only of what was read", () => {
    const seen = tables.flatMap(([, rows]) => rows.flatMap(sourcesIn)).filter(({ standing }) => standing === "seen");
    expect(new Set(seen.map(({ work }) => work))).toEqual(new Set(Object.keys(READ)));
  });

  it("marks every article as invented, and nothing else", () => {
    for (const [name, rows] of tables) {
      for (const row of rows) expect(row.source.standing === "invented", row.id).toBe(name === "articles");
    }
  });
});
