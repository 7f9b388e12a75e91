import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { found, only } from "../../../test/fitFindings.ts";
import { type HandPart, handBuild, type JobFile, partitionAt, stud } from "../../../test/handBuilt.ts";
import { item, mm, withItems } from "../../../test/handItems.ts";
import { LEAST_HEADROOM } from "../limits.ts";

const bare = handBuild();
/** Finished faces from the inside planes, as items are placed. */
const left = bare.surfaces.find(({ id }) => id === "left")!.stack.finished;
const width = bare.rooms[0]!.y.to - bare.rooms[0]!.y.from;

describe("items in rooms", () => {
  test("moving an item toward the wall flips exactly at the finished face", () => {
    fc.assert(
      fc.property(fc.integer({ min: -200, max: 200 }), (tenths) => {
        const off = tenths / 10_000;
        expect(only(withItems([item("A", 2, left + off)]), "items-in-rooms").verdict).toBe(off < 0 ? "stop" : "pass");
      }),
      { seed: 20264, numRuns: 100 },
    );
    const over = only(withItems([item("A", 2, left - 0.0254)]), "items-in-rooms");
    expect(over).toMatchObject({ code: "item outside room", facts: { item: "A", face: "the left wall" } });
    expect(over.facts["over"]).toBeCloseTo(0.0254, 9);
  });

  test("the ceiling counts, and a partition does", () => {
    const tall = item("A", 2, 0.5, { size: { length: "600 mm", width: "600 mm", height: "2.4 m" } });
    expect(only(withItems([tall]), "items-in-rooms").facts["face"]).toBe("the ceiling of Room");
    const across = only(withItems([item("A", 2, 0.5)], partitionAt("2.55 m")), "items-in-rooms");
    expect(across).toMatchObject({ verdict: "stop", facts: { room: "Blind room", face: "the wall of Blind room toward the door end" } });
  });

  test("an item off the floor stops, wholly or partly, on whichever side", () => {
    const length = bare.rooms[0]!.x.to;
    for (const [along, across] of [[2, -1.2], [2, -0.3], [2, width + 1], [-3, 0.5], [length + 2, 0.5], [2, 15]] as const) {
      expect(only(withItems([item("A", along, across)]), "items-in-rooms"), `${along} ${across}`).toMatchObject({ verdict: "stop", code: "item outside room", about: ["A"] });
    }
    expect(only(withItems([item("A", 2, -1.2)]), "items-in-rooms").facts["over"]).toBeCloseTo(1.2 + left, 9);
  });

  test("on the roof, or held by a wall from outside, it is told of and not passed", () => {
    const outside = { verdict: "note", code: "item on the outside" };
    const up = (metres: number, across: number) => item("A", 2, across, { at: { along: "2 m", across: mm(across), up: mm(metres) } });
    const { height } = bare.box.outside;
    expect(only(withItems([up(height, 0.5)]), "items-in-rooms")).toMatchObject(outside);
    expect(only(withItems([up(height - 1, 0.5)]), "items-in-rooms").verdict).toBe("stop");
    expect(only(withItems([up(height, -2)]), "items-in-rooms").verdict).toBe("stop");
    const wall = bare.surfaces.find(({ id }) => id === "floor")!.origin.y;
    const held = (off: number) => only(withItems([item("A", 2, -wall - 0.6 - off, { fixedTo: "wall" })]), "items-in-rooms");
    expect(held(0)).toMatchObject(outside);
    expect(held(0.149)).toMatchObject(outside);
    expect(held(0.151).verdict).toBe("stop");
  });

  test("no items, nothing said", () => {
    expect(found(bare, "items-in-rooms")).toEqual([]);
  });
});

