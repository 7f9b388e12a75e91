// Whole builds of random sound jobs, held to the rules that no part runs into another and that the mass is the sum of the
// parts. Blocks are compared in the world by code of this file alone. Rules of the trade: common practice.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { assemble } from "../src/build/assemble.ts";
import { type Build, surfaceOf } from "../src/build/build.ts";
import { isBoxPart, type Part } from "../src/build/part.ts";
import { type Block, blockOf } from "../src/build/surface.ts";
import { envelope } from "../src/checks/envelope/envelope.ts";
import { fit } from "../src/checks/fit/fit.ts";
import { mass as massCheck } from "../src/checks/mass/mass.ts";
import { readJobValue } from "../src/job/read.ts";
import { sampleJobFile } from "./sampleJob.ts";

const SEED = 20270311;
const RUNS = 400;
/** Sections take far longer than the rest of a build. */
const SECTIONED_RUNS = 12;

interface Cut {
  readonly skip: number;
  readonly width: number;
  readonly up: number;
  readonly height: number;
  readonly door: boolean;
}

const cuts: fc.Arbitrary<readonly Cut[]> = fc.array(
  fc.record({
    skip: fc.integer({ min: 450, max: 1500 }),
    width: fc.integer({ min: 300, max: 1300 }),
    up: fc.integer({ min: 500, max: 1100 }),
    height: fc.integer({ min: 300, max: 900 }),
    door: fc.boolean(),
  }),
  { maxLength: 4 },
);

/** Openings along a wall with room for doubled studs between them, clear of the partition; doors stand on the floor. */
function openingsOn(face: "left" | "right", length: number, wall: readonly Cut[], partition: number | undefined): readonly object[] {
  const found: object[] = [];
  let from = 150;
  for (const [index, { skip, width, up, height, door }] of wall.entries()) {
    const along = from + skip;
    if (along + width > length - 600) break;
    from = along + width;
    const middle = partition === undefined ? undefined : face === "left" ? partition : length - partition;
    if (middle !== undefined && along - 400 < middle && from + 400 > middle) continue;
    found.push({
      id: `${face}-${index}`,
      kind: door ? "personnel door" : "window",
      face,
      at: { along: `${along} mm`, up: `${door ? 0 : up} mm` },
      size: { width: `${width} mm`, height: `${door ? 2000 : height} mm` },
      frame: { row: "hss-2x2x1-8" },
      trim: "trim-2x2-18mil",
    });
  }
  return found;
}

const jobs = fc
  .record({
    box: fc.constantFrom("20-standard", "20-high-cube", "40-standard", "40-high-cube", "45-high-cube"),
    left: cuts,
    right: cuts,
    standOff: fc.integer({ min: 0, max: 40 }),
    pitch: fc.constantFrom("12 in", "16 in"),
    layers: fc.array(fc.constantFrom("gypsum-type-x-5-8", "gypsum-1-2", "plywood-1-2"), { minLength: 1, maxLength: 2 }),
    lay: fc.constantFrom("along studs", "across studs"),
    ceilingFirst: fc.boolean(),
    laid: fc.constantFrom("before walls", "after walls"),
    studsFrom: fc.constantFrom("blind end", "door end"),
    partition: fc.option(fc.integer({ min: 1500, max: 4000 }), { nil: undefined }),
    batts: fc.constantFrom(false, false, true),
    bare: fc.constantFrom([], ["roof"], ["blindEnd"], ["doorEnd"], ["right"]),
  })
  .map((one) => {
    const file = sampleJobFile();
    const wall = {
      what: "wall",
      foam: { row: "foam-closed-cell-2lb", thickness: one.batts ? "1 in" : "2 in" },
      ...(one.batts ? { batts: { row: "batt-rock-1-1-2-16" } } : {}),
      studs: { row: "stud-2-1-2-18mil", track: "track-2-1-2-18mil", pitch: one.pitch, standOff: `${one.standOff} mm`, cornerPull: "3 in" },
      boards: one.layers.map((row) => ({ row, lay: one.lay })),
    };
    const inner = { what: "inner", studs: { row: "stud-2-1-2-18mil", track: "track-2-1-2-18mil", pitch: "16 in" }, ...(one.batts ? { batts: { row: "batt-glass-2-1-2-24" } } : {}), boards: [{ row: "gypsum-1-2" }] };
    const face = { buildUp: "wall", studsFrom: one.studsFrom };
    const faces = {
      left: face,
      right: face,
      blindEnd: { buildUp: "wall" },
      doorEnd: { cargoDoors: "fixed shut", buildUp: "wall" },
      roof: face,
    };
    const length = one.box.startsWith("20") ? 5756 : one.box.startsWith("40") ? 11890 : 13414;
    return {
      ...file,
      box: { row: one.box, condition: "new" },
      buildUps: { wall, inner },
      faces: Object.fromEntries(
        Object.entries(faces).map(([id, lined]) => [
          id,
          !(one.bare as readonly string[]).includes(id) ? lined : id === "doorEnd" ? { cargoDoors: "working" } : {},
        ]),
      ),
      ceilingFirst: one.ceilingFirst,
      floor: { laid: one.laid, layers: [{ row: "plywood-3-4" }, { row: "vinyl-sheet-2" }] },
      partitions: one.partition === undefined ? [] : [{ id: "P1", at: `${one.partition} mm`, buildUp: "inner" }],
      rooms: [{ id: "R1", what: "One" }, ...(one.partition === undefined ? [] : [{ id: "R2", what: "Two" }])],
      openings: [...openingsOn("left", length, one.left, one.partition), ...openingsOn("right", length, one.right, one.partition)],
    };
  });

