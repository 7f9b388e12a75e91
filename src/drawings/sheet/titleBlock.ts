import type { Rect } from "../../geometry/rect.ts";
import { rectWidth } from "../../geometry/rect.ts";
import type { Job } from "../../job/job.ts";
import type { Drawing, DrawnShape } from "../drawing.ts";
import { TEXT } from "../style.ts";
import type { Paper } from "./paper.ts";
import { STRIP, scaleText } from "./paper.ts";
import { scaleBar } from "./scaleBar.ts";
import { LINE, oneLine, textWidth, wrap } from "./text.ts";

/** What a title block says besides the job and the drawing. */
export interface SheetFacts {
  readonly ratio: number | undefined;
  readonly sheet: number;
  readonly sheets: number;
}

const MM = 0.001;
const CAPTION = 1.3 * MM;
const PAD = 1.2 * MM;
const CAUTION = "Computed drawing. Check on site. Licensed people and local authorities decide.";
const UNITS = {
  metric: "millimetres unless marked",
  imperial: "feet, inches and sixteenths",
} as const;

/** The frame of the sheet and the strip at its foot. */
export function titleBlock(job: Job, drawing: Drawing, paper: Paper, facts: SheetFacts): readonly DrawnShape[] {
  const { frame } = paper;
  const strip = { ...frame, v1: frame.v0 + STRIP };
  const shapes: DrawnShape[] = [outline(frame, "outline"), outline(strip, "outline")];
  const columns = columnsOf(strip, [92, 86, 62, 66, 44, 40]);
  const [a, b, c, d, e, f] = columns as [Rect, Rect, Rect, Rect, Rect, Rect];
  for (const column of columns.slice(1)) {
    shapes.push({ kind: "line", layer: "sheet", from: { x: column.u0, y: column.v0 }, to: { x: column.u0, y: column.v1 } });
  }
  const { id, title, revision, date, drawnBy, customer } = job.job;
  shapes.push(
    ...field(part(a, 0, 0.62), "Job", title, TEXT.title),
    ...field(part(a, 0.62, 1), "Customer", customer.name, TEXT.usual),
    ...field(part(b, 0, 0.62), "Drawing", drawing.title, TEXT.title),
    ...field(part(b, 0.62, 1), "Job number", id, TEXT.usual),
    ...field(part(c, 0, 0.31), "Units", UNITS[job.units], TEXT.usual),
    ...field(part(d, 0, 0.6), "Caution", CAUTION, TEXT.usual),
    ...field(part(d, 0.6, 1), "Origin of a row of dimensions", "ring with a cross: measure from here", TEXT.small),
    ...field(part(e, 0, 0.34), "Drawn by", drawnBy, TEXT.usual),
    ...field(part(e, 0.34, 0.67), "Date", date, TEXT.usual),
    ...field(part(e, 0.67, 1), "Revision", revision, TEXT.usual),
    ...field(part(f, 0, 0.6), "Drawing number", drawing.number, TEXT.large),
    ...field(part(f, 0.6, 1), "Sheet", `${facts.sheet} of ${facts.sheets}`, TEXT.label),
  );
  if (facts.ratio === undefined) return [...shapes, ...field(part(c, 0.31, 1), "Scale", "none", TEXT.label)];
  return [
    ...shapes,
    ...field(part(c, 0.31, 0.64), `Scale on ${paper.name}`, scaleText(facts.ratio, job.units), TEXT.label),
    ...scaleBar({ x: c.u0 + 3 * MM, y: c.v0 + 2.2 * MM }, facts.ratio, job.units, rectWidth(c) - 6 * MM),
  ];
}

function columnsOf(strip: Rect, shares: readonly number[]): readonly Rect[] {
  const total = shares.reduce((sum, share) => sum + share, 0);
  let x = strip.u0;
  return shares.map((share) => {
    const u0 = x;
    x += (rectWidth(strip) * share) / total;
    return { u0, u1: x, v0: strip.v0, v1: strip.v1 };
  });
}

/** The part of a column between two shares of its height, counted from the top. */
function part(column: Rect, from: number, to: number): Rect {
  const height = column.v1 - column.v0;
  return { ...column, v1: column.v1 - from * height, v0: column.v1 - to * height };
}

/** A caption and its text as large as the box allows, at most `greatest`; shortened where even the smallest is too large. */
function field(box: Rect, caption: string, given: string, greatest: number): readonly DrawnShape[] {
  const width = rectWidth(box) - 2 * PAD;
  const top = box.v1 - PAD - CAPTION * LINE;
  const room = top - box.v0 - 0.3 * MM;
  const sizes = [TEXT.large, TEXT.title, TEXT.label, TEXT.usual, TEXT.small, CAPTION].filter((size) => size <= greatest);
  const size = sizes.find((each) => wrap(given, each, width).length * each * LINE <= room) ?? CAPTION;
  const lines = wrap(given, size, width);
  const shown = Math.max(1, Math.floor(room / (size * LINE) + 1e-9));
  const kept = lines.length <= shown ? lines : [...lines.slice(0, shown - 1), shortened(lines[shown - 1] as string, size, width)];
  const x = box.u0 + PAD;
  return [
    { kind: "text", layer: "dimensions", at: { x, y: box.v1 - PAD * 0.6 - CAPTION * 1.08 }, text: caption, height: CAPTION, align: "left" },
    ...kept
      .map((text, index): DrawnShape => ({
        kind: "text", layer: "text", at: { x, y: top - size * (1.08 + LINE * index) }, text, height: size, align: "left",
      }))
      .filter((shape) => shape.kind === "text" && shape.text !== ""),
  ];
}

function shortened(line: string, size: number, width: number): string {
  const letters = [...oneLine(line)];
  while (letters.length > 1 && textWidth(`${letters.join("")}…`, size) > width) letters.pop();
  return `${letters.join("")}…`;
}

function outline(box: Rect, layer: "outline"): DrawnShape {
  return {
    kind: "polyline", layer, closed: true,
    points: [{ x: box.u0, y: box.v0 }, { x: box.u1, y: box.v0 }, { x: box.u1, y: box.v1 }, { x: box.u0, y: box.v1 }],
  };
}
