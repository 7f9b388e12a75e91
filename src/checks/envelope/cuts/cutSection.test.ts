// Areas and lengths of what a plane shows: derived, from the parts' own extents and the closed forms of the folded sheet.
import { describe, expect, test } from "vitest";
import { jobOf, sampleJobFile } from "../../../../test/sampleJob.ts";
import { assemble } from "../../../build/assemble.ts";
import { type Build, surfaceOf } from "../../../build/build.ts";
import { catalogue } from "../../../catalogue/catalogue.ts";
import { polygonArea } from "../../../geometry/polygon.ts";
import { developedLength, troughArea } from "../../../geometry/trapezoid.ts";
import type { Vec2 } from "../../../geometry/vector.ts";
import type { Section } from "../../../physics/conduction.ts";
import { insideSurfaceResistance, outsideSurfaceResistance } from "../../../physics/plainLayers.ts";
import { makeContext } from "../../context.ts";
import { makeSolver } from "../heat/solved.ts";
import { facePlan } from "../sections/fields.ts";
import { planeAcross } from "../sections/planned.ts";
import { cutSection } from "./cutSection.ts";
import { gapConductivity } from "./gaps.ts";

const build = assemble(jobOf(sampleJobFile()));
const left = surfaceOf(build, "left");
const profile = catalogue.profiles.get("side-36");
const lengthOf = (points: readonly Vec2[]): number => points.slice(1).reduce((sum, b, k) => sum + Math.hypot(b.x - points[k]!.x, b.y - points[k]!.y), 0);
const areaOf = (section: Section, what: string): number => section.regions.filter((one) => one.what.includes(what)).reduce((sum, { outline }) => sum + polygonArea(outline), 0);
const level = (of: Build, u0: number, u1: number): Section => cutSection(of, planeAcross(left, "u", 1.2), { u0, u1, v0: -0.06, v1: 0.12 });

describe("a level cut of a wall", () => {
  const section = level(build, 1, 3);

  test("shows foam with the troughs behind it", () => {
    expect(areaOf(section, "foam")).toBeCloseTo(2 * 0.0508 + troughArea(profile, 1, 3), 6);
  });

  test("shows boards at their thickness and the gap before them", () => {
    const board = catalogue.boards.get("gypsum-1-2").thickness;
    expect(areaOf(section, "gypsum")).toBeCloseTo(2 * board, 6);
    expect(areaOf(section, "air behind the boards")).toBeCloseTo(2 * 0.0762 + troughArea(profile, 1, 3), 6);
  });

  test("shows the sheet as long as it is developed", () => {
    const skin = section.sheets.filter(({ what }) => what === "left wall sheet");
    expect(skin.reduce((sum, { points }) => sum + lengthOf(points), 0)).toBeCloseTo(developedLength(profile, 1, 3), 5);
    expect(skin[0]?.thickness).toBe(profile.thickness);
  });

  test("shows each stud as web, flanges and lips", () => {
    const row = catalogue.sections.get("stud-2-1-2-18mil");
    const studs = section.sheets.filter(({ what }) => what.startsWith("stud"));
    const inside = build.parts.filter(({ surface, role, rect }) => surface === "left" && role === "stud" && rect.u0 > 1 && rect.u1 < 3);
    expect(studs).toHaveLength(inside.length);
    for (const { points } of studs) expect(lengthOf(points)).toBeCloseTo(row.depth + 2 * row.width + 2 * row.lip!, 5);
  });

  test("holds the room and the outside, and no other air", () => {
    expect(section.airs.map(({ id }) => id)).toEqual(["outside", "R1 horizontal"]);
  });

  test("is the same section a whole pitch further on, where no stud stands", () => {
    const bare = { ...build, parts: build.parts.filter(({ shape }) => shape.kind !== "bar") };
    const [here, there] = [level(bare, 1, 1.5), level(bare, 1 + profile.pitch, 1.5 + profile.pitch)];
    for (const what of ["foam", "gypsum", "air behind"]) expect(areaOf(there, what)).toBeCloseTo(areaOf(here, what), 6);
    expect(there.sheets.map(({ points }) => lengthOf(points))).toEqual(here.sheets.map(({ points }) => expect.closeTo(lengthOf(points), 5) as number));
  });
});

test("an upright cut shows the sheet flat at its own depth", () => {
  const u = profile.outerFlat / 2 + 3 * profile.pitch;
  const section = cutSection(build, planeAcross(left, "v", u), { u0: 0.5, u1: 1.5, v0: -0.06, v1: 0.12 });
  expect(areaOf(section, "foam")).toBeCloseTo(0.0508 + profile.depth, 6);
  expect(section.sheets.filter(({ what }) => what === "left wall sheet").map(({ points }) => lengthOf(points))).toEqual([1]);
});

test("posts are hollow with the wall that their mass gives", () => {
  const corner = cutSection(build, planeAcross(left, "u", 1.2), { u0: -0.2, u1: 0.4, v0: -0.07, v1: 0.3 });
  const post = corner.sheets.find(({ what }) => what === "corner post")!;
  const { blindEnd } = build.box.posts;
  const t = post.thickness;
  expect(2 * (blindEnd.face + blindEnd.depth) * t - 4 * t * t).toBeCloseTo(blindEnd.massPerLength / 7850, 12);
  expect(lengthOf(post.points)).toBeCloseTo(2 * (blindEnd.face + blindEnd.depth), 2);
});

// ISO 6946, plain layers in series: the cargo doors carry no profile, and a section has the steel's own resistance left out.
test("a flat field is its layers in series", () => {
  const doorEnd = surfaceOf(build, "doorEnd");
  const { foam, boards } = doorEnd.stack;
  const gap = boards[0]!.from - foam!.to;
  const lambda = (id: string): number => catalogue.materials.get(id).conductivity;
  const R =
    outsideSurfaceResistance().value +
    0.0508 / lambda("foam-closed-cell") +
    gap / gapConductivity(gap, "horizontal") +
    catalogue.boards.get("gypsum-1-2").thickness / lambda(catalogue.boards.get("gypsum-1-2").material) +
    insideSurfaceResistance("horizontal").value;
  const { field } = facePlan(build, doorEnd)!;
  const solved = makeSolver(build, makeContext()).solve(field)!;
  expect(solved.coupling.value / field.width).toBeCloseTo(1 / R, 5);
});
