// Studs and boards laid out together for random openings, verified from the laid pieces alone by code that shares
// nothing with the layout: no overlap, no gap, no board edge off a stud. Source of the rules: common practice
// (ASTM C754 and GA-216 ask for framed openings and joints on framing, from memory).
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { polygonArea } from "../../geometry/polygon.ts";
import { type Rect, rectArea } from "../../geometry/rect.ts";
import { type BoardLayout, layoutBoards } from "../boards/layoutBoards.ts";
import { layoutStuds, type StudField, type StudLayout } from "./layoutStuds.ts";

const RUNS = 3000;
const SEED = 20270104;
const INCH = 0.0254;
/** A gap behind a board edge that the trade accepts: the shortest cripple is not cut. */
const BARE = 0.0301;
const MICRON = 1e-6;

interface Case {
  readonly field: StudField;
  readonly layers: readonly ("along studs" | "across studs")[];
  readonly stock: { readonly width: number; readonly length: number };
}

/** Holes in bays of the wall, so far apart that doubled studs fit between: what a sound job holds. */
const soundCase: fc.Arbitrary<Case> = fc
  .record({
    width: fc.double({ min: 2.2, max: 12, noNaN: true }),
    height: fc.double({ min: 2, max: 2.7, noNaN: true }),
    pitch: fc.constantFrom(12 * INCH, 16 * INCH, 24 * INCH),
    studWidth: fc.constantFrom(1.25 * INCH, 1.625 * INCH),
    pull: fc.double({ min: 0, max: 0.1, noNaN: true }),
    lap: fc.double({ min: 0, max: 0.02, noNaN: true }),
    from: fc.constantFrom("start" as const, "end" as const),
    lay: fc.constantFrom("along studs" as const, "across studs" as const),
    double: fc.boolean(),
    length: fc.constantFrom(96 * INCH, 120 * INCH),
    bays: fc.array(
      fc.record({
        skip: fc.double({ min: 0.25, max: 2, noNaN: true }),
        width: fc.double({ min: 0.2, max: 1.8, noNaN: true }),
        sill: fc.double({ min: 0, max: 0.6, noNaN: true }),
        head: fc.double({ min: 0.62, max: 1, noNaN: true }),
      }),
      { maxLength: 6 },
    ),
  })
  .map((one) => {
    const holes: Rect[] = [];
    let from = one.pull + 0.1;
    for (const bay of one.bays) {
      const u0 = from + bay.skip;
      const u1 = u0 + bay.width;
      if (u1 > one.width - one.pull - 0.35) break;
      holes.push({ u0, u1, v0: bay.sill * (one.height - 0.1), v1: bay.head * (one.height - 0.1) });
      from = u1;
    }
    return {
      field: {
        rect: { u0: 0, u1: one.width, v0: 0, v1: one.height },
        pitch: one.pitch,
        studWidth: one.studWidth,
        trackLeg: 0.032,
        pull: { start: one.pull, end: one.pull },
        boards: { from: one.lap, to: one.width - one.lap },
        from: one.from,
        openings: holes.map((hole, index) => ({ id: `O${index}`, hole, toFloor: hole.v0 === 0 })),
      },
      layers: one.double ? [one.lay, one.lay] : [one.lay],
      stock: { width: 48 * INCH, length: one.length },
    };
  });

/** Holes anywhere, over each other and over the edges: what a job may hold by mistake. */
const wildCase: fc.Arbitrary<Case> = fc
  .tuple(
    soundCase,
    fc.array(
      fc.record({
        u: fc.double({ min: -1, max: 12, noNaN: true }),
        v: fc.double({ min: -1, max: 2.7, noNaN: true }),
        width: fc.double({ min: 0.05, max: 3, noNaN: true }),
        height: fc.double({ min: 0.05, max: 3, noNaN: true }),
      }),
      { maxLength: 6 },
    ),
  )
  .map(([sound, wild]) => ({
    ...sound,
    field: {
      ...sound.field,
      openings: wild.map(({ u, v, width, height }, index) => ({
        id: `W${index}`,
        hole: { u0: u, u1: u + width, v0: v, v1: v + height },
        toFloor: false,
      })),
    },
  }));