describe("items apart", () => {
  test("side by side passes, any overlap stops, one above the other passes", () => {
    const beside = (gap: number) => only(withItems([item("A", 2, 0.5), item("B", 2.6 + gap, 0.5)]), "items-apart");
    expect(beside(0).verdict).toBe("pass");
    expect(beside(0.1).facts["apart"]).toBeCloseTo(0.1, 9);
    expect(beside(-0.001)).toMatchObject({ verdict: "stop", facts: { one: "A", other: "B" } });
    expect(beside(-0.001).facts["over"]).toBeCloseTo(0.001, 9);
    const above = item("B", 2, 0.5, { at: { along: "2 m", across: "500 mm", up: "900 mm" } });
    expect(only(withItems([item("A", 2, 0.5), above]), "items-apart").verdict).toBe("pass");
  });
});

describe("clear spaces", () => {
  const asking = (front: string, clear: JobFile) => item("A", 2, left, { front, clear });

  test("up to the next item, exactly", () => {
    const before = (gap: number) => only(withItems([asking("doorEnd", { front: "1 m" }), item("B", 2.6 + gap, left)]), "clear-spaces");
    expect(before(1).verdict).toBe("pass");
    expect(before(0.999)).toMatchObject({ verdict: "stop", facts: { item: "A", side: "in front", needs: 1, blocker: "B" } });
    expect(before(0.999).comparison?.margin).toBeCloseTo(-0.001, 9);
  });

  test("up to the wall across, and aside of it nothing is in the way", () => {
    const needs = width - 0.6;
    expect(only(withItems([asking("right", { front: mm(needs) })]), "clear-spaces").verdict).toBe("pass");
    const short = only(withItems([asking("right", { front: mm(needs + 0.01) })]), "clear-spaces");
    expect(short).toMatchObject({ verdict: "stop", about: ["A"] });
    expect(short.facts["blocker"]).toBe("the right wall");
    expect(only(withItems([asking("right", { front: "1 m" }), item("B", 3, left + 0.7)]), "clear-spaces").verdict).toBe("pass");
  });

  test("in front is where the front faces", () => {
    // 300 mm from the left wall, and far from all others.
    const facing = (front: string) => only(withItems([item("A", 2, left + 0.3, { front, clear: { front: "500 mm" } })]), "clear-spaces");
    expect(facing("left")).toMatchObject({ verdict: "stop", facts: { blocker: "the left wall" } });
    expect(facing("left").facts["has"]).toBeCloseTo(0.3, 9);
    for (const front of ["right", "blindEnd", "doorEnd"]) expect(facing(front).verdict).toBe("pass");
    const atBlindEnd = only(withItems([item("A", 0.3, left + 0.3, { front: "blindEnd", clear: { front: "500 mm" } })]), "clear-spaces");
    expect(atBlindEnd).toMatchObject({ verdict: "stop", facts: { blocker: "the wall of Room toward the blind end" } });
  });

  test("of an item outside the box nothing is said", () => {
    expect(found(withItems([item("A", 2, -1.2, { front: "left", clear: { front: "1 m" } })]), "clear-spaces")).toEqual([]);
  });

  test("where another item stands within it, there is none left", () => {
    const inside = only(withItems([asking("doorEnd", { front: "1 m" }), item("B", 2.4, left)]), "clear-spaces");
    expect(inside.says).toContain("has none: B is in the way");
  });

  test("behind, beside and above are looked at by themselves", () => {
    const sides = found(withItems([asking("right", { sides: "100 mm", back: "50 mm", above: "2 m" })]), "clear-spaces");
    expect(sides.map(({ facts }) => facts["side"])).toEqual(["behind", "above"]);
  });
});

