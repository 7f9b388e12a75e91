// What is shown against the sections themselves: derived. Areas are held to another library's clipping of the same regions.
import polygonClipping, { type MultiPolygon, type Polygon as ClipPolygon } from "polygon-clipping";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { JobFile } from "../../../../test/handBuilt.ts";
import { jobOf, sampleJobFile } from "../../../../test/sampleJob.ts";
import { assemble } from "../../../build/assemble.ts";
import { rectArea } from "../../../geometry/rect.ts";
import type { Vec2 } from "../../../geometry/vector.ts";
import type { Region } from "../../../physics/conduction.ts";
import { runChecks } from "../../checks.ts";
import { makeContext } from "../../context.ts";
import { studyEnvelope } from "../../envelope.ts";
import type { SolvedSection } from "../heat/solved.ts";
import { airsThen } from "./hour.ts";
import { levelsBetween } from "./levels.ts";
import { pictureOf } from "./picture.ts";
import { plannedOf, sectionRows } from "./rows.ts";
import { heatShown } from "./shown.ts";

const YEAR = Array.from({ length: 12 }, (_, month) => ({ temperature: `${[-5, -3, 2, 8, 12, 16, 18, 18, 13, 8, 2, -4][month]} °C`, humidity: "80 %" }));
const WINDOW = { id: "W1", kind: "window", face: "left", at: { along: "1200 mm", up: "900 mm" }, size: { width: "900 mm", height: "900 mm" } };

function sample(change: (file: JobFile) => void = () => undefined): JobFile {
  const file = sampleJobFile();
  file["rooms"] = [{ id: "R1", what: "Room", heatTo: "20 °C", humidity: "50 %", people: 2 }];
  file["site"] = { ...(file["site"] as object), winterDesign: "-8 °C", monthly: YEAR };
  change(file);
  return file;
}

function withoutMonths(file: JobFile): JobFile {
  return Object.fromEntries(Object.entries(file["site"] as JobFile).filter(([key]) => key !== "monthly"));
}

const build = assemble(jobOf(sample()));
const context = makeContext();
const findings = runChecks(build, context);
const study = studyEnvelope(build, context);
const rows = sectionRows(build, study, findings);
const solvedOf = (id: string): SolvedSection => study.solver.solve(plannedOf(study, id)!, "mould")!;

const signedArea = (ring: readonly Vec2[]): number =>
  ring.reduce((sum, a, k) => {
    const b = ring[(k + 1) % ring.length]!;
    return sum + (a.x * b.y - b.x * a.y) / 2;
  }, 0);
const areaOf = (rings: readonly (readonly Vec2[])[]): number => rings.reduce((sum, ring) => sum + signedArea(ring), 0);

const clip = ({ outline }: Region): ClipPolygon => [outline.outer, ...outline.holes].map((ring) => ring.map(({ x, y }): [number, number] => [x, y]));
const clippedArea = (shape: MultiPolygon): number => shape.flat().reduce((sum, ring) => sum + signedArea(ring.slice(0, -1).map(([x, y]) => ({ x, y }))), 0);

/** What is seen of the regions of that name under those painted after them, m2. */
function seenArea({ section: { regions, window } }: SolvedSection, is: (region: Region) => boolean): number {
  const { u0, u1, v0, v1 } = window;
  const frame: ClipPolygon = [[[u0, v0], [u1, v0], [u1, v1], [u0, v1]]];
  const seen = regions.flatMap((region, at) => {
    if (!is(region)) return [];
    return polygonClipping.difference(polygonClipping.intersection(clip(region), frame), ...regions.slice(at + 1).map(clip));
  });
  return clippedArea(seen);
}

describe.each(["left/field", "left/stud/on-inner-flat", "roof/stud/over-outer-flat", "floor/cross-member", "left-roof", "left-blindEnd", "doorEnd-floor"])("the outlines of %s", (id) => {
  const solved = solvedOf(id);
  const picture = pictureOf(build, solved, "design")!;

  test("enclose as much of each material as is seen of it", () => {
    const materials = [...new Set(solved.section.regions.filter(({ fill }) => fill.kind === "solid").map(({ what }) => what))];
    for (const what of materials) {
      const rings = picture.outlines.filter((one) => one.closed && one.what === what).map(({ points }) => points);
      expect(areaOf(rings), what).toBeCloseTo(seenArea(solved, (region) => region.what === what && region.fill.kind === "solid"), 7);
    }
  });

  test("fill the window together with the airs", () => {
    const airs = picture.environments.reduce((sum, { rings }) => sum + areaOf(rings), 0);
    const solids = areaOf(picture.outlines.filter(({ closed }) => closed).map(({ points }) => points));
    expect(airs + solids).toBeCloseTo(rectArea(picture.window), 9);
  });

  test("name the material of every cell that conducts, and no other", () => {
    const { conductivity } = solved.solution.field;
    picture.grid.whatAt.forEach((what, cell) => expect(what >= 0, `cell ${cell}`).toBe(conductivity[cell]! > 0));
    for (const [cell, what] of picture.grid.whatAt.entries()) {
      if (picture.grid.slope[cell] !== 0 || what < 0) continue;
      const of = solved.section.regions.filter((region) => region.what === picture.grid.what[what] && region.fill.kind === "solid");
      expect(of.some(({ fill }) => fill.kind === "solid" && fill.conductivity === conductivity[cell])).toBe(true);
    }
  });
});

