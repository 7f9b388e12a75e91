import type { Row } from "./rows.ts";

/** Rows of one kind, found by id. */
export interface Table<R extends Row> {
  readonly rows: readonly R[];
  /** The row with this id. Throws a RangeError that names the table, the id and the nearest ids. */
  get(id: string): R;
  has(id: string): boolean;
  /** Up to three ids that read most like the text given, best first. */
  nearest(id: string): readonly string[];
}

/** Makes a table. Throws a RangeError that names an id which two rows share. */
export function table<R extends Row>(name: string, rows: readonly R[]): Table<R> {
  const byId = new Map<string, R>();
  for (const row of rows) {
    if (byId.has(row.id)) throw new RangeError(`catalogue of ${name}: two rows share the id "${row.id}"`);
    byId.set(row.id, row);
  }
  const nearest = (id: string): readonly string[] => nearestOf(id, [...byId.keys()]);
  return {
    rows,
    has: (id) => byId.has(id),
    nearest,
    get(id) {
      const row = byId.get(id);
      if (row !== undefined) return row;
      throw new RangeError(`catalogue of ${name}: no row "${id}"; nearest: ${nearest(id).join(", ")}`);
    },
  };
}

const SUGGESTIONS = 3;
/** Longer than any id: what lies beyond cannot help to find one. */
const LONGEST_READ = 60;

function nearestOf(text: string, ids: readonly string[]): readonly string[] {
  const wanted = text.slice(0, LONGEST_READ).trim().toLowerCase().replace(/[^a-z0-9]+/g, "-");
  return ids
    .map((id) => ({ id, apart: distance(wanted, id) - sharedWords(wanted, id) }))
    .sort((a, b) => (a.apart === b.apart ? compareText(a.id, b.id) : a.apart - b.apart))
    .slice(0, SUGGESTIONS)
    .map(({ id }) => id);
}

/** Order by code unit, the same in every locale. */
function compareText(a: string, b: string): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}

/** Letters in the words that both hold: "type-x" should find "gypsum-type-x-5-8" though much must be typed to get there. */
function sharedWords(a: string, b: string): number {
  const words = new Set(b.split("-"));
  return a
    .split("-")
    .filter((word) => words.has(word))
    .reduce((letters, word) => letters + word.length, 0);
}

/** Letters to put in, take out or change to make one text of the other (Levenshtein 1966). */
function distance(a: string, b: string): number {
  let above = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (const [row, letter] of Array.from(a).entries()) {
    const line = [row + 1];
    for (const [column, other] of Array.from(b).entries()) {
      const change = at(above, column) + (letter === other ? 0 : 1);
      line.push(Math.min(change, at(above, column + 1) + 1, at(line, column) + 1));
    }
    above = line;
  }
  return at(above, b.length);
}

function at(list: readonly number[], index: number): number {
  const value = list[index];
  if (value === undefined) throw new RangeError(`index ${index} outside a list of ${list.length}`);
  return value;
}
