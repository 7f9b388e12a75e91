import type { Rect } from "../../geometry/rect.ts";
import type { DimensionChain, DrawnShape, Layer } from "../drawing.ts";
import { TEXT } from "../style.ts";
import { arcReach } from "./arc.ts";
import { spread } from "./spread.ts";
import { LINE, oneLine, textBox, textWidth } from "./text.ts";
import type { DrawnText } from "./text.ts";

const MM = 0.001;
const GAP = 0.5 * MM;
const CLEAR = 1 * MM;
const TICK = 0.8 * MM;
const SYMBOL = 1.1 * MM;
const BAND = TEXT.usual * LINE;
const ROW_GAP = 1.2 * MM;

/**
 * Lays the dimension rows of one side of a view, on paper. `edge` is where that side of the view ends; `scale` is paper
 * over model. A text that its stretch is too short for stands outside on a leader; running texts stand square to the line.
 */
export function chainShapes(chains: readonly DimensionChain[], edge: number, scale: number): readonly DrawnShape[] {
  const rows = [...new Set(chains.map((chain) => chain.row))].sort((a, b) => a - b);
  const shapes: DrawnShape[] = [];
  let start = 2 * MM;
  for (const row of rows) {
    let depth = 0;
    for (const chain of chains.filter((each) => each.row === row)) {
      const pen = new Pen(chain.side, edge);
      const end = chain.running === true ? running(chain, scale, start, pen) : stretches(chain, scale, start, pen);
      depth = Math.max(depth, label(chain, scale, start, end, pen) - start);
      shapes.push(...pen.shapes);
    }
    start += depth + ROW_GAP;
  }
  return shapes;
}

/** The rectangle that shapes on paper cover, texts included; undefined where there are none. */
export function boundsOf(shapes: readonly DrawnShape[]): Rect | undefined {
  const boxes = shapes.map(boxOf);
  if (boxes.length === 0) return undefined;
  return boxes.reduce((a, b) => ({
    u0: Math.min(a.u0, b.u0), u1: Math.max(a.u1, b.u1), v0: Math.min(a.v0, b.v0), v1: Math.max(a.v1, b.v1),
  }));
}

/** The rectangle around one shape. */
export function boxOf(shape: DrawnShape): Rect {
  switch (shape.kind) {
    case "text":
      return textBox(shape);
    case "circle":
      return {
        u0: shape.centre.x - shape.radius, u1: shape.centre.x + shape.radius,
        v0: shape.centre.y - shape.radius, v1: shape.centre.y + shape.radius,
      };
    case "line":
    case "arc":
    case "polyline": {
      const points = shape.kind === "line" ? [shape.from, shape.to] : shape.kind === "arc" ? arcReach(shape) : shape.points;
      const xs = points.map((p) => p.x);
      const ys = points.map((p) => p.y);
      return { u0: Math.min(...xs), u1: Math.max(...xs), v0: Math.min(...ys), v1: Math.max(...ys) };
    }
  }
}

/** Draws in t along the chain and d away from the view, whichever side the chain stands on. */
class Pen {
  readonly shapes: DrawnShape[] = [];
  readonly side: DimensionChain["side"];
  readonly edge: number;

  constructor(side: DimensionChain["side"], edge: number) {
    this.side = side;
    this.edge = edge;
  }

  /** True where the top of a text along the chain looks back to the view. */
  get topToView(): boolean {
    return this.side === "below" || this.side === "right";
  }

  get upright(): boolean {
    return this.side === "left" || this.side === "right";
  }

  point(t: number, d: number): { x: number; y: number } {
    if (this.side === "below") return { x: t, y: this.edge - d };
    if (this.side === "above") return { x: t, y: this.edge + d };
    return { x: this.side === "left" ? this.edge - d : this.edge + d, y: t };
  }

  line(t0: number, d0: number, t1: number, d1: number, layer: Layer = "dimensions"): void {
    this.shapes.push({ kind: "line", layer, from: this.point(t0, d0), to: this.point(t1, d1) });
  }

  tick(t: number, d: number): void {
    const at = this.point(t, d);
    this.shapes.push({
      kind: "line", layer: "dimensions",
      from: { x: at.x - TICK, y: at.y - TICK }, to: { x: at.x + TICK, y: at.y + TICK },
    });
  }

  /** The symbol of an origin: a ring with a cross through it. */
  origin(t: number, d: number): void {
    this.shapes.push({ kind: "circle", layer: "origin", centre: this.point(t, d), radius: SYMBOL });
    this.line(t - 1.6 * SYMBOL, d, t + 1.6 * SYMBOL, d, "origin");
    this.line(t, d - 1.6 * SYMBOL, t, d + 1.6 * SYMBOL, "origin");
  }