describe("the coldest surface", () => {
  test("is the same in list, picture and finding", () => {
    const colder = assemble(jobOf(sample((file) => (file["site"] = { ...withoutMonths(file), winterDesign: "-25 °C" }))));
    const found = runChecks(colder, context);
    const colderStudy = studyEnvelope(colder, context);
    const listed = sectionRows(colder, colderStudy, found);
    const cold = found.filter(({ code }) => code === "surface condenses at the design hour");
    expect(cold.length).toBeGreaterThan(0);
    for (const { id, facts } of cold) {
      const row = listed.find((one) => one.findings.includes(id));
      expect(row?.name).toBe(facts["section"]);
      expect(row?.verdict).not.toBe("pass");
      expect(row?.coldest?.factor).toBeCloseTo(facts["factor"] as number, 12);
      expect(row?.coldest?.temperature).toBeCloseTo(facts["temperature"] as number, 9);
      expect(pictureOf(colder, colderStudy.solver.solve(plannedOf(colderStudy, row!.id)!, "mould")!, "design")?.coldest).toEqual(row?.coldest);
    }
  });

  test("is the least temperature of the nodes that touch the room", () => {
    for (const { id, coldest } of rows) {
      const { solution } = solvedOf(id);
      const [room, outside] = [solution.environments.indexOf("R1"), solution.environments.indexOf("outside")];
      const least = Math.min(...solution.surface("R1").map(({ shares }) => 20 * shares[room]! - 8 * shares[outside]!));
      expect(coldest?.temperature).toBeCloseTo(least, 9);
    }
  });

  test("has the temperature of its node", () => {
    const picture = pictureOf(build, solvedOf("left/stud/on-inner-flat"), "design")!;
    const { xs, temperature } = picture.grid;
    const { at, temperature: least } = picture.coldest!;
    const node = temperature.findIndex((_, k) => xs[k % xs.length] === at.x && picture.grid.ys[Math.floor(k / xs.length)] === at.y);
    expect(temperature[node]).toBeCloseTo(least, 9);
  });
});

test("an hour has the airs of its month, and none where the site states no months", () => {
  const january = airsThen(build, 0)!;
  expect(january.get("outside")).toMatchObject({ temperature: -5, isHeated: false, dewPoint: undefined });
  expect(january.get("R1")?.temperature).toBe(20);
  // Dew point of 20 °C and 50 %: 9.3 °C (psychrometric tables, from memory).
  expect(january.get("R1")?.dewPoint).toBeCloseTo(9.3, 1);
  const without = assemble(jobOf(sample((file) => (file["site"] = withoutMonths(file)))));
  expect(airsThen(without, 0)).toBeUndefined();
  expect(airsThen(without, "design")?.get("outside")?.temperature).toBe(-8);
  expect(() => airsThen(build, 12)).toThrow(/hour is 12/);
});

test("a room that is not heated has no coldest surface, and is as cold as the outside", () => {
  const cold = assemble(jobOf(sample((file) => (file["rooms"] = [{ id: "R1", what: "Store" }]))));
  const coldStudy = studyEnvelope(cold, context);
  const coldRows = sectionRows(cold, coldStudy, []);
  expect(coldRows.length).toBeGreaterThan(10);
  expect(coldRows.every(({ coldest, verdict }) => coldest === undefined && verdict === undefined)).toBe(true);
  const picture = pictureOf(cold, coldStudy.solver.solve(plannedOf(coldStudy, "left/field")!, "mould")!, "design")!;
  expect(picture.environments.map(({ temperature }) => temperature)).toEqual([-8, -8]);
  expect(picture.isotherms).toEqual([]);
  expect(picture.dewPoint).toBeUndefined();
});

test("isotherms stand at round temperatures of the system, strictly between the airs", () => {
  fc.assert(
    fc.property(fc.double({ min: -60, max: 30, noNaN: true }), fc.double({ min: 2, max: 80, noNaN: true }), fc.constantFrom("metric" as const, "imperial" as const), (low, more, system) => {
      const levels = levelsBetween(low, low + more, system);
      expect(levels.length).toBeGreaterThan(0);
      expect(levels.length).toBeLessThan(15);
      for (const level of levels) {
        expect(level > low && level < low + more).toBe(true);
        const shown = system === "metric" ? level : 1.8 * level + 32;
        expect(Math.abs(2 * shown - Math.round(2 * shown))).toBeLessThan(1e-9);
      }
    }),
    { seed: 5, numRuns: 200 },
  );
});

describe("the sections that decide", () => {
  const windowed = assemble(jobOf(sample((file) => (file["openings"] = [WINDOW]))));
  const own = heatShown(windowed, studyEnvelope(windowed, context), runChecks(windowed, context));

  test("are one of each face, of the edges at floor and roof and between walls", () => {
    const kinds = own.pictures.map(({ id }) => own.sections.find((row) => row.id === id)!);
    expect(kinds.filter(({ kind }) => kind === "face").map(({ about }) => about[0]).toSorted()).toEqual(["blindEnd", "doorEnd", "floor", "left", "right", "roof"]);
    expect(kinds.filter(({ kind }) => kind === "junction")).toHaveLength(3);
  });

  test("are the coldest of their kind", () => {
    for (const side of ["roof", "floor"]) {
      const edges = own.sections.filter(({ kind, about }) => kind === "junction" && about.includes(side));
      const shown = edges.filter(({ id }) => own.pictures.some((picture) => picture.id === id));
      expect(shown).toHaveLength(1);
      expect(shown[0]!.coldest!.factor).toBeCloseTo(Math.min(...edges.map(({ coldest }) => coldest!.factor)), 9);
    }
  });

  test("tables add up to what the box loses", () => {
    const { faces, junctions, openings, loss } = own.tables;
    expect([...faces, ...junctions, ...openings].reduce((sum, one) => sum + one.loss, 0)).toBeCloseTo(loss!, 9);
  });
});
