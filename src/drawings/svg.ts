import type { DrawnShape, Layer } from "./drawing.ts";
import { LAYERS } from "./drawing.ts";
import type { LaidSheet } from "./sheet/laidSheet.ts";
import { CAPITAL, FONT_FAMILY, oneLine, textBox } from "./sheet/text.ts";
import type { DrawnText } from "./sheet/text.ts";
import { DASH, STYLE } from "./style.ts";

/** A sheet as an SVG page in millimetres: a group for each layer, then the texts of each layer, each on white ground. */
export function sheetSvg(sheet: LaidSheet): string {
  const [width, height] = [mm(sheet.width), mm(sheet.height)];
  const lines = sheet.shapes.filter((shape) => shape.kind !== "text");
  const texts = sheet.shapes.filter((shape) => shape.kind === "text");
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}">`,
    `<title>${escaped(`${sheet.number} ${sheet.title}`)}</title>`,
    `<rect width="${width}" height="${height}" fill="#ffffff"/>`,
    ...LAYERS.flatMap((layer) => lineGroup(layer, lines.filter((shape) => shape.layer === layer), sheet.height)),
    ...LAYERS.flatMap((layer) => textGroup(layer, texts.filter((text) => text.layer === layer), sheet.height)),
    "</svg>",
    "",
  ].join("\n");
}

function lineGroup(layer: Layer, shapes: readonly Exclude<DrawnShape, DrawnText>[], top: number): readonly string[] {
  if (shapes.length === 0) return [];
  const { ink, weight, dash } = STYLE[layer];
  const dashes = dash === undefined ? "" : ` stroke-dasharray="${dash.map(mm).join(" ")}"`;
  const look = `fill="none" stroke="${ink}" stroke-width="${mm(weight)}" stroke-linejoin="round"${dashes}`;
  return [`<g id="${layer}" ${look}>`, ...shapes.map((shape) => element(shape, top)), "</g>"];
}

function textGroup(layer: Layer, texts: readonly DrawnText[], top: number): readonly string[] {
  if (texts.length === 0) return [];
  const look = `font-family="${FONT_FAMILY}" fill="${STYLE[layer].ink}"`;
  return [`<g id="${layer}-lettering" ${look}>`, ...texts.map((text) => lettering(text, top)), "</g>"];
}

function element(shape: Exclude<DrawnShape, DrawnText>, top: number): string {
  switch (shape.kind) {
    case "line":
      return `<path d="M${at(shape.from, top)}L${at(shape.to, top)}"${dashOf(shape.dashed)}/>`;
    case "polyline": {
      const fill = shape.filled === true ? ` fill="${STYLE[shape.layer].fill}"` : "";
      const d = shape.points.map((point) => at(point, top)).join("L");
      return `<path d="M${d}${shape.closed ? "Z" : ""}"${fill}${dashOf(shape.dashed)}/>`;
    }
    case "circle":
      return `<circle cx="${mm(shape.centre.x)}" cy="${mm(top - shape.centre.y)}" r="${mm(shape.radius)}"/>`;
    case "arc": {
      const { centre, radius } = shape;
      const point = (turn: number): string =>
        at({ x: centre.x + radius * Math.cos(turn), y: centre.y + radius * Math.sin(turn) }, top);
      const large = shape.to - shape.from > Math.PI ? 1 : 0;
      return `<path d="M${point(shape.from)}A${mm(radius)} ${mm(radius)} 0 ${large} 0 ${point(shape.to)}"/>`;
    }
  }
}

function lettering(text: DrawnText, top: number): string {
  const box = textBox(text);
  const ground = `<rect x="${mm(box.u0)}" y="${mm(top - box.v1)}" width="${mm(box.u1 - box.u0)}" height="${mm(box.v1 - box.v0)}" fill="#ffffff"/>`;
  const [x, y] = [mm(text.at.x), mm(top - text.at.y)];
  const anchor = { left: "start", middle: "middle", right: "end" }[text.align];
  const turned = text.turned === true ? ` transform="rotate(-90 ${x} ${y})"` : "";
  const look = `font-size="${mm(text.height / CAPITAL)}" text-anchor="${anchor}"${turned}`;
  return `${ground}<text x="${x}" y="${y}" ${look} xml:space="preserve">${escaped(text.text)}</text>`;
}

function dashOf(dashed: boolean | undefined): string {
  return dashed === true ? ` stroke-dasharray="${DASH.map(mm).join(" ")}"` : "";
}

function at(point: { readonly x: number; readonly y: number }, top: number): string {
  return `${mm(point.x)} ${mm(top - point.y)}`;
}

/** Millimetres to a thousandth: far finer than any printer, and the same text everywhere. */
function mm(metres: number): string {
  return String(Number((metres * 1000).toFixed(3)));
}

/** Text that XML shows as it stands; characters that XML 1.0 knows not are left out. */
function escaped(text: string): string {
  return oneLine(text)
    .replace(/[^\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu, "")
    .replace(/&/g, "&amp;")
    .replace(/</g, "&lt;")
    .replace(/>/g, "&gt;")
    .replace(/"/g, "&quot;");
}
