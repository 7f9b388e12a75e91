import { describe, expect, test } from "vitest";
import inverterRoom from "../../examples/island-inverter-room.job.json" with { type: "json" };
import laboratory from "../../examples/snow-laboratory.job.json" with { type: "json" };
import bunkRoom from "../../examples/trail-crew-bunk-room.job.json" with { type: "json" };
import { assemble } from "../build/assemble.ts";
import type { Rect } from "../geometry/rect.ts";
import { grow, overlaps } from "../geometry/rect.ts";
import { readJobValue } from "../job/read.ts";
import { draw } from "./draw.ts";
import { boxOf } from "./sheet/chains.ts";
import { layOut, sheets } from "./sheet.ts";
import { textBox } from "./sheet/text.ts";

const DEMOS = { laboratory, inverterRoom, bunkRoom };
/** Every demo as written, and in the other system of units, so that both papers and both ways of writing are held. */
const CASES = Object.entries(DEMOS).flatMap(([name, file]) =>
  (["metric", "imperial"] as const).map((units) => ({ name, units, file: { ...file, units } })),
);

function buildOf(file: unknown) {
  const reading = readJobValue(file);
  if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
  return assemble(reading.job);
}

describe.for(CASES)("sheets of the $name in $units units", ({ file }) => {
  const build = buildOf(file);
  const drawings = draw(build);
  const laid = layOut(build.job, drawings);

  test("no two texts overlap", () => {
    for (const sheet of laid) {
      const texts = sheet.shapes.filter((shape) => shape.kind === "text");
      const boxes = texts.map((text) => ({ text: text.text, box: textBox(text) }));
      const clashes = boxes.flatMap((a, index) =>
        boxes.slice(index + 1).filter((b) => overlaps(a.box, b.box)).map((b) => `${sheet.number}: "${a.text}" over "${b.text}"`),
      );
      expect(clashes).toEqual([]);
    }
  });

  test("nothing leaves the frame", () => {
    for (const sheet of laid) {
      const outside = sheet.shapes.filter((shape) => !within(boxOf(shape), grow(sheet.frame, 1e-9)));
      expect(outside, sheet.number).toEqual([]);
    }
  });

  test("every drawing has a sheet, and sheets are numbered through", () => {
    expect(new Set(laid.map(({ number }) => number)).size).toBe(laid.length);
    for (const { number } of drawings) expect(laid.some((sheet) => sheet.number.startsWith(number))).toBe(true);
    for (const [index, sheet] of laid.entries()) {
      const texts = sheet.shapes.flatMap((shape) => (shape.kind === "text" ? [shape.text] : []));
      expect(texts).toContain(`${index + 1} of ${laid.length}`);
      expect(texts.join(" ")).toContain("Licensed people and local");
    }
  });

  test("every opening is on the plan, in the schedule, on its face from both sides", () => {
    const textsOf = (id: string): readonly string[] =>
      drawings.filter((drawing) => drawing.id.startsWith(id)).flatMap(({ views, tables }) => [
        ...views.flatMap(({ shapes }) => shapes.flatMap((shape) => (shape.kind === "text" ? [shape.text] : []))),
        ...tables.flatMap(({ rows }) => rows.flatMap(([first]) => first ?? [])),
      ]);
    for (const { opening, surface } of build.openings) {
      expect(textsOf("plan")).toContain(opening.id);
      expect(textsOf("openings")).toContain(opening.id);
      expect(textsOf("framing")).toContain(opening.id);
      if (surface.kind === "face" && surface.id !== "floor") expect(textsOf("outside")).toContain(opening.id);
    }
  });

  test("the same build gives the same sheets", () => {
    expect(sheets(build, drawings)).toEqual(sheets(build, draw(build)));
  });
});

test("sixty openings on one wall and a hundred and twenty items in one place still make readable sheets", () => {
  const openings = Array.from({ length: 60 }, (_, index) => ({
    id: `SV${index + 1}`, kind: "pipe sleeve", face: "left",
    at: { along: `${150 + index * 191} mm`, up: `${100 + ((index * 37) % 60) * 41} mm` }, size: { width: "90 mm", height: "90 mm" },
  }));
  const items = Array.from({ length: 120 }, (_, index) => ({ ...laboratory.items[0], id: `IT${index + 1}`, what: `${"long words ".repeat(8)}${index}` }));
  const notes = Array.from({ length: 60 }, (_, index) => `${index} ${"unbroken".repeat(100)}`);
  for (const units of ["metric", "imperial"]) {
    const build = buildOf({ ...laboratory, units, openings, items, notes });
    for (const sheet of layOut(build.job, draw(build))) {
      const boxes = sheet.shapes.flatMap((shape) => (shape.kind === "text" ? [textBox(shape)] : []));
      expect(boxes.some((a, index) => boxes.slice(index + 1).some((b) => overlaps(a, b)))).toBe(false);
      expect(sheet.shapes.every((shape) => within(boxOf(shape), grow(sheet.frame, 1e-9)))).toBe(true);
    }
  }
});

test("things far outside the box and words without a space still make sheets, with every text apart and within the frame", () => {
  const long = "unbroken".repeat(25);
  const [opening] = laboratory.openings;
  const [item] = laboratory.items;
  const far = {
    ...laboratory,
    job: { ...laboratory.job, title: long, drawnBy: long, revision: "R999", customer: { ...laboratory.job.customer, name: long } },
    openings: [...laboratory.openings, { ...opening, id: "FAR", at: { along: "19.999 m", up: "19.999 m" } }],
    items: [
      ...laboratory.items,
      { ...item, id: "FI1", what: long, at: { along: "19.999 m", across: "19.999 m", up: "19.999 m" } },
      { ...item, id: "FI2", clear: { ...item?.clear, front: "20 m", sides: "20 m" } },
    ],
    rooms: laboratory.rooms.map((room) => ({ ...room, what: long })),
  };
  for (const units of ["metric", "imperial"]) {
    const build = buildOf({ ...far, units });
    const laid = layOut(build.job, draw(build));
    expect(Math.max(...laid.map(({ ratio = 0 }) => ratio))).toBeGreaterThan(50);
    for (const sheet of laid) {
      const boxes = sheet.shapes.flatMap((shape) => (shape.kind === "text" ? [textBox(shape)] : []));
      expect(boxes.some((a, index) => boxes.slice(index + 1).some((b) => overlaps(a, b)))).toBe(false);
      expect(sheet.shapes.every((shape) => within(boxOf(shape), grow(sheet.frame, 1e-9)))).toBe(true);
    }
  }
});

test("A3 is 420 by 297 mm (ISO 216), 11 by 17 inches for a US job in imperial units", () => {
  const sizes = (file: unknown): readonly (readonly [number, number])[] => {
    const build = buildOf(file);
    return layOut(build.job, draw(build).slice(0, 1)).map(({ width, height }) => [width, height] as const);
  };
  expect(sizes({ ...laboratory, units: "metric" })[0]).toEqual([0.42, 0.297]);
  const us = { ...bunkRoom, units: "imperial", codes: { ...bunkRoom.codes, basis: "US" } };
  expect(sizes(us)[0]?.[0]).toBeCloseTo(17 * 0.0254, 12);
  expect(sizes(us)[0]?.[1]).toBeCloseTo(11 * 0.0254, 12);
});

function within(a: Rect, b: Rect): boolean {
  return a.u0 >= b.u0 && a.u1 <= b.u1 && a.v0 >= b.v0 && a.v1 <= b.v1;
}