function lay({ field, layers, stock }: Case): { studs: StudLayout; boards: readonly BoardLayout[] } {
  const studs = layoutStuds(field);
  const boards: BoardLayout[] = [];
  for (const layer of layers) {
    boards.push(
      layoutBoards({
        rect: { u0: field.boards.from, u1: field.boards.to, v0: field.rect.v0, v1: field.rect.v1 },
        seamLines: studs.seamLines,
        from: field.from,
        holes: field.openings.map(({ hole }) => hole),
        stock,
        lay: layer,
        beneath: boards.at(-1),
      }),
    );
  }
  return { studs, boards };
}

const holds = (predicate: (one: Case) => void, cases = soundCase): void => {
  fc.assert(fc.property(cases, predicate), { seed: SEED, numRuns: RUNS });
};

const common = (a: Rect, b: Rect): number =>
  Math.max(0, Math.min(a.u1, b.u1) - Math.max(a.u0, b.u0)) * Math.max(0, Math.min(a.v1, b.v1) - Math.max(a.v0, b.v0));

describe("studs", () => {
  test("never stand in one another or in an opening, wherever the openings are", () => {
    holds((one) => {
      const { studs } = layoutStuds(one.field);
      const clashes = studs.flatMap(({ rect }, index) => [
        ...studs.slice(index + 1).filter((other) => common(rect, other.rect) > MICRON),
        ...one.field.openings.filter(({ hole }) => common(rect, hole) > MICRON),
      ]);
      expect(clashes).toEqual([]);
    }, wildCase);
  });

  test("stand doubled at both sides of every opening", () => {
    holds((one) => {
      const { studs, jambsLeftOut } = layoutStuds(one.field);
      expect(jambsLeftOut).toEqual([]);
      for (const { hole } of one.field.openings) {
        const beside = (u0: number): boolean =>
          studs.some(
            ({ rect }) => Math.abs(rect.u0 - u0) < MICRON && rect.v0 <= hole.v0 + MICRON && rect.v1 >= hole.v1 - MICRON,
          );
        const b = one.field.studWidth;
        expect([beside(hole.u0 - b), beside(hole.u1), beside(hole.u0 - 2 * b), beside(hole.u1 + b)]).toEqual([
          true,
          true,
          true,
          true,
        ]);
      }
    });
  });

  test("leave no bay wider than the pitch and half an inch", () => {
    holds((one) => {
      const { rect, boards, openings, pitch } = one.field;
      const { studs } = layoutStuds(one.field);
      for (const height of [rect.v0 + 0.06, (rect.v0 + rect.v1) / 2, rect.v1 - 0.06]) {
        const at = (r: Rect): boolean => r.v0 < height && r.v1 > height;
        const centres = studs.filter((stud) => at(stud.rect)).map((stud) => (stud.rect.u0 + stud.rect.u1) / 2);
        const stops = [boards.from, ...centres, boards.to].sort((a, b) => a - b);
        const wide = stops.slice(0, -1).filter((from, index) => {
          const to = stops[index + 1]!;
          const open = openings.some(({ hole }) => at(hole) && hole.u0 >= from - MICRON && hole.u1 <= to + MICRON);
          const cripple = openings.some(({ hole }) => hole.u0 < to && hole.u1 > from && nearEdge(hole, height));
          return !open && !cripple && to - from > pitch + 0.0127 + MICRON;
        });
        expect(wide).toEqual([]);
      }
    });
  });
});

/** True just above or below an opening, where header, sill or track stand in place of a short cripple. */
const nearEdge = (hole: Rect, height: number): boolean =>
  Math.abs(height - hole.v0) < 0.13 || Math.abs(height - hole.v1) < 0.13;

