import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { found, only } from "../../../test/fitFindings.ts";
import { board, type HandPart, handBuild, type JobFile, partitionAt, stud } from "../../../test/handBuilt.ts";
import type { Snag } from "../../build/build.ts";
import { catalogue } from "../../catalogue/catalogue.ts";
import { inch } from "../../catalogue/imperial.ts";
import { cutRects } from "../../geometry/polygon.ts";
import { LEAST_STAGGER } from "../limits.ts";
import { sharedArea } from "./boardOverlap.ts";
import { rectsOf } from "./outline.ts";

const bare = handBuild();
const surface = (id: string) => bare.surfaces.find((one) => one.id === id)!;
const boards = surface("left").stack.boards[0]!;

describe("cargo doors over their lining", () => {
  const depth = catalogue.boxes.get("20-standard").cargoDoors.liningDepth;
  const { width: leafWidth } = { width: catalogue.boxes.get("20-standard").cargoDoors.leafWidth };
  /** Boards and foam of the leaf, and foam or none in a framed wall. */
  const doors = (leaf: JobFile, more: JobFile = {}, parts: readonly HandPart[] = []) =>
    handBuild((file) => {
      const faces = file["faces"] as JobFile;
      Object.assign(file, {
        buildUps: { ...(file["buildUps"] as object), leaf: { what: "lining of the leaves", ...leaf } },
        faces: { ...faces, doorEnd: { cargoDoors: "working", leafLining: "leaf", ...more } },
      });
    }, parts);
  const foam = (thickness: number) => ({ foam: { row: "foam-closed-cell-2lb", thickness: `${(thickness * 1000).toFixed(9)} mm` } });

  test("the limit itself closes; an eighth of an inch more does not, and is told", () => {
    const at = (thickness: number) => found(doors(foam(thickness)), "cargo-door-lining").find(({ id }) => id.endsWith("thickness"))!;
    expect(at(depth)).toMatchObject({ verdict: "pass", code: "leaf lining fits" });
    const thick = at(depth + inch / 8);
    expect(thick).toMatchObject({ verdict: "stop", code: "leaf lining too thick" });
    expect(thick.facts["over"]).toBeCloseTo(inch / 8, 9);
    fc.assert(
      fc.property(fc.integer({ min: -300, max: 300 }), (hundredths) => {
        expect(at(depth + hundredths * 1e-4).verdict).toBe(hundredths > 0 ? "stop" : "pass");
      }),
      { seed: 20266, numRuns: 60 },
    );
  });

  test("layers add up from their rows", () => {
    const two = found(doors({ boards: [{ row: "gypsum-1-2" }, { row: "plywood-1-2" }] }), "cargo-door-lining").find(({ id }) => id.endsWith("thickness"))!;
    expect(two.facts["has"]).toBeCloseTo(catalogue.boards.get("gypsum-1-2").thickness + catalogue.boards.get("plywood-1-2").thickness, 12);
  });

  test("on doors fixed shut the same is only a note", () => {
    const fixed = found(doors(foam(depth + 0.01), { cargoDoors: "fixed shut" }), "cargo-door-lining");
    expect(fixed).toMatchObject([{ verdict: "note", code: "leaf lining too thick" }]);
  });

  test("foam in a wall behind working doors is stopped, on the leaves watched", () => {
    expect(found(doors({ boards: [{ row: "gypsum-1-2" }] }, { buildUp: "wall" }), "cargo-door-lining").map(({ code }) => code)).toContain("foam locks doors");
    expect(found(doors(foam(0.03)), "cargo-door-lining").map(({ code }) => code)).toContain("foam on leaf");
    expect(found(bare, "cargo-door-lining")).toEqual([]);
  });

  test("boards keep the margin to the leaf's edge, exactly", () => {
    const leaf = { u0: 0, u1: leafWidth, v0: 0, v1: 2.2 };
    const margin = catalogue.boxes.get("20-standard").cargoDoors.liningMargin;
    const at = (u0: number, v0 = 0.1, v1 = 2.1) =>
      found(
        doors({ boards: [{ row: "gypsum-1-2" }] }, {}, [
          { surface: "doorEnd", role: "cargo door", rect: leaf, depth: { from: -0.05, to: 0 } },
          board("doorEnd", { u0, u1: leafWidth - 0.1, v0, v1 }, 1, { from: 0, to: 0.0127 }),
        ]),
        "cargo-door-lining/margins",
      );
    expect(at(margin)).toMatchObject([{ verdict: "pass" }]);
    expect(at(margin - 0.001)).toMatchObject([{ verdict: "stop", code: "leaf lining too wide", facts: { side: "on the left" } }]);
    expect(at(0.1, margin, leaf.v1 - margin)).toMatchObject([{ verdict: "pass" }]);
    expect(at(0.1, margin - 0.001)).toMatchObject([{ verdict: "stop", facts: { side: "below" } }]);
    expect(at(0.1, 0.1, leaf.v1 - margin + 0.001)).toMatchObject([{ verdict: "stop", facts: { side: "above" } }]);
  });
});

