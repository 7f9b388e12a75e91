import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { found, only } from "../../../test/fitFindings.ts";
import { type HandPart, handBuild, partitionAt, stud } from "../../../test/handBuilt.ts";
import type { Build } from "../../build/build.ts";
import { LEAST_BETWEEN_HOLES, LEAST_STRIP } from "../limits.ts";

type Hole = Readonly<Record<string, unknown>>;
const hole = (id: string, face: string, along: number, up: number, width: number, height: number, more: Hole = {}): Hole => ({
  id,
  kind: "cable entry",
  face,
  at: { along: `${along * 1000} mm`, up: `${up * 1000} mm` },
  size: { width: `${width * 1000} mm`, height: `${height * 1000} mm` },
  ...more,
});
const withHoles = (openings: readonly Hole[], parts: readonly HandPart[] = [], more: Hole = {}): Build =>
  handBuild((file) => Object.assign(file, { openings }, more), parts);
const panel = handBuild().surfaces.find(({ id }) => id === "left")!.panel;

describe("holes in the sheet", () => {
  test("pass in the middle, with all four margins in the working", () => {
    const finding = only(withHoles([hole("CE1", "left", 2, 1, 0.15, 0.15)]), "opening-in-sheet");
    expect(finding).toMatchObject({ verdict: "pass", code: "holes in sheet", facts: { opening: "CE1", side: "below" } });
    expect(finding.working.map(({ value }) => value)).toEqual([
      expect.closeTo(2 - panel.u0, 9),
      expect.closeTo(panel.u1 - 2.15, 9),
      expect.closeTo(1 - panel.v0, 9),
      expect.closeTo(panel.v1 - 1.15, 9),
    ]);
  });

  test("stop in the post, by how far", () => {
    const finding = only(withHoles([hole("CE1", "left", -0.02, 1, 0.15, 0.15)]), "opening-in-sheet");
    expect(finding).toMatchObject({ verdict: "stop", code: "hole outside sheet", facts: { side: "on the left" } });
    expect(finding.facts["over"]).toBeCloseTo(0.02, 9);
  });

  test("a hole right on the post's edge is no overlap; a thin strip is watched, and the limit itself passes", () => {
    const at = (along: number) => only(withHoles([hole("CE1", "left", along, 1, 0.15, 0.15)]), "opening-in-sheet").verdict;
    expect(at(0)).toBe("pass");
    expect(at(0.02)).toBe("watch");
    expect(at(LEAST_STRIP.value)).toBe("pass");
    expect(at(LEAST_STRIP.value - 0.0001)).toBe("watch");
  });

  test("a door frame without lower bar leaves no strip below", () => {
    const door = hole("D1", "left", 2, 0, 0.914, 2.032, { kind: "personnel door", frame: { row: "hss-2x2x1-8" } });
    expect(only(withHoles([door]), "opening-in-sheet").verdict).toBe("pass");
  });
});

describe("holes apart", () => {
  const two = (apart: number) => withHoles([hole("A", "left", 2, 1, 0.15, 0.15), hole("B", "left", 2.15 + apart, 1, 0.15, 0.15)]);

  test("pass, watch and stop flip exactly at the limit and at touch", () => {
    fc.assert(
      fc.property(fc.integer({ min: -140, max: 400 }), (millimetres) => {
        const apart = millimetres / 1000;
        const wanted = apart < 0 ? "stop" : apart < LEAST_BETWEEN_HOLES.value ? "watch" : "pass";
        expect(only(two(apart), "openings-apart").verdict).toBe(wanted);
      }),
      { seed: 20263, numRuns: 100 },
    );
    expect(only(two(LEAST_BETWEEN_HOLES.value), "openings-apart").verdict).toBe("pass");
  });

  test("holes on different faces are not compared", () => {
    expect(found(withHoles([hole("A", "left", 2, 1, 0.15, 0.15), hole("B", "right", 2, 1, 0.15, 0.15)]), "openings-apart")).toEqual([]);
  });
});

describe("studs", () => {
  test("a stud across an unframed opening stops it, with the way out, rounded up", () => {
    const finding = only(withHoles([hole("CE1", "left", 2, 1, 0.15, 0.15)], [stud("left", 2.1)]), "openings-and-studs");
    expect(finding).toMatchObject({ verdict: "stop", code: "stud in opening", facts: { way: "to the left" } });
    expect(finding.facts["move"]).toBeCloseTo(0.05, 9);
    expect(finding.says).toContain("50 mm to the left");
  });

  test("moved by that much it passes", () => {
    const finding = only(withHoles([hole("CE1", "left", 1.95, 1, 0.15, 0.15)], [stud("left", 2.1)]), "openings-and-studs");
    expect(finding.verdict).toBe("pass");
    expect(finding.facts["clear"]).toBeCloseTo(0, 9);
  });

  test("framed openings are no concern of it", () => {
    const window = hole("W1", "left", 2, 1, 0.5, 0.5, { kind: "window", frame: { row: "hss-2x2x1-8" } });
    expect(found(withHoles([window], [stud("left", 2.2)]), "openings-and-studs")).toEqual([]);
  });
});

