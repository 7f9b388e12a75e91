/** A cell: text, a number as it stands, or nothing. */
export type Cell = string | number | undefined;

/**
 * A table as comma-separated values after RFC 4180: a header, CRLF line ends, cells quoted where they need it.
 * Text that a spreadsheet would take for a formula gets an apostrophe in front; numbers are written whole, never rounded.
 * Throws RangeError where a number is not finite or a row is not as wide as the header.
 */
export function csv(header: readonly string[], rows: readonly (readonly Cell[])[]): string {
  return [header, ...rows].map((row) => `${line(row, header.length)}\r\n`).join("");
}

function line(row: readonly Cell[], width: number): string {
  if (row.length !== width) throw new RangeError(`a row of ${row.length} cells under a header of ${width}`);
  return row.map(cellText).join(",");
}

function cellText(cell: Cell): string {
  if (cell === undefined) return "";
  if (typeof cell === "string") return quoted(FORMULA.test(cell) ? `'${cell}` : cell);
  if (!Number.isFinite(cell)) throw new RangeError(`${cell} in a table`);
  return String(cell);
}

/** What spreadsheets read as the start of a formula, also behind spaces. */
const FORMULA = /^\s*[=+\-@\t\r]|^[\t\r\n]/u;

function quoted(text: string): string {
  return /[",\r\n]|^\s|\s$/u.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