describe("nozzle room", () => {
  // Two studs at the corner of left wall and blind end. Stand-off 12.7 mm and depth 63.5 mm: the end wall's stud reaches 76.2 mm in.
  const corner = surface("left").inside.u0;
  const endStud = stud("blindEnd", surface("blindEnd").inside.u1 - 0.2);
  const at = (gap: number) => only(handBuild(undefined, [endStud, stud("left", corner + 0.0762 + gap)]), "nozzle-room");
  const needs = catalogue.foams.get("foam-closed-cell-2lb").nozzleRoom;
  // Across the box the left stud ends 76.2 mm in and the end stud starts 168 mm in.
  const across = 0.2 - 0.032 - 0.0762;

  test("is the straight distance between the two studs in plan", () => {
    const finding = at(0.05);
    expect(finding.comparison?.left.value).toBeCloseTo(Math.hypot(0.05, across), 9);
    expect(finding.verdict).toBe("pass");
  });

  test("names both studs and what is missing", () => {
    const near = stud("blindEnd", surface("blindEnd").inside.u1 - 0.0762 - 0.032);
    const short = only(handBuild(undefined, [near, stud("left", corner + 0.0762 + 0.05)]), "nozzle-room");
    expect(short).toMatchObject({ verdict: "stop", about: ["left/stud/2", "blindEnd/stud/1"] });
    expect(short.facts["missing"]).toBeCloseTo(needs - 0.05, 9);
    const exact = only(handBuild(undefined, [near, stud("left", corner + 0.0762 + needs)]), "nozzle-room");
    expect(exact.verdict).toBe("pass");
  });

  test("joists beside an end wall are measured, joists that end on a side wall are not", () => {
    const joist = (u0: number): HandPart => ({ surface: "roof", role: "stud", rect: { u0, u1: u0 + 0.032, v0: 0, v1: 2.3 }, depth: { from: 0.0127, to: 0.054 }, runs: "v" });
    const wallStud = stud("blindEnd", 0.5, { from: 0, to: surface("blindEnd").inside.v1 - 0.054 });
    expect(only(handBuild(undefined, [wallStud, joist(0.0762 + 0.05)]), "nozzle-room")).toMatchObject({ verdict: "stop", about: ["blindEnd/stud/1", "roof/stud/2"] });
    expect(found(handBuild(undefined, [stud("left", 1), joist(1)]), "nozzle-room")).toEqual([]);
  });
});

describe("foam in the build-up", () => {
  const wall = (thickness: string, studs: JobFile = {}) =>
    handBuild((file) => {
      const buildUps = file["buildUps"] as Record<string, JobFile>;
      const before = buildUps["wall"]!;
      buildUps["wall"] = { ...before, foam: { row: "foam-closed-cell-2lb", thickness }, studs: { ...(before["studs"] as object), ...studs } };
    });

  test("may reach the boards and no further", () => {
    // Stand-off 1/2 in and stud 2-1/2 in leave 3 in.
    expect(only(wall("3 in"), "foam-in-stack").verdict).toBe("pass");
    const proud = found(wall("3-1/16 in"), "foam-in-stack");
    expect(proud).toHaveLength(4);
    expect(proud[0]).toMatchObject({ verdict: "stop", code: "foam past boards", about: ["left"] });
    expect(proud[0]?.facts["over"]).toBeCloseTo(inch / 16, 9);
  });

  test("has to fill the stand-off, and be one pass at least", () => {
    expect(found(wall("1 in", { standOff: "2 in" }), "foam-in-stack").map(({ code }) => code)).toContain("foam short of studs");
    expect(found(wall("10 mm"), "foam-in-stack").map(({ code }) => code)).toContain("foam below one pass");
    expect(only(wall("15 mm"), "foam-in-stack").verdict).toBe("pass");
  });
});