describe("partitions and cross-members", () => {
  const partitionStud: HandPart = stud("P1", 0.1, { from: 0, to: 2 }, { from: -0.0318, to: 0.0318 });

  test("a partition across an opening stops it", () => {
    // The left wall's along starts at the post's inner edge, 150 mm from the outer blind end; the partition's at the inside plane.
    const opening = hole("CE1", "left", 2, 1, 0.15, 0.15);
    const clash = only(withHoles([opening], [partitionStud], partitionAt("2.15 m")), "openings-and-partitions");
    expect(clash).toMatchObject({ verdict: "stop", facts: { opening: "CE1", partition: "P1" } });
    expect(only(withHoles([opening], [partitionStud], partitionAt("3 m")), "openings-and-partitions").verdict).toBe("pass");
  });

  test("a floor opening is moved off a cross-member, and told where it is wider than the bay", () => {
    const members: readonly HandPart[] = [1, 1.3, 1.6].map((u0) => ({
      id: `floor/cross-member/${u0}`,
      surface: "floor",
      role: "cross-member",
      rect: { u0, u1: u0 + 0.045, v0: 0, v1: 2.3 },
      depth: { from: -0.15, to: -0.028 },
    }));
    const floor = (along: number, width: number, more: Hole = {}) =>
      only(withHoles([hole("F1", "floor", along, 0.5, width, 0.1, more)], members), "openings-and-cross-members");
    expect(floor(1.1, 0.1).verdict).toBe("pass");
    expect(floor(1.045, 0.255).verdict).toBe("pass");
    expect(floor(1.25, 0.1)).toMatchObject({ verdict: "stop", code: "cross-member in opening", facts: { way: "toward the blind end" } });
    expect(floor(1.25, 0.1).facts["move"]).toBeCloseTo(0.05, 9);
    expect(floor(1.1, 0.3)).toMatchObject({ verdict: "stop", code: "opening wider than bay", facts: { count: 1 } });
    expect(floor(1.1, 0.3, { frame: { row: "angle-2x2x3-16" } }).verdict).toBe("watch");
  });
});

describe("articles and frames", () => {
  // The rough hole of this invented fan is 0.46 m square.
  const fan = (width: number, height = 0.46) => hole("FN1", "left", 2, 1, width, height, { kind: "fan", article: "fan-wall-400", frame: { row: "hss-2x2x1-8" } });

  test("the maker's hole is the least, exactly", () => {
    expect(only(withHoles([fan(0.46)]), "article-fits").verdict).toBe("pass");
    const tight = only(withHoles([fan(0.459)]), "article-fits");
    expect(tight).toMatchObject({ verdict: "stop", code: "article too big", facts: { way: "width", needs: 0.46 } });
    expect(tight.says).toMatch(/needs 460 mm of width, the clear opening has 459 mm/);
  });

  test("an inch of gap passes, more is watched", () => {
    expect(only(withHoles([fan(0.46 + 0.0254)]), "article-fits").verdict).toBe("pass");
    expect(only(withHoles([fan(0.49)]), "article-fits")).toMatchObject({ verdict: "watch", code: "article too loose" });
  });

  test("a frame shallower than the sheet is watched, and so is a large hole without one", () => {
    expect(only(withHoles([hole("W1", "left", 2, 1, 0.5, 0.5, { frame: { row: "flat-2x1-4" } })]), "frame-and-sheet")).toMatchObject({
      verdict: "watch",
      code: "frame thinner than sheet",
      facts: { sheet: 0.036 },
    });
    expect(only(withHoles([hole("W1", "left", 2, 1, 0.5, 0.5)]), "frame-and-sheet").code).toBe("hole without frame");
    expect(only(withHoles([hole("W1", "left", 2, 1, 0.5, 0.5, { frame: { row: "hss-2x2x1-8" } })]), "frame-and-sheet").verdict).toBe("pass");
  });
});

describe("cargo doors", () => {
  const leaves: readonly HandPart[] = [0, 1].map((side) => ({
    id: `doorEnd/cargo-door/${side + 1}`,
    surface: "doorEnd",
    role: "cargo door",
    rect: { u0: 0.01 + side * 1.17, u1: 1.16 + side * 1.17, v0: 0.01, v1: 2.2 },
    depth: { from: -0.05, to: 0 },
  }));
  const doors = (cargoDoors: string, along: number) =>
    found(withHoles([hole("CE1", "doorEnd", along, 1, 0.2, 0.2)], leaves, { faces: { left: {}, right: {}, blindEnd: {}, doorEnd: { cargoDoors }, roof: {} } }), "cargo-door-openings");

  test("within a working leaf watched, across both stopped, across fixed ones watched", () => {
    expect(doors("working", 0.4)).toMatchObject([{ verdict: "watch", code: "opening on working leaf" }]);
    expect(doors("working", 1.1)).toMatchObject([{ verdict: "stop", code: "opening crosses leaves" }]);
    expect(doors("fixed shut", 1.1)).toMatchObject([{ verdict: "watch", code: "opening across fixed leaves" }]);
    expect(doors("fixed shut", 0.4)).toEqual([]);
  });
});