function buildOf(value: unknown): Build {
  const read = readJobValue(value);
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  return assemble(read.job);
}

interface Solid extends Block {
  readonly part: Part;
}

const solidOf = (build: Build, part: Part): Solid => ({ part, ...blockOf(surfaceOf(build, part.surface), part.rect, part.depth) });
/** Boards with openings or notches in them are L-shaped or pierced: only whole ones fill their block. */
const isWhole = ({ shape, rect }: Part): boolean =>
  shape.kind !== "panel" || Math.abs(shape.area - (rect.u1 - rect.u0) * (rect.v1 - rect.v0)) < 1e-9;
const meet = (a: Block, b: Block): boolean =>
  (["x", "y", "z"] as const).every((axis) => Math.min(a.to[axis], b.to[axis]) - Math.max(a.from[axis], b.from[axis]) > 1e-5);

const STUDS: ReadonlySet<string> = new Set(["stud", "jamb stud", "cripple stud", "blocking"]);
const BOARDS: ReadonlySet<string> = new Set(["board", "floor board"]);
const STEEL: ReadonlySet<string> = new Set(["post", "rail", "corner fitting", "cross-member", "opening frame"]);

describe("builds of random sound jobs", () => {
  test("hold boards, batts, studs and steel that keep out of one another", () => {
    fc.assert(
      fc.property(jobs, (value) => {
        const build = buildOf(value);
        const solids = build.parts
          .filter(({ role }) => STUDS.has(role) || BOARDS.has(role) || STEEL.has(role) || role === "track" || role === "batt")
          .filter(isWhole)
          .map((part) => solidOf(build, part));
        const clashes = solids.flatMap((a, index) =>
          solids
            .slice(index + 1)
            .filter((b) => !(isBoxPart(a.part) && isBoxPart(b.part)) && !nested(a.part, b.part) && meet(a, b))
            .map((b) => `${a.part.id} ~ ${b.part.id}`),
        );
        expect(clashes).toEqual([]);
      }),
      { seed: SEED, numRuns: RUNS },
    );
  });

  test("have every board edge on a support, and no snag", () => {
    fc.assert(
      fc.property(jobs, (value) => {
        const build = buildOf(value);
        const troubles = fit
          .run(build)
          .filter(({ id, verdict }) => verdict === "stop" && (id.startsWith("fit/board") || id.startsWith("fit/snags")))
          .map(({ says }) => says);
        expect(troubles).toEqual([]);
      }),
      { seed: SEED, numRuns: RUNS },
    );
  });

  test("weigh what their parts weigh, and no part is weightless or broken", () => {
    fc.assert(
      fc.property(jobs, (value) => {
        const build = buildOf(value);
        const odd = build.parts.filter(({ mass, centre }) => !(mass > 0) || ![centre.x, centre.y, centre.z].every(Number.isFinite));
        expect(odd.map(({ id }) => id)).toEqual([]);
        const finished = build.parts.filter(({ temporary }) => !temporary).reduce((sum, { mass }) => sum + mass, 0);
        const total = massCheck.run(build).find(({ id }) => id === "mass/total")?.facts["total"];
        expect(Math.abs(Number(total) - finished)).toBeLessThan(0.0005);
      }),
      { seed: SEED, numRuns: RUNS },
    );
  });

  test("can be cut into sections, and lose heat through them", { timeout: 120_000 }, () => {
    fc.assert(
      fc.property(jobs, (value) => {
        const loss = envelope.run(buildOf(value)).find(({ id }) => id === "envelope/heat-loss")?.facts["loss"];
        expect(Number(loss)).toBeGreaterThan(0);
      }),
      { seed: SEED, numRuns: SECTIONED_RUNS },
    );
  });
});

/** Studs stand inside their tracks, and tracks meet tracks at corners of one frame. */
function nested(a: Part, b: Part): boolean {
  return a.surface === b.surface && (a.role === "track" || b.role === "track") && !BOARDS.has(a.role) && !BOARDS.has(b.role);
}