describe("batts in the build-up", () => {
  const wall = (row: string, thickness?: string) =>
    handBuild((file) => {
      const buildUps = file["buildUps"] as Record<string, JobFile>;
      const foam = thickness === undefined ? {} : { foam: { row: "foam-closed-cell-2lb", thickness } };
      buildUps["wall"] = { what: "wall with wool", studs: buildUps["wall"]!["studs"], batts: { row }, ...foam };
    });

  test("take what foam, stand-off and studs leave, exactly", () => {
    // Stand-off 1/2 in and stud 2-1/2 in are 3 in; foam of 1-1/2 in leaves 1-1/2 in.
    expect(only(wall("batt-rock-1-1-2-16", "1-1/2 in"), "batts-in-stack")).toMatchObject({ verdict: "pass", code: "batts fit", facts: { count: 4 } });
    const thick = found(wall("batt-rock-1-1-2-16", "1-5/8 in"), "batts-in-stack");
    expect(thick).toHaveLength(4);
    expect(thick[0]).toMatchObject({ verdict: "stop", code: "batts too thick", about: ["left"] });
    expect(thick[0]?.facts["over"]).toBeCloseTo(inch / 8, 9);
    expect(only(wall("batt-rock-2-1-2-16"), "batts-in-stack").facts["spare"]).toBeCloseTo(inch / 2, 9);
    expect(found(wall("batt-rock-3-1-2-16"), "batts-in-stack")).toHaveLength(4);
  });

  test("are as thick as a partition's studs at most", () => {
    const inPartition = (row: string) =>
      handBuild((file) => {
        Object.assign(file, partitionAt("2 m"));
        const buildUps = file["buildUps"] as Record<string, JobFile>;
        buildUps["between"] = { ...buildUps["between"], batts: { row } };
      });
    expect(only(inPartition("batt-glass-2-1-2-16"), "batts-in-stack")).toMatchObject({ verdict: "pass", about: ["P1"] });
    expect(only(inPartition("batt-glass-3-1-2-16"), "batts-in-stack")).toMatchObject({ verdict: "stop", about: ["P1"] });
  });

  test("are not asked for where there are none", () => {
    expect(found(bare, "batts-in-stack")).toEqual([]);
  });
});

test("foam under the floor may be as deep as the cross-members, exactly", () => {
  const under = (thickness: string) => found(handBuild((file) => void (file["floor"] = { layers: [], foam: { row: "foam-closed-cell-2lb", thickness } })), "foam-in-stack");
  expect(under("122 mm").map(({ verdict }) => verdict)).toEqual(["pass"]);
  expect(under("123 mm")).toMatchObject([{ verdict: "watch", code: "foam below cross-members" }]);
});

test("foam under the floor is one pass at least, exactly", () => {
  const under = (thickness: string) => found(handBuild((file) => void (file["floor"] = { layers: [], foam: { row: "foam-closed-cell-2lb", thickness } })), "foam-in-stack");
  const { least } = catalogue.foams.get("foam-closed-cell-2lb").passThickness;
  expect(under(`${(least * 1000).toFixed(6)} mm`).map(({ verdict }) => verdict)).toEqual(["pass"]);
  expect(under(`${(least * 1000 - 0.1).toFixed(6)} mm`)).toMatchObject([{ verdict: "watch", code: "foam below one pass", facts: { surface: "floor" } }]);
});

describe("board edges", () => {
  const rect = (u0: number, u1: number) => ({ u0, u1, v0: 0, v1: 2.2 });
  const studs = [stud("left", 1 - 0.016), stud("left", 2 - 0.016), stud("left", 3 - 0.016)];

  test("on studs over the whole height pass", () => {
    const build = handBuild(undefined, [...studs, board("left", rect(1, 2), 1, boards), board("left", rect(2, 3), 1, boards)]);
    expect(only(build, "board-seams")).toMatchObject({ verdict: "pass", facts: { count: 4 } });
  });

  test("off a stud by more than a millimetre stop, with place and length", () => {
    const at = (u: number) => only(handBuild(undefined, [...studs, board("left", rect(1, u), 1, boards)]), "board-seams");
    expect(at(2.016 + 0.001 - 1e-6).verdict).toBe("pass");
    const off = at(2.03);
    expect(off).toMatchObject({ verdict: "stop", code: "edge off support", facts: { surface: "left wall", layer: 1, count: 1, open: 2.2 } });
    expect(off.facts["at"]).toBeCloseTo(2.03, 9);
  });

  test("at the end of the lining a board hangs over its last stud by an inch, exactly", () => {
    const { u0, u1 } = surface("left").lined;
    const over = (by: number) => [
      only(handBuild(undefined, [stud("left", u0 + by), studs[0]!, board("left", rect(u0, 1), 1, boards)]), "board-seams").verdict,
      only(handBuild(undefined, [studs[2]!, stud("left", u1 - by - 0.032), board("left", rect(3, u1), 1, boards)]), "board-seams").verdict,
    ];
    expect(over(inch)).toEqual(["pass", "pass"]);
    expect(over(inch + 0.0001)).toEqual(["stop", "stop"]);
  });

  test("a stud that stops short leaves the rest open", () => {
    const short = [studs[0]!, stud("left", 2 - 0.016, { from: 0, to: 2 })];
    const off = only(handBuild(undefined, [...short, board("left", rect(1, 2), 1, boards)]), "board-seams");
    expect(off.facts["open"]).toBeCloseTo(0.2, 9);
  });

  test("a board spans two inches of its own edge, exactly", () => {
    const upTo = (open: number) => only(handBuild(undefined, [studs[0]!, stud("left", 2 - 0.016, { from: 0, to: 2.2 - open }), board("left", rect(1, 2), 1, boards)]), "board-seams");
    expect(upTo(2 * inch).verdict).toBe("pass");
    expect(upTo(2 * inch + 0.0001).verdict).toBe("stop");
  });

  test("a temporary bar carries nothing", () => {
    const gone = { ...studs[1]!, temporary: true, role: "furring" as const };
    expect(only(handBuild(undefined, [studs[0]!, gone, board("left", rect(1, 2), 1, boards)]), "board-seams").verdict).toBe("stop");
  });
});