describe("swings", () => {
  const door = (id: string, along: number, swing: JobFile, face = "left"): JobFile => ({
    id,
    kind: "personnel door",
    face,
    at: { along: mm(along), up: "0 mm" },
    size: { width: "900 mm", height: "2000 mm" },
    swing,
  });
  const inward = { hinge: "left", opens: "in" };
  // The left wall's along starts 150 mm from the outer blind end and the items' 60 mm from it.
  const toItem = bare.surfaces.find(({ id }) => id === "left")!.origin.x - bare.surfaces.find(({ id }) => id === "floor")!.origin.x;

  test("an item flips exactly at the leaf's radius", () => {
    const beyond = (off: number) =>
      found(withItems([item("A", 2 + toItem, left + 0.9 + off)], { openings: [door("D1", 2, inward)] }), "swings-and-items");
    expect(beyond(0)).toMatchObject([{ verdict: "pass" }]);
    expect(beyond(0.02)[0]?.facts["clear"]).toBeCloseTo(0.02, 9);
    expect(beyond(-0.001)).toMatchObject([{ verdict: "stop", code: "item in swing", facts: { item: "A", opening: "D1" } }]);
  });

  test("an item aside of the quarter turn, above the leaf, or inside of an outward one is free", () => {
    const free = (one: JobFile, swing: JobFile = inward) => found(withItems([one], { openings: [door("D1", 2, swing)] }), "swings-and-items");
    expect(free(item("A", 1.3 + toItem, left))).toEqual([]);
    expect(free(item("A", 2 + toItem, left, { size: { length: "300 mm", width: "300 mm", height: "200 mm" }, at: { along: "2 m", across: mm(left), up: "2 m" } }))).toEqual([]);
    expect(free(item("A", 2 + toItem, left), { hinge: "left", opens: "out" })).toEqual([]);
  });

  test("opens square at least, exactly; what is not stated is a note", () => {
    const angle = (text: string) => found(withItems([], { openings: [door("D1", 2, { ...inward, angle: text })] }), "swings");
    expect(angle("90°")).toMatchObject([{ verdict: "pass" }]);
    expect(angle("89.9°")).toMatchObject([{ verdict: "watch", code: "door opens too little" }]);
    expect(angle("89.9°")[0]?.says).toContain("89°");
    const { swing, ...unstated } = door("D1", 2, inward);
    expect(swing).toBe(inward);
    expect(found(withItems([], { openings: [unstated] }), "swings")).toMatchObject([{ verdict: "note", code: "swing not stated" }]);
  });

  test("two leaves that sweep the same floor are watched", () => {
    const pair = (apart: number) => found(withItems([], { openings: [door("D1", 2, { hinge: "left", opens: "in" }), door("D2", 2.9 + apart, { hinge: "right", opens: "in" })] }), "swings");
    expect(pair(0.3)).toMatchObject([{ verdict: "pass", facts: { count: 2 } }]);
    // Leaves hinged at the far jambs of neighbouring doors fold away from each other; hinged at the near ones they meet.
    const near = found(withItems([], { openings: [door("D1", 2, { hinge: "right", opens: "in" }), door("D2", 3.2, { hinge: "left", opens: "in", angle: "170°" })] }), "swings");
    expect(near.map(({ code }) => code)).toContain("swings cross");
  });

  test("a leaf that meets a partition or runs into a wall is stopped", () => {
    const studs = [stud("P1", 0.5, { from: 0, to: 2.2 }, { from: -0.0318, to: 0.0318 })];
    const near = found(withItems([], { ...partitionAt(mm(2 + toItem + 0.2)), openings: [door("D1", 2, inward)] }, studs), "swings");
    expect(near).toMatchObject([{ verdict: "stop", code: "swing hits partition" }]);
    const wide = found(withItems([], { openings: [door("D1", 0.1, { hinge: "left", opens: "in", angle: "150°" })] }), "swings");
    expect(wide).toMatchObject([{ verdict: "stop", code: "swing hits wall", facts: { wall: "blind end" } }]);
    const outward = found(withItems([], { openings: [door("D1", 0.1, { hinge: "left", opens: "out", angle: "180°" })] }), "swings");
    expect(outward).toMatchObject([{ verdict: "pass" }]);
    const along = found(withItems([], { openings: [door("D1", 2, { hinge: "left", opens: "in", angle: "180°" })] }), "swings");
    expect(along).toMatchObject([{ verdict: "pass" }]);
  });
});

