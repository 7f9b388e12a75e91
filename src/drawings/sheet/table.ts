import type { DrawnShape, ScheduleTable } from "../drawing.ts";
import { TEXT } from "../style.ts";
import { LINE, oneLine, textWidth, wrap } from "./text.ts";

const MM = 0.001;
const HEIGHT = TEXT.usual;
const PAD = 1 * MM;
const LEADING = HEIGHT * LINE + 0.2 * MM;
const TITLE_LINE = TEXT.label * LINE;
const LEAST_TITLE = 50 * MM;
const WIDEST = 90 * MM;

/** A table on paper: its top left corner is the origin; it reaches to the right and down. */
export interface PaperTable {
  readonly shapes: readonly DrawnShape[];
  readonly width: number;
  readonly height: number;
}

/**
 * Lays a table on paper in columns wide enough for their texts, wrapped where the table would be wider than `width`, and
 * carries on in further tables with the same head where it would be taller than `height`. Where the longest words alone are
 * wider than that, the table is wider too, unless words may be `broken`.
 */
export function tablesOnPaper(table: ScheduleTable, width: number, height: number, broken: boolean): readonly PaperTable[] {
  const widths = columnWidths(table, width, broken);
  const head = cells(table.columns, widths);
  const rows = table.rows.map((row) => cells(row, widths));
  const natural = widths.reduce((sum, each) => sum + each, 0);
  const titleWidth = Math.min(width, Math.max(natural, LEAST_TITLE));
  const titleOf = (part: number): readonly string[] =>
    wrap(part === 0 ? table.title : `${table.title} (continued)`, TEXT.label, titleWidth);
  const room = height - titleHeight(titleOf(1)) - head.height;
  const groups: Cells[][] = [];
  let used = Number.POSITIVE_INFINITY;
  for (const row of rows) {
    if (used + row.height > room) {
      groups.push([]);
      used = 0;
    }
    groups.at(-1)?.push(row);
    used += row.height;
  }
  return groups.map((group, index) => draw(titleOf(index), head, group, widths));
}

interface Cells {
  readonly lines: readonly (readonly string[])[];
  readonly height: number;
}

function cells(texts: readonly string[], widths: readonly number[]): Cells {
  const lines = widths.map((width, column) => wrap(texts[column] ?? "", HEIGHT, width - 2 * PAD + 1e-9));
  return { lines, height: Math.max(...lines.map((each) => each.length)) * LEADING + 2 * PAD * 0.6 };
}

/**
 * Natural widths; where they are too wide together, the widest columns are narrowed to one common width, but none below
 * its longest word unless `broken` words are allowed.
 */
function columnWidths(table: ScheduleTable, width: number, broken: boolean): readonly number[] {
  const columns = table.columns.map((head, column) => {
    const texts = table.rows.map((row) => oneLine(row[column] ?? ""));
    const words = [head, ...texts].flatMap((text) => oneLine(text).split(" "));
    const widest = (all: readonly string[]): number => Math.max(...all.map((text) => textWidth(text, HEIGHT))) + 2 * PAD;
    const least = broken ? 6 * MM : Math.min(WIDEST, widest(words));
    return { least, natural: Math.max(least, Math.min(WIDEST, widest([...texts, ...oneLine(head).split(" ")]))) };
  });
  const at = (limit: number): number[] => columns.map(({ least, natural }) => Math.max(least, Math.min(natural, limit)));
  const sum = (all: readonly number[]): number => all.reduce((total, each) => total + each, 0);
  let most = WIDEST;
  while (sum(at(most)) > width && most > 6 * MM) most -= 0.5 * MM;
  return at(most);
}

function titleHeight(lines: readonly string[]): number {
  return lines.length * TITLE_LINE + 1.5 * MM;
}

function draw(title: readonly string[], head: Cells, rows: readonly Cells[], widths: readonly number[]): PaperTable {
  const shapes = title.map((text, index): DrawnShape => {
    const at = { x: 0, y: -TEXT.label * 1.1 - index * TITLE_LINE };
    return { kind: "text", layer: "text", at, text, height: TEXT.label, align: "left" };
  });
  const right = widths.reduce((sum, each) => sum + each, 0);
  const width = Math.max(right, ...title.map((line) => textWidth(line, TEXT.label)));
  const top = -titleHeight(title);
  let y = top;
  rule(shapes, y, right, "sheet");
  for (const [index, row] of [head, ...rows].entries()) {
    let x = 0;
    for (const [column, lines] of row.lines.entries()) {
      for (const [number, line] of lines.entries()) {
        const at = { x: x + PAD, y: y - PAD * 0.9 - LEADING * number - HEIGHT * 1.08 };
        if (line !== "") shapes.push({ kind: "text", layer: "text", at, text: line, height: HEIGHT, align: "left" });
      }
      x += widths[column] as number;
    }
    y -= row.height;
    rule(shapes, y, right, index === 0 ? "sheet" : "text");
  }
  let x = 0;
  for (const each of [0, ...widths]) {
    x += each;
    shapes.push({ kind: "line", layer: "text", from: { x, y: top }, to: { x, y } });
  }
  return { shapes, width, height: -y };
}

function rule(shapes: DrawnShape[], y: number, right: number, layer: "sheet" | "text"): void {
  shapes.push({ kind: "line", layer, from: { x: 0, y }, to: { x: right, y } });
}