describe("boards", () => {
  test("cover the wall less its openings once, wherever the openings are", () => {
    holds((one) => {
      for (const layer of lay(one).boards) {
        const blanks = [...new Map(layer.boards.map(({ blank }) => [JSON.stringify(blank), blank])).values()];
        const overlaps = blanks.flatMap((blank, index) => blanks.slice(index + 1).filter((other) => common(blank, other) > MICRON));
        expect(overlaps).toEqual([]);
        const covered = layer.boards.reduce((sum, { outline }) => sum + polygonArea(outline), 0);
        expect(covered).toBeCloseTo(netArea(one), 6);
      }
    }, wildCase);
  });

  test("come from whole sheets", () => {
    holds((one) => {
      for (const [index, layer] of lay(one).boards.entries()) {
        const along = one.layers[index] === "along studs";
        const [reach, height] = along ? [one.stock.width, one.stock.length] : [one.stock.length, one.stock.width];
        const tooLarge = layer.boards.filter(({ blank }) => blank.u1 - blank.u0 > reach + 2e-5 || blank.v1 - blank.v0 > height + 2e-5);
        expect(tooLarge).toEqual([]);
      }
    }, wildCase);
  });

  test("have every upright seam on a stud, header, sill or track", () => {
    holds((one) => {
      const { studs, boards } = lay(one);
      const carriers = [...studs.studs, ...studs.tracks].map(({ rect }) => rect);
      const holes = one.field.openings.map(({ hole }) => hole);
      for (const layer of boards) {
        expect(layer.unsupported).toEqual([]);
        const bare = layer.seams.flat().filter((seam) => longestBare(seam, carriers, holes, one.field.rect) >= BARE);
        expect(bare).toEqual([]);
      }
    });
  });

  test("have seams of the second layer clear of the first, or say that they have not", () => {
    holds((one) => {
      const [first, second] = lay(one).boards;
      if (first === undefined || second === undefined) return;
      const beneath = first.seams.flat();
      const tooNear = second.seams.flat().filter((seam) => beneath.some((below) => Math.abs(below - seam) < 0.25));
      expect(tooNear.filter((seam) => !second.staggerLost.includes(seam))).toEqual([]);
      const threeBaysABoard = one.field.pitch <= 16 * INCH && one.layers[0] === "along studs";
      if (one.field.openings.length === 0 && threeBaysABoard) expect(second.staggerLost).toEqual([]);
    });
  });
});

/** Area of the board field that no hole covers, by a sweep over the holes' edges. */
function netArea(one: Case): number {
  const { rect, boards, openings } = one.field;
  const field: Rect = { u0: boards.from, u1: boards.to, v0: rect.v0, v1: rect.v1 };
  const us = edges([field.u0, field.u1], openings.flatMap(({ hole }) => [hole.u0, hole.u1]));
  const vs = edges([field.v0, field.v1], openings.flatMap(({ hole }) => [hole.v0, hole.v1]));
  let area = 0;
  for (const [i, u0] of us.slice(0, -1).entries()) {
    for (const [j, v0] of vs.slice(0, -1).entries()) {
      const cell = { u0, u1: us[i + 1]!, v0, v1: vs[j + 1]! };
      const middle = { u: (cell.u0 + cell.u1) / 2, v: (cell.v0 + cell.v1) / 2 };
      const open = openings.some(
        ({ hole }) => hole.u0 < middle.u && hole.u1 > middle.u && hole.v0 < middle.v && hole.v1 > middle.v,
      );
      if (!open) area += rectArea(cell);
    }
  }
  return area;
}

function edges([from, to]: readonly [number, number], others: readonly number[]): readonly number[] {
  return [from, ...others.filter((at) => at > from && at < to), to].sort((a, b) => a - b);
}

/** The longest stretch of a seam with neither a carrier nor an opening behind it. */
function longestBare(seam: number, carriers: readonly Rect[], holes: readonly Rect[], field: Rect): number {
  const behind = [
    ...carriers.filter(({ u0, u1 }) => u0 <= seam - 0.009 && u1 >= seam + 0.009),
    ...holes.filter(({ u0, u1 }) => u0 <= seam && u1 >= seam),
  ].sort((a, b) => a.v0 - b.v0);
  let reached = field.v0;
  let longest = 0;
  for (const { v0, v1 } of behind) {
    longest = Math.max(longest, v0 - reached);
    reached = Math.max(reached, v1);
  }
  return Math.max(longest, field.v1 - reached);
}
