import type { DrawnShape, ScheduleTable } from "../drawing.ts";
import { TEXT } from "../style.ts";
import { LINE, oneLine, textWidth, wrap } from "./text.ts";

const MM = 0.001;
const HEIGHT = TEXT.usual;
const PAD = 1 * MM;
const LEADING = HEIGHT * LINE + 0.2 * MM;
const TITLE = TEXT.label * LINE + 2 * MM;
const WIDEST = 90 * MM;

/** A table on paper: its top left corner is the origin; it reaches to the right and down. */
export interface PaperTable {
  readonly shapes: readonly DrawnShape[];
  readonly width: number;
  readonly height: number;
}

/**
 * Lays a table on paper in columns wide enough for their texts, wrapped where the table would be wider than `width`, and
 * carries on in further tables with the same head where it would be taller than `height`.
 */
export function tablesOnPaper(table: ScheduleTable, width: number, height: number): readonly PaperTable[] {
  const widths = columnWidths(table, width);
  const head = cells(table.columns, widths);
  const rows = table.rows.map((row) => cells(row, widths));
  const room = height - TITLE - head.height;
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
  return groups.map((group, index) => draw(index === 0 ? table.title : `${table.title} (continued)`, head, group, widths));
}

interface Cells {
  readonly lines: readonly (readonly string[])[];
  readonly height: number;
}

function cells(texts: readonly string[], widths: readonly number[]): Cells {
  const lines = widths.map((width, column) => wrap(texts[column] ?? "", HEIGHT, width - 2 * PAD + 1e-9));
  return { lines, height: Math.max(...lines.map((each) => each.length)) * LEADING + 2 * PAD * 0.6 };
}

/** Natural widths; where they are too wide together, the widest columns are narrowed to one common width. */
function columnWidths(table: ScheduleTable, width: number): readonly number[] {
  const natural = table.columns.map((head, column) => {
    const words = oneLine(head).split(" ");
    const texts = [...words, ...table.rows.map((row) => oneLine(row[column] ?? ""))];
    return Math.min(WIDEST, Math.max(...texts.map((text) => textWidth(text, HEIGHT))) + 2 * PAD);
  });
  let most = WIDEST;
  const sum = (limit: number): number => natural.reduce((total, each) => total + Math.min(each, limit), 0);
  while (sum(most) > width && most > 6 * MM) most -= 0.5 * MM;
  return natural.map((each) => Math.min(each, most));
}

function draw(title: string, head: Cells, rows: readonly Cells[], widths: readonly number[]): PaperTable {
  const shapes: DrawnShape[] = [
    { kind: "text", layer: "text", at: { x: 0, y: -TEXT.label * 1.1 }, text: oneLine(title), height: TEXT.label, align: "left" },
  ];
  const width = Math.max(widths.reduce((sum, each) => sum + each, 0), textWidth(oneLine(title), TEXT.label));
  const right = widths.reduce((sum, each) => sum + each, 0);
  let y = -TITLE;
  rule(shapes, y, right, "sheet");
  for (const [index, row] of [head, ...rows].entries()) {
    let x = 0;
    for (const [column, lines] of row.lines.entries()) {
      for (const [number, line] of lines.entries()) {
        const at = { x: x + PAD, y: y - PAD * 0.6 - LEADING * number - HEIGHT * 1.08 };
        if (line !== "") shapes.push({ kind: "text", layer: "text", at, text: line, height: HEIGHT, align: "left" });
      }
      x += widths[column] as number;
    }
    y -= row.height;
    rule(shapes, y, right, index === 0 ? "sheet" : "hidden");
  }
  let x = 0;
  for (const each of [0, ...widths]) {
    x += each;
    shapes.push({ kind: "line", layer: "text", from: { x, y: -TITLE }, to: { x, y } });
  }
  return { shapes, width, height: -y };
}

function rule(shapes: DrawnShape[], y: number, right: number, layer: "sheet" | "hidden"): void {
  shapes.push({ kind: "line", layer, from: { x: 0, y }, to: { x: right, y } });
}