  /** Text along the chain, in a band that starts at `d`. */
  along(text: string, t: number, d: number, align: DrawnText["align"] = "middle", height: number = TEXT.usual): void {
    const at = this.point(t, d + height * (this.topToView ? 1.08 : 0.34));
    this.shapes.push({ kind: "text", layer: "dimensions", at, text, height, align, turned: this.upright });
  }

  /** Text square to the chain, from `d` outward, its middle at `t`. */
  across(text: string, t: number, d: number): void {
    const middle = TEXT.usual * 0.37;
    const at = this.point(this.upright ? t - middle : t + middle, d);
    const align = this.side === "below" || this.side === "left" ? "right" : "left";
    this.shapes.push({ kind: "text", layer: "dimensions", at, text, height: TEXT.usual, align, turned: !this.upright });
  }
}

/** A chain of stretches with a text for each; gives the depth that it reaches. */
function stretches(chain: DimensionChain, scale: number, start: number, pen: Pen): number {
  const at = pen.topToView ? start + BAND + GAP : start + CLEAR;
  const band = pen.topToView ? start : at + GAP;
  const firstLevel = (pen.topToView ? at : band + BAND) + CLEAR;
  const stops = chain.stops.map((stop) => stop * scale);
  const levels: number[] = [];
  for (const stop of stops) {
    pen.line(stop, 0.8 * MM, stop, at + CLEAR);
    pen.tick(stop, at);
  }
  pen.line(first(stops), at, last(stops), at);
  for (const [index, given] of chain.texts.entries()) {
    const text = oneLine(given);
    const [a, b] = [stops[index] as number, stops[index + 1] as number];
    const middle = (a + b) / 2;
    const width = textWidth(text, TEXT.usual);
    if (width + 2 * GAP <= Math.abs(b - a)) {
      pen.along(text, middle, band);
      continue;
    }
    const free = levels.findIndex((taken) => middle - width / 2 - 2 * GAP >= taken);
    const level = free < 0 ? levels.length : free;
    levels[level] = middle + width / 2;
    const d = firstLevel + level * (BAND + GAP);
    pen.line(middle, at, middle, d);
    pen.along(text, middle, d);
  }
  return levels.length === 0 ? Math.max(at + CLEAR, band + BAND) : firstLevel + levels.length * (BAND + GAP);
}

/** Distances from the first stop, each written square to the line; gives the depth that they reach. */
function running(chain: DimensionChain, scale: number, start: number, pen: Pen): number {
  const at = start + SYMBOL;
  const stops = chain.stops.map((stop) => stop * scale);
  const texts = chain.texts.map(oneLine);
  const rest = stops.slice(1);
  const places = spread(rest.map((stop) => ({ at: stop, width: BAND })), 0.2 * MM);
  const textFrom = at + SYMBOL + 1.6 * MM;
  for (const [index, text] of texts.entries()) {
    const stop = rest[index] as number;
    const place = places[index] as number;
    pen.line(stop, 0.8 * MM, stop, at + 0.6 * MM);
    pen.line(stop, at + 0.6 * MM, place, textFrom - 0.4 * MM);
    pen.tick(stop, at);
    pen.across(text, place, textFrom);
  }
  pen.line(first(stops), 0.8 * MM, first(stops), at);
  pen.line(Math.min(...stops), at, Math.max(...stops), at);
  pen.origin(first(stops), at);
  return textFrom + Math.max(0, ...texts.map((text) => textWidth(text, TEXT.usual)));
}

/** The label of a chain: before its start on a level chain, outermost along an upright one. */
function label(chain: DimensionChain, scale: number, start: number, end: number, pen: Pen): number {
  if (chain.label === undefined) return end;
  const text = oneLine(chain.label);
  const stops = chain.stops.map((stop) => stop * scale);
  if (pen.upright) {
    pen.along(text, middleOfWidest(stops), end + CLEAR, "middle", TEXT.small);
    return end + CLEAR + TEXT.small * LINE;
  }
  const fromRight = first(stops) > last(stops);
  const beside = fromRight ? first(stops) + 2.8 * MM : first(stops) - 2.8 * MM;
  pen.along(text, beside, start, fromRight ? "left" : "right", TEXT.small);
  return Math.max(end, start + TEXT.small * LINE);
}

/** Middle of the widest stretch, where the fewest lines of rows further out cross a label. */
function middleOfWidest(stops: readonly number[]): number {
  const sorted = [...stops].sort((a, b) => a - b);
  const gap = (index: number): number => (sorted[index + 1] as number) - (sorted[index] as number);
  const widest = sorted.slice(1).reduce((best, _, index) => (gap(index) > gap(best) + 1e-9 ? index : best), 0);
  return sorted.length < 2 ? first(sorted) : (sorted[widest] as number) + gap(widest) / 2;
}

function first(stops: readonly number[]): number {
  return end(stops[0]);
}

function last(stops: readonly number[]): number {
  return end(stops.at(-1));
}

function end(stop: number | undefined): number {
  if (stop === undefined) throw new RangeError("a dimension chain needs stops");
  return stop;
}
