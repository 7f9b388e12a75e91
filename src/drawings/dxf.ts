import { DxfWriter, LWPolylineFlags, TextHorizontalAlignment, TextVerticalAlignment, Units, point2d, point3d } from "@tarikjabiri/dxf";
import type { Job } from "../job/job.ts";
import type { System } from "../units/display.ts";
import type { Drawing, DrawnShape } from "./drawing.ts";
import { LAYERS } from "./drawing.ts";
import { ratioOf } from "./sheet.ts";
import { oneLine } from "./sheet/text.ts";
import { moved, viewOnPaper } from "./sheet/viewOnPaper.ts";
import { LINE_TYPES, STYLE } from "./style.ts";

/** DXF units in one metre, by the job's units. */
const PER_METRE: Readonly<Record<System, number>> = { metric: 1000, imperial: 1 / 0.0254 };
const INSUNITS: Readonly<Record<System, Units>> = { metric: Units.Millimeters, imperial: Units.Inches };
/** Between views, metres in the model. */
const GAP = 1;

/**
 * A drawing as a DXF file at full size: millimetres, or inches for an imperial job, views side by side in model space, a
 * layer for each kind of thing drawn. Dimensions are lines and texts on their layer, lettered for the drawing's scale.
 * Same drawing, same bytes. Throws RangeError where the drawing has no views.
 */
export function viewDxf(drawing: Drawing, job: Job): string {
  const ratio = ratioOf(drawing, job);
  if (ratio === undefined) throw new RangeError(`drawing ${drawing.number} has no views to write as DXF`);
  const perMetre = PER_METRE[job.units];
  const writer = new DxfWriter();
  writer.setUnits(INSUNITS[job.units]);
  writer.setVariable("$MEASUREMENT", { 70: job.units === "metric" ? 1 : 0 });
  for (const [name, dash] of Object.entries(LINE_TYPES)) {
    writer.addLType(name, name.toLowerCase(), dash.map((length, index) => length * ratio * perMetre * (index % 2 === 0 ? 1 : -1)));
  }
  const shapes = sideBySide(drawing, ratio);
  for (const layer of LAYERS.filter((each) => shapes.some((shape) => shape.layer === each))) {
    writer.addLayer(layer, STYLE[layer].dxf.colour, STYLE[layer].dxf.lineType);
  }
  for (const shape of shapes) write(writer, shape, ratio * perMetre);
  return writer.stringify();
}

/** The views as laid on paper, the first one's own origin at the origin and the others to its right. */
function sideBySide(drawing: Drawing, ratio: number): readonly DrawnShape[] {
  let right = 0;
  return drawing.views.flatMap((view, index) => {
    const paper = viewOnPaper(view, ratio);
    const x = index === 0 ? 0 : right + GAP / ratio - paper.bounds.u0;
    right = x + paper.bounds.u1;
    return paper.shapes.map((shape) => moved(shape, { x, y: 0 }));
  });
}

function write(writer: DxfWriter, shape: DrawnShape, factor: number): void {
  const dashed = "dashed" in shape && shape.dashed && STYLE[shape.layer].dxf.lineType === "Continuous";
  const options = { layerName: shape.layer, ...(dashed ? { lineType: "DASHED" } : {}) };
  const to = (point: { readonly x: number; readonly y: number }): { x: number; y: number } => ({
    x: rounded(point.x * factor), y: rounded(point.y * factor),
  });
  switch (shape.kind) {
    case "line": {
      const [a, b] = [to(shape.from), to(shape.to)];
      writer.addLine(point3d(a.x, a.y), point3d(b.x, b.y), options);
      return;
    }
    case "polyline": {
      const flags = shape.closed ? LWPolylineFlags.Closed : LWPolylineFlags.None;
      const vertices = shape.points.map(to).map(({ x, y }) => ({ point: point2d(x, y) }));
      writer.addLWPolyline(vertices, { ...options, flags });
      return;
    }
    case "circle": {
      const centre = to(shape.centre);
      writer.addCircle(point3d(centre.x, centre.y), rounded(shape.radius * factor), options);
      return;
    }
    case "arc": {
      const centre = to(shape.centre);
      const [from, until] = [shape.from, shape.to].map((turn) => rounded((turn * 180) / Math.PI)) as [number, number];
      writer.addArc(point3d(centre.x, centre.y), rounded(shape.radius * factor), from, until, options);
      return;
    }
    case "text": {
      const at = to(shape.at);
      writer.addText(point3d(at.x, at.y), rounded(shape.height * factor), plain(shape.text), {
        ...options,
        rotation: shape.turned === true ? 90 : 0,
        horizontalAlignment: ALIGN[shape.align],
        verticalAlignment: TextVerticalAlignment.BaseLine,
        secondAlignmentPoint: point3d(at.x, at.y),
      });
      return;
    }
  }
}

const ALIGN = {
  left: TextHorizontalAlignment.Left,
  middle: TextHorizontalAlignment.Center,
  right: TextHorizontalAlignment.Right,
} as const;

/** A thousandth of a millionth of a metre at the most: the same text on every machine. */
function rounded(value: number): number {
  return Number(value.toFixed(6)) + 0;
}

/** Text without DXF's control codes: a doubled percent sign and a caret are written so that they read as themselves. */
function plain(text: string): string {
  return oneLine(text).replaceAll("\u00A0", " ").replace(/%%+/g, (signs) => "%%%".repeat(signs.length)).replace(/\^/g, "^ ");
}