describe("swings toward the wall across", () => {
  test("a leaf needs a lobby as deep as it is wide, exactly", () => {
    const door = { id: "D1", kind: "personnel door", face: "P1", at: { along: "700 mm", up: "0 mm" }, size: { width: "900 mm", height: "2000 mm" }, swing: { hinge: "left", opens: "out" } };
    const lobby = (depth: number) => {
      const end = bare.surfaces.find(({ id }) => id === "doorEnd")!;
      const floor = bare.surfaces.find(({ id }) => id === "floor")!;
      const near = -handBuild((file) => void Object.assign(file, partitionAt("2 m"))).surfaces.find(({ id }) => id === "P1")!.stack.finished;
      const at = end.origin.x - end.stack.finished - depth - near - floor.origin.x;
      return found(withItems([], { ...partitionAt(mm(at)), openings: [door] }), "swings");
    };
    expect(lobby(0.9)).toMatchObject([{ verdict: "pass" }]);
    expect(lobby(0.899)).toMatchObject([{ verdict: "stop", code: "swing hits wall", facts: { opening: "D1", wall: "door end" } }]);
    expect(lobby(0.899)[0]?.facts["over"]).toBeCloseTo(0.001, 9);
  });
});

describe("items and articles", () => {
  // A fan of the test's own, 300 mm deep into the room over 400 x 400 mm.
  const fan: HandPart = { id: "fan", surface: "left", role: "article", rect: { u0: 2, u1: 2.4, v0: 0.5, v1: 0.9 }, depth: { from: -0.04, to: 0.3 } };
  const along = 2 + bare.surfaces.find(({ id }) => id === "left")!.origin.x - bare.surfaces.find(({ id }) => id === "floor")!.origin.x;

  test("an item may touch an article but not stand in it, along each axis", () => {
    const at = (u: number, v: number, up = 0) => only(withItems([item("A", u, v, { at: { along: mm(u), across: mm(v), up: mm(up) } })], {}, [fan]), "items-and-articles");
    const floor = bare.surfaces.find(({ id }) => id === "floor")!.stack.finished;
    expect(at(along, 0.3)).toMatchObject({ verdict: "pass", facts: { item: "A", article: "fan" } });
    expect(at(along, 0.299)).toMatchObject({ verdict: "stop", about: ["A", "fan"] });
    expect(at(along, 0.299).facts["over"]).toBeCloseTo(0.001, 9);
    expect(at(along - 0.6, 0.1).verdict).toBe("pass");
    expect(at(along - 0.599, 0.1).verdict).toBe("stop");
    expect(at(along, 0.1, 0.9 - floor).verdict).toBe("pass");
    expect(at(along, 0.1, 0.899 - floor).verdict).toBe("stop");
  });

  test("no article, nothing said", () => {
    expect(found(withItems([item("A", 2, 0.5)]), "items-and-articles")).toEqual([]);
  });
});

test("room sizes are told, and too low a ceiling is watched", () => {
  const size = only(bare, "room-sizes/R1");
  expect(size).toMatchObject({ verdict: "pass", code: "room size" });
  expect(size.facts["width"]).toBeCloseTo(2.352 - 2 * left, 9);
  const low = only(handBuild((file) => void Object.assign(file, { box: { row: "20-standard", condition: "new" }, floor: { layers: Array(4).fill({ row: "plywood-3-4" }) }, buildUps: { ...(file["buildUps"] as object), ceiling: { what: "deep", boards: [], foam: { row: "foam-closed-cell-2lb", thickness: "230 mm" } } } })), "room-sizes/R1");
  expect(low).toMatchObject({ verdict: "watch", code: "room too low", facts: { least: LEAST_HEADROOM.value } });
});

test("a room may be as low as the least height, exactly", () => {
  const height = Number(only(bare, "room-sizes/R1").facts["height"]);
  const lowered = (by: number) => {
    const build = handBuild((file) => {
      const buildUps = file["buildUps"] as Record<string, JobFile>;
      const studs = buildUps["ceiling"]!["studs"] as JobFile;
      buildUps["ceiling"] = { ...buildUps["ceiling"], studs: { ...studs, standOff: mm(0.0127 + by) } };
    });
    return only(build, "room-sizes/R1").verdict;
  };
  expect(lowered(height - LEAST_HEADROOM.value)).toBe("pass");
  expect(lowered(height - LEAST_HEADROOM.value + 0.001)).toBe("watch");
});
