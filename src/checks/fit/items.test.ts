import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { checkWorking } from "../../../test/checkWorking.ts";
import { type HandPart, handBuild, type JobFile, partitionAt, stud } from "../../../test/handBuilt.ts";
import type { Build } from "../../build/build.ts";
import type { Finding } from "../check.ts";
import { FREE_BEFORE_AIR, LEAST_HEADROOM } from "../limits.ts";
import { fit } from "./fit.ts";

const mm = (metres: number): string => `${(metres * 1000).toFixed(6)} mm`;
/** An item 600 x 600 x 900 mm. */
const item = (id: string, along: number, across: number, more: JobFile = {}): JobFile => ({
  id,
  what: `Item ${id}`,
  size: { length: "600 mm", width: "600 mm", height: "900 mm" },
  mass: "50 kg",
  at: { along: mm(along), across: mm(across) },
  ...more,
});
const room = (file: JobFile, items: readonly JobFile[], more: JobFile = {}): void => void Object.assign(file, { items, ...more });
const withItems = (items: readonly JobFile[], more: JobFile = {}, parts: readonly HandPart[] = []): Build => handBuild((file) => room(file, items, more), parts);
const found = (build: Build, rule: string): readonly Finding[] => {
  const findings = fit.run(build).filter(({ id }) => id === `fit/${rule}` || id.startsWith(`fit/${rule}/`));
  for (const { working, comparison } of findings) checkWorking([...working, ...(comparison === undefined ? [] : [comparison.left, comparison.right])]);
  return findings;
};
const only = (build: Build, rule: string): Finding => {
  const findings = found(build, rule);
  expect(findings).toHaveLength(1);
  return findings[0]!;
};
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

  test("an item outside the box is a note, not a pass", () => {
    expect(only(withItems([item("A", 2, -1.2)]), "items-in-rooms")).toMatchObject({ verdict: "note", code: "item on the outside" });
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
  });
});

describe("before openings", () => {
  const fan = { id: "FN1", kind: "fan", face: "left", at: { along: "2 m", up: "500 mm" }, size: { width: "400 mm", height: "400 mm" } };

  test("a fan wants its free depth, exactly; aside of it nothing is said", () => {
    const before = (off: number) => only(withItems([item("A", 2, left + off)], { openings: [fan] }), "before-openings");
    expect(before(FREE_BEFORE_AIR.value).verdict).toBe("pass");
    expect(before(FREE_BEFORE_AIR.value - 0.001)).toMatchObject({ verdict: "watch", facts: { item: "A", opening: "FN1" } });
    expect(only(withItems([item("A", 3.5, left)], { openings: [fan] }), "before-openings").code).toBe("openings free");
  });
});

describe("bringing in", () => {
  const door = (width: string) => ({ id: "D1", kind: "personnel door", face: "left", at: { along: "2 m", up: "0 mm" }, size: { width, height: "2000 mm" } });

  test("smallest two sizes against the door, exactly", () => {
    const through = (size: string) => only(withItems([item("A", 2, 0.5)], { openings: [door(size)] }), "bring-in").verdict;
    expect(through("600 mm")).toBe("pass");
    expect(through("599 mm")).toBe("watch");
  });

  test("no door at all is watched; working cargo doors without a wall behind let it in", () => {
    expect(only(withItems([item("A", 2, 0.5)]), "bring-in").code).toBe("item cannot be brought in");
    const faces = { left: {}, right: {}, blindEnd: {}, doorEnd: { cargoDoors: "working" }, roof: {} };
    expect(only(withItems([item("A", 2, 0.5)], { faces }), "bring-in").facts["opening"]).toBe("the cargo doors");
  });

  test("a room behind a partition is reached through the partition's door", () => {
    const behind = (openings: readonly JobFile[]) => only(withItems([item("A", 0.5, 0.5)], { ...partitionAt("1.5 m"), openings }), "bring-in");
    const inner = { id: "D2", kind: "personnel door", face: "P1", at: { along: "500 mm", up: "0 mm" }, size: { width: "700 mm", height: "2000 mm" } };
    expect(behind([door("900 mm")]).verdict).toBe("watch");
    expect(behind([door("900 mm"), inner])).toMatchObject({ verdict: "pass", facts: { opening: "D2" } });
    expect(behind([door("900 mm"), inner]).facts["spare"]).toBeCloseTo(0.1, 9);
  });
});

test("room sizes are told, and too low a ceiling is watched", () => {
  const size = only(bare, "room-sizes/R1");
  expect(size).toMatchObject({ verdict: "pass", code: "room size" });
  expect(size.facts["width"]).toBeCloseTo(2.352 - 2 * left, 9);
  const low = only(handBuild((file) => void Object.assign(file, { box: { row: "20-standard", condition: "new" }, floor: { layers: Array(4).fill({ row: "plywood-3-4" }) }, buildUps: { ...(file["buildUps"] as object), ceiling: { what: "deep", boards: [], foam: { row: "foam-closed-cell-2lb", thickness: "230 mm" } } } })), "room-sizes/R1");
  expect(low).toMatchObject({ verdict: "watch", code: "room too low", facts: { least: LEAST_HEADROOM.value } });
});
