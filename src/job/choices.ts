import { catalogue } from "../catalogue/catalogue.ts";
import type { BoardRow, SectionRow } from "../catalogue/rows.ts";
import { sourceText } from "../working/source.ts";

/** The tables of the catalogue that a job file takes rows from. */
export const CHOICE_TABLES = ["boxes", "boards", "sections", "foams", "batts", "coatings", "articles"] as const;
export type ChoiceTable = (typeof CHOICE_TABLES)[number];

/** A row of the catalogue as a person chooses it. */
export interface Choice {
  readonly id: string;
  readonly what: string;
  /** What rows of the table are told apart by: "stud", "gypsum", "door". */
  readonly group: string;
  /** Room that it takes square to a face, m; undefined where the table has none. */
  readonly depth: number | undefined;
  /** Size along the face, as the flange of a section, m; undefined where the table has none. */
  readonly width: number | undefined;
  readonly source: string;
}

/** All rows of a table, in its own order. */
export function choicesOf(table: ChoiceTable): readonly Choice[] {
  switch (table) {
    case "boxes":
      return catalogue.boxes.rows.map((row) => ({ ...plain(row), group: row.height }));
    case "boards":
      return catalogue.boards.rows.map((row) => ({ ...plain(row), ...ofBoard(row) }));
    case "sections":
      return catalogue.sections.rows.map((row) => ({ ...plain(row), ...ofSection(row) }));
    case "foams":
      return catalogue.foams.rows.map((row) => ({ ...plain(row), group: row.closedCell ? "closed cell" : "open cell" }));
    case "batts":
      return catalogue.batts.rows.map((row) => ({ ...plain(row), group: row.kind, width: row.width, depth: row.thickness }));
    case "coatings":
      return catalogue.coatings.rows.map((row) => ({ ...plain(row), group: "coating" }));
    case "articles":
      return catalogue.articles.rows.map((row) => ({ ...plain(row), group: row.kind, width: row.width, depth: row.depth }));
  }
}

/** The row of that id; undefined where the table has none. */
export function choiceOf(table: ChoiceTable, id: string): Choice | undefined {
  return choicesOf(table).find((one) => one.id === id);
}

function plain(row: { readonly id: string; readonly what: string; readonly source: Parameters<typeof sourceText>[0] }) {
  return { id: row.id, what: row.what, source: sourceText(row.source), depth: undefined, width: undefined };
}

function ofBoard({ kind, thickness }: BoardRow) {
  return { group: kind, depth: thickness };
}

function ofSection({ shape, depth, width }: SectionRow) {
  return { group: shape, depth, width };
}