describe("layers of boards", () => {
  const second = { from: boards.to, to: boards.to + 0.0127 };
  const layers = (seam: number) =>
    handBuild(undefined, [
      board("left", { u0: 1, u1: 2, v0: 0, v1: 2.2 }, 1, boards),
      board("left", { u0: 2, u1: 3, v0: 0, v1: 2.2 }, 1, boards),
      board("left", { u0: 0.5, u1: seam, v0: 0, v1: 2.2 }, 2, second),
    ]);

  test("seams of the second keep off the first, exactly", () => {
    expect(only(layers(2 + LEAST_STAGGER.value), "board-stagger").verdict).toBe("pass");
    const near = only(layers(2 + 0.1), "board-stagger");
    expect(near).toMatchObject({ verdict: "watch", code: "seams too near", facts: { layer: 2, count: 1 } });
    expect(near.facts["apart"]).toBeCloseTo(0.1, 9);
  });

  test("seams one above the other do not lie on each other", () => {
    const above = (from: number) =>
      found(
        handBuild(undefined, [
          board("left", { u0: 1, u1: 2, v0: 0, v1: 1 }, 1, boards),
          board("left", { u0: 0.5, u1: 2.1, v0: from, v1: 2.2 }, 2, second),
        ]),
        "board-stagger",
      );
    expect(above(1)).toEqual([]);
    expect(above(0.9)).toMatchObject([{ verdict: "watch", code: "seams too near" }]);
  });

  test("a seam that the build already reports is not told twice", () => {
    const snag: Snag = { kind: "stagger lost", surface: "left", layer: 2, seam: 2.1 };
    const build = { ...layers(2.1), snags: [snag] };
    expect(found(build, "board-stagger")).toEqual([]);
    expect(found(build, "snags")).toMatchObject([{ verdict: "watch", code: "stagger lost" }]);
  });

  test("two boards of one layer may touch but not overlap; of two layers they may", () => {
    const pair = (u0: number, layer: number) => handBuild(undefined, [board("left", { u0: 1, u1: 2, v0: 0, v1: 2.2 }, 1, boards), board("left", { u0, u1: 3, v0: 0, v1: 2.2 }, layer, layer === 1 ? boards : second)]);
    expect(only(pair(2, 1), "board-overlap").verdict).toBe("pass");
    expect(only(pair(1.999, 1), "board-overlap")).toMatchObject({ verdict: "stop", code: "boards overlap" });
    expect(only(pair(1.5, 2), "board-overlap").verdict).toBe("pass");
  });

  // Closed form: rectangles less rectangles.
  test("shared area of outlines with notches", () => {
    const whole = { u0: 0, u1: 4, v0: 0, v1: 3 };
    const window = { u0: 1, u1: 2, v0: 1, v1: 2 };
    const notched = rectsOf(cutRects(whole, [window]));
    expect(sharedArea(notched, [whole])).toBeCloseTo(11, 12);
    expect(sharedArea(notched, [window])).toBe(0);
    expect(sharedArea(notched, [{ u0: 1.5, u1: 3, v0: 1.5, v1: 2.5 }])).toBeCloseTo(1.5 - 0.25, 12);
  });
});

test("every snag becomes one finding", () => {
  const snags: readonly Snag[] = [
    { kind: "no header room", surface: "left", opening: "W1" },
    { kind: "jamb left out", surface: "left", opening: "W1" },
    { kind: "no seam line", surface: "roof", layer: 1, from: 1.2 },
  ];
  const told = found(handBuild(undefined, [], snags), "snags");
  expect(told.map(({ code, verdict }) => [code, verdict])).toEqual([
    ["no header room", "stop"],
    ["jamb left out", "watch"],
    ["no seam line", "stop"],
  ]);
});
