import dxfParser, { type DxfParser } from "dxf-parser";
import { describe, expect, test } from "vitest";
import laboratory from "../../examples/snow-laboratory.job.json" with { type: "json" };
import bunkRoom from "../../examples/trail-crew-bunk-room.job.json" with { type: "json" };
import { assemble } from "../build/assemble.ts";
import type { Build } from "../build/build.ts";
import { readJobValue } from "../job/read.ts";
import { draw } from "./draw.ts";
import type { Drawing } from "./drawing.ts";
import { LAYERS } from "./drawing.ts";
import { viewDxf } from "./dxf.ts";

interface Point { readonly x: number; readonly y: number }
interface Entity { readonly type: string; readonly layer: string; readonly vertices?: readonly Point[]; readonly text?: string; readonly lineType?: string }

// The package's types name the class as a member; what it exports at run time is the class itself.
const Reader = dxfParser as unknown as typeof DxfParser;

describe("DXF, read back by another reader", () => {
  const metric = buildOf({ ...laboratory, units: "metric" });
  const imperial = buildOf({ ...bunkRoom, units: "imperial" });

  test("a metric job is in millimetres, an imperial one in inches ($INSUNITS 4 and 1)", () => {
    expect(read(metric, "plan").header["$INSUNITS"]).toBe(4);
    expect(read(imperial, "plan").header["$INSUNITS"]).toBe(1);
  });

  test("only layers of the list, each with its line type", () => {
    const { layers, entities } = read(metric, "plan");
    const known: ReadonlySet<string> = new Set(LAYERS);
    for (const entity of entities) expect(known.has(entity.layer)).toBe(true);
    expect(Object.keys(layers).filter((layer) => layer !== "0").every((layer) => known.has(layer))).toBe(true);
    expect(Object.keys(layers)).toEqual(expect.arrayContaining(["skin", "studs", "foam", "boards", "openings", "dimensions", "origin"]));
  });

  test("the plan's outline is a 40 ft box: 12 192 by 2 438 mm (ISO 668, type 1AAA)", () => {
    const [outline] = read(metric, "plan").entities.filter(({ type, layer }) => type === "LWPOLYLINE" && layer === "outline");
    expect(sizeOf(outline)).toEqual([12192, 2438]);
  });

  test("an imperial plan's outline is a 20 ft box: 6 058 by 2 438 mm, in inches (ISO 668, type 1CC)", () => {
    const [outline] = read(imperial, "plan").entities.filter(({ type, layer }) => type === "LWPOLYLINE" && layer === "outline");
    const [length, width] = sizeOf(outline);
    expect(length).toBeCloseTo(6058 / 25.4, 5);
    expect(width).toBeCloseTo(2438 / 25.4, 5);
  });

  test("every opening of the left wall has its clear size on the outside drawing", () => {
    const rects = read(metric, "outside-sides").entities.filter(({ type, layer }) => type === "LWPOLYLINE" && layer === "openings").map(sizeOf);
    const clear = metric.openings.filter(({ surface }) => surface.id === "left").map(({ clear: r }) => [(r.u1 - r.u0) * 1000, (r.v1 - r.v0) * 1000] as const);
    expect(clear.length).toBeGreaterThan(0);
    for (const [width, height] of clear) {
      expect(rects.some(([w, h]) => Math.abs(w - width) < 1e-4 && Math.abs(h - height) < 1e-4)).toBe(true);
    }
  });

  test("every drawing with views is written and read, the same bytes twice", () => {
    for (const drawing of draw(metric).filter(({ views }) => views.length > 0)) {
      const text = viewDxf(drawing, metric.job);
      expect(viewDxf(drawing, metric.job)).toBe(text);
      expect(parse(text).entities.length).toBeGreaterThan(4);
      expect(text).not.toMatch(/NaN|Infinity|undefined/);
    }
  });

  test("hostile text is one line of text, its percent signs written so that they read as themselves", () => {
    const drawing = drawingOf(metric, "plan");
    const [view] = drawing.views;
    if (view === undefined) throw new Error("the plan has a view");
    const shapes = [...view.shapes, { kind: "text" as const, layer: "text" as const, at: { x: 1, y: 1 }, text: "50%%c\n0\nEOF ^J", height: 0.002, align: "left" as const }];
    const { entities } = parse(viewDxf({ ...drawing, views: [{ ...view, shapes }] }, metric.job));
    expect(entities.map(({ text }) => text)).toContain("50%%%%%%c 0 EOF ^ J");
  });

  test("a drawing of tables only has no DXF", () => {
    expect(() => viewDxf(drawingOf(metric, "openings"), metric.job)).toThrow(RangeError);
  });
});

function buildOf(file: unknown): Build {
  const reading = readJobValue(file);
  if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
  return assemble(reading.job);
}

function drawingOf(build: Build, id: string): Drawing {
  const found = draw(build).find((drawing) => drawing.id === id);
  if (found === undefined) throw new Error(`no drawing ${id}`);
  return found;
}

function read(build: Build, id: string) {
  return parse(viewDxf(drawingOf(build, id), build.job));
}

function parse(text: string) {
  const parsed = new Reader().parseSync(text);
  if (parsed === null) throw new Error("not a DXF file");
  const { layers } = parsed.tables.layer;
  return { header: parsed.header, layers, entities: parsed.entities as unknown as readonly Entity[] };
}

function sizeOf(entity: Entity | undefined): readonly [number, number] {
  const vertices = entity?.vertices ?? [];
  const xs = vertices.map(({ x }) => x);
  const ys = vertices.map(({ y }) => y);
  const size = (all: readonly number[]): number => Number((Math.max(...all) - Math.min(...all)).toFixed(6));
  return [size(xs), size(ys)];
}
