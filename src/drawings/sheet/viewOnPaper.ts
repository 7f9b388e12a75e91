import { grow, overlaps } from "../../geometry/rect.ts";
import type { Rect } from "../../geometry/rect.ts";
import type { Vec2 } from "../../geometry/vector.ts";
import type { DimensionChain, DrawnShape, View } from "../drawing.ts";
import { TEXT } from "../style.ts";
import { boundsOf, chainShapes } from "./chains.ts";
import { oneLine, textBox } from "./text.ts";
import type { DrawnText } from "./text.ts";

/** A view at a scale: shapes and texts on paper, around the view's own origin, and the rectangle that they cover. */
export interface PaperView {
  readonly view: View;
  readonly shapes: readonly DrawnShape[];
  readonly bounds: Rect;
}

const MM = 0.001;
const SIDES: readonly DimensionChain["side"][] = ["left", "right", "below", "above"];

/** Lays a view on paper at 1 : `ratio`: shapes to scale, texts moved apart, dimension rows around it and its title below. */
export function viewOnPaper(view: View, ratio: number): PaperView {
  const scale = 1 / ratio;
  const lines = view.shapes.filter((shape) => shape.kind !== "text").map((shape) => toPaper(shape, scale));
  const { min, max } = view.extent;
  const extent = { u0: min.x * scale, u1: max.x * scale, v0: min.y * scale, v1: max.y * scale };
  const shapes: DrawnShape[] = [...lines, ...placeTexts(view.shapes.filter((shape) => shape.kind === "text"), scale)];
  let edges = boundsOf([...shapes, ...cornersOf(extent)]) ?? extent;
  for (const side of SIDES) {
    const chains = view.dimensions.filter((chain) => chain.side === side);
    const edge = { left: edges.u0, right: edges.u1, below: edges.v0, above: edges.v1 }[side];
    const drawn = chainShapes(chains, edge, scale);
    shapes.push(...drawn);
    if (side === "right") edges = tallest(edges, boundsOf(shapes));
  }
  const bounds = boundsOf([...shapes, ...cornersOf(extent)]) ?? extent;
  const title = titleShapes(view, extent.u0, bounds.v0);
  shapes.push(...title);
  return { view, shapes, bounds: boundsOf([...shapes, ...cornersOf(extent)]) ?? bounds };
}

/** A shape moved on paper. */
export function moved(shape: DrawnShape, by: Vec2): DrawnShape {
  return mapped(shape, (p) => ({ x: p.x + by.x, y: p.y + by.y }), 1);
}

/** A shape at another size; texts keep their height. */
function toPaper(shape: DrawnShape, scale: number): DrawnShape {
  return mapped(shape, (p) => ({ x: p.x * scale, y: p.y * scale }), scale);
}

function mapped(shape: DrawnShape, map: (p: Vec2) => Vec2, scale: number): DrawnShape {
  switch (shape.kind) {
    case "line":
      return { ...shape, from: map(shape.from), to: map(shape.to) };
    case "polyline":
      return { ...shape, points: shape.points.map(map) };
    case "circle":
    case "arc":
      return { ...shape, centre: map(shape.centre), radius: shape.radius * scale };
    case "text":
      return { ...shape, at: map(shape.at) };
  }
}

/** Texts of a view in their order: the first stands where it wants to, later ones give way, on a leader where far. */
function placeTexts(texts: readonly DrawnText[], scale: number): readonly DrawnShape[] {
  const taken: Rect[] = [];
  const shapes: DrawnShape[] = [];
  for (const given of texts) {
    const wanted: DrawnText = { ...given, text: oneLine(given.text), at: { x: given.at.x * scale, y: given.at.y * scale } };
    if (wanted.text === "") continue;
    const placed = firstFree(wanted, taken);
    taken.push(textBox(placed));
    const box = textBox(placed);
    if (Math.hypot(placed.at.x - wanted.at.x, placed.at.y - wanted.at.y) > 2.2 * wanted.height) {
      shapes.push({ kind: "line", layer: "dimensions", from: middleOf(textBox(wanted)), to: middleOf(box) });
    }
    shapes.push(placed);
  }
  return shapes;
}

function firstFree(wanted: DrawnText, taken: readonly Rect[]): DrawnText {
  const step = wanted.height * 0.8;
  const box = textBox(wanted);
  const wide = (box.u1 - box.u0) / 2;
  for (let ring = 0; ring < 400; ring += 1) {
    for (const turn of ring === 0 ? [0] : TURNS) {
      const at = {
        x: wanted.at.x + Math.cos(turn) * ring * (step + wide / 12),
        y: wanted.at.y + Math.sin(turn) * ring * step,
      };
      const tried = { ...wanted, at };
      const room = grow(textBox(tried), 0.25 * MM);
      if (!taken.some((other) => overlaps(room, other))) return tried;
    }
  }
  throw new RangeError(`no room for the text "${wanted.text}"`);
}

/** Directions in which a text gives way: up and down before sideways. */
const TURNS = [1, 3, 0, 2, 0.5, 1.5, 2.5, 3.5].map((quarter) => (quarter * Math.PI) / 2);

function titleShapes(view: View, left: number, bottom: number): readonly DrawnShape[] {
  const at = { x: left, y: bottom - 5 * MM };
  const text: DrawnText = { kind: "text", layer: "text", at, text: oneLine(view.title), height: TEXT.label, align: "left" };
  const under = at.y - 1.2 * MM;
  return [
    text,
    { kind: "line", layer: "text", from: { x: at.x, y: under }, to: { x: textBox(text).u1, y: under } },
  ];
}

function cornersOf(box: Rect): readonly DrawnShape[] {
  return [{ kind: "line", layer: "sheet", from: { x: box.u0, y: box.v0 }, to: { x: box.u1, y: box.v1 } }];
}

function middleOf(box: Rect): Vec2 {
  return { x: (box.u0 + box.u1) / 2, y: (box.v0 + box.v1) / 2 };
}

/** Upright rows may reach past the view at its corners; level rows then start beyond them. */
function tallest(edges: Rect, reached: Rect | undefined): Rect {
  if (reached === undefined) return edges;
  return { ...edges, v0: Math.min(edges.v0, reached.v0), v1: Math.max(edges.v1, reached.v1) };
}
