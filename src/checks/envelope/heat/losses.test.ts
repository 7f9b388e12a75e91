// The sum rule of ISO 10211, derived: fields, bars and junctions cut apart add up to the coupling of the whole ring cut at once.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { checkWorking } from "../../../../test/checkWorking.ts";
import { jobOf, sampleJobFile } from "../../../../test/sampleJob.ts";
import { assemble } from "../../../build/assemble.ts";
import type { Build } from "../../../build/build.ts";
import { rectHeight, rectWidth } from "../../../geometry/rect.ts";
import { studyEnvelope } from "../../envelope.ts";
import { makeContext } from "../../context.ts";
import { sectionPlan } from "../sections/sections.ts";
import { plan, type Planned, sectionOf } from "../sections/planned.ts";
import { makeSolver } from "./solved.ts";

const context = makeContext();

/** The sample box of ten feet with its sheets taken off, so that its ring has no slopes; its posts, studs and doors stay. */
function flatBox(): Build {
  const file = { ...sampleJobFile(), box: { row: "10-standard", condition: "new" } };
  const build = assemble(jobOf(file));
  return {
    ...build,
    surfaces: build.surfaces.map((one) => ({ ...one, profile: undefined })),
    parts: build.parts.filter(({ role }) => role !== "skin").map((one) => (one.role === "foam" && one.depth.from < 0 ? { ...one, depth: { ...one.depth, from: 0 } } : one)),
  };
}

test("walls, studs and corners of a level ring add up to the ring", () => {
  const build = flatBox();
  const study = studyEnvelope(build, context);
  const { outside } = build.box;
  const cut = { origin: { x: 0, y: 0, z: 1.2 }, x: { x: 1, y: 0, z: 0 }, y: { x: 0, y: 1, z: 0 } };
  const window = { u0: -0.02, u1: outside.length + 0.02, v0: -0.02, v1: outside.width + 0.02 };
  const ring: Planned = plan({ id: "ring", name: "ring", about: [], cut, window });
  const whole = makeSolver(build, context).solve(ring)!.coupling.value;

  const walls = study.losses.faces.filter(({ surface }) => surface !== "roof" && surface !== "floor");
  expect(walls).toHaveLength(4);
  const standing = (id: string): number => build.parts.filter(({ surface, role, rect }) => surface === id && role === "stud" && rect.v0 < 1.2 && rect.v1 > 1.2).length;
  const plain = walls.reduce((sum, { surface, field, bars }) => {
    const { inside } = build.surfaces.find(({ id }) => id === surface)!;
    return sum + field.value * rectWidth(inside) + standing(surface) * bars[0]!.psi.value;
  }, 0);
  const corners = study.losses.junctions.filter(({ length }) => Math.abs(length.value - rectHeight(build.surfaces[0]!.inside)) < 1e-9);
  expect(corners).toHaveLength(4);
  const sum = plain + corners.reduce((total, { psi }) => total + psi.value, 0);
  expect(Math.abs(sum / whole - 1)).toBeLessThan(0.01);
});

describe("the sample box", () => {
  const build = assemble(jobOf(sampleJobFile()));
  const study = studyEnvelope(build, context);

  test("has every section, and each is solved", () => {
    expect(study.plan.missing).toEqual([]);
    expect(study.unsolved).toEqual([]);
    expect(study.sections.every(({ solution }) => Math.abs(solution.quality.imbalance) < 1e-6)).toBe(true);
  });

  test("loses more with its bridges than its fields alone, and shows how", () => {
    const { faces, whole } = study.losses;
    for (const { bridged, field } of faces) expect(bridged.value).toBeGreaterThan(field.value);
    expect(checkWorking([whole!])).toBeGreaterThan(40);
  });

  test("is the same on its left and its right, where both are lined alike", () => {
    const edge = (id: string): string => {
      const { window, regions, sheets } = sectionOf(build, sectionPlan(build).junctions.find((one) => one.id === id)!.main);
      return JSON.stringify([window, regions.map(({ fill, outline }) => [fill, outline]), sheets.map(({ thickness }) => thickness)]);
    };
    expect(edge("right-roof")).toBe(edge("left-roof"));
    expect(edge("right-floor")).toBe(edge("left-floor"));
  });

  test("solves again only what a change of one face touches", () => {
    const file = sampleJobFile();
    const buildUps = file["buildUps"] as Record<string, object>;
    const changed = {
      ...file,
      buildUps: { ...buildUps, other: { ...buildUps["wall"], boards: [{ row: "plywood-1-2" }] } },
      faces: { ...(file["faces"] as object), blindEnd: { buildUp: "other" } },
    };
    let solved = 0;
    const counting = makeContext(400, (section, accuracy) => {
      solved += 1;
      return context.solve(section, accuracy);
    });
    studyEnvelope(build, counting);
    const first = solved;
    studyEnvelope(assemble(jobOf(changed)), counting);
    expect(solved - first).toBeLessThan(first / 2);
    expect(solved - first).toBeGreaterThan(0);
  });
});

// Foam takes the place of air that conducts more, so no coupling can rise. A surface factor can fall all the same: foam between
// studs keeps the room's warmth from their webs, and the board over a stud gets colder. In the field it never does.
test("more foam never raises what a section passes, nor lowers the factor of a field", () => {
  const sections = (inches: number) => {
    const file = sampleJobFile();
    const buildUps = file["buildUps"] as Record<string, object>;
    buildUps["wall"] = { ...buildUps["wall"], foam: { row: "foam-closed-cell-2lb", thickness: `${inches.toFixed(3)} in` } };
    const build = assemble(jobOf(file));
    const { faces, junctions } = sectionPlan(build);
    const { solve } = makeSolver(build, context);
    const left = faces.find(({ surface }) => surface.id === "left")!;
    const edge = junctions.find(({ id }) => id === "left-roof")!;
    return [left.field, left.kinds[0]!.planned, edge.main].map((planned) => {
      const { solution, coupling } = solve(planned)!;
      const room = solution.environments.indexOf("R1");
      return { coupling: coupling.value, least: Math.min(...solution.surface("R1").map(({ shares }) => shares[room]!)) };
    });
  };
  fc.assert(
    fc.property(fc.double({ min: 0.75, max: 2.2, noNaN: true }), fc.double({ min: 0.3, max: 0.6, noNaN: true }), (inches, more) => {
      const [thin, thick] = [sections(inches), sections(inches + more)];
      thin.forEach((one, k) => expect(thick[k]!.coupling).toBeLessThan(one.coupling));
      expect(thick[0]!.least).toBeGreaterThan(thin[0]!.least);
    }),
    { seed: 41, numRuns: 4 },
  );
});

// An identity: a face counts every upright bar that stands on it once, those beside openings too.
test("a face counts each of its studs by its whole length", () => {
  const build = assemble(jobOf(sampleJobFile()));
  const { losses } = studyEnvelope(build, makeContext());
  for (const { surface, bars } of losses.faces.filter(({ surface: id }) => id === "left" || id === "right")) {
    const standing = build.parts
      .filter((part) => part.surface === surface && ["stud", "jamb stud", "cripple stud"].includes(part.role))
      .reduce((sum, { shape }) => sum + (shape.kind === "bar" ? shape.length : 0), 0);
    expect(standing).toBeGreaterThan(0);
    expect(bars.reduce((sum, { length }) => sum + length.value, 0)).toBeCloseTo(standing, 9);
  }
});
