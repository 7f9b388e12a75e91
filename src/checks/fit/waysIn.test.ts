import { describe, expect, test } from "vitest";
import { found, only } from "../../../test/fitFindings.ts";
import { handBuild, type JobFile, partitionAt } from "../../../test/handBuilt.ts";
import { item, mm, withItems } from "../../../test/handItems.ts";
import { inch } from "../../catalogue/imperial.ts";
import { FREE_BEFORE_AIR, FREE_BEFORE_DOOR } from "../limits.ts";

const bare = handBuild();
/** The finished left wall from its inside plane, as items are placed. */
const left = bare.surfaces.find(({ id }) => id === "left")!.stack.finished;

describe("before openings", () => {
  const fan = { id: "FN1", kind: "fan", face: "left", at: { along: "2 m", up: "500 mm" }, size: { width: "400 mm", height: "400 mm" } };

  test("a fan wants its free depth, exactly; aside of it nothing is said", () => {
    const before = (off: number) => only(withItems([item("A", 2, left + off)], { openings: [fan] }), "before-openings");
    expect(before(FREE_BEFORE_AIR.value).verdict).toBe("pass");
    expect(before(FREE_BEFORE_AIR.value - 0.001)).toMatchObject({ verdict: "watch", facts: { item: "A", opening: "FN1" } });
    expect(only(withItems([item("A", 3.5, left)], { openings: [fan] }), "before-openings").code).toBe("openings free");
  });

  test("what stands outside before it is no concern", () => {
    expect(only(withItems([item("A", 2, -1.2)], { openings: [fan] }), "before-openings").code).toBe("openings free");
  });

  test("a door in a partition wants it on both sides, exactly, from the finished face of that side", () => {
    const door = { id: "D1", kind: "personnel door", face: "P1", at: { along: "700 mm", up: "0 mm" }, size: { width: "900 mm", height: "2000 mm" } };
    const file = { ...partitionAt("2.5 m"), openings: [door] };
    const { stack, farStack } = handBuild((job) => void Object.assign(job, file)).surfaces.find(({ id }) => id === "P1")!;
    const at = (along: number) => only(withItems([item("A", along, 0.9)], file), "before-openings");
    const towardDoors = 2.5 - stack.finished + FREE_BEFORE_DOOR.value;
    expect(at(towardDoors)).toMatchObject({ verdict: "pass", code: "openings free beyond" });
    expect(at(towardDoors - 0.001)).toMatchObject({ verdict: "watch", code: "item before opening" });
    const towardBlind = 2.5 - farStack!.finished - FREE_BEFORE_DOOR.value - 0.6;
    expect(at(towardBlind)).toMatchObject({ verdict: "pass", code: "openings free beyond" });
    expect(at(towardBlind + 0.001)).toMatchObject({ verdict: "watch", code: "item before opening" });
  });

  test("an item that reaches into the opening is said to stand in it, never a distance below nothing before it", () => {
    expect(only(withItems([item("A", 2, left - 0.02)], { openings: [fan] }), "before-openings").says).toContain("stands right in FN1");
  });
});

describe("bringing in", () => {
  const door = (width: string) => ({ id: "D1", kind: "personnel door", face: "left", at: { along: "2 m", up: "0 mm" }, size: { width, height: "2000 mm" } });

  test("smallest two sizes against the door, exactly", () => {
    const through = (size: string) => only(withItems([item("A", 2, 0.5)], { openings: [door(size)] }), "bring-in").verdict;
    expect(through("600 mm")).toBe("pass");
    expect(through("599 mm")).toBe("watch");
  });

  // The leaf of this door is 36 x 80 in in a hole of about 40 x 82 in (the catalogue's demo row).
  test("a door with leaves lets through what its leaf leaves, not the hole around its frame", () => {
    const article = { id: "D1", kind: "personnel door", face: "left", at: { along: "2 m", up: "0 mm" }, article: "door-steel-36x80" };
    const through = (height: number, width = 0.5) => only(withItems([item("A", 2, 0.5, { size: { length: "2100 mm", width: `${width} m`, height: `${height} m` } })], { openings: [article] }), "bring-in");
    expect(through(80 * inch - 1e-4)).toMatchObject({ verdict: "pass" });
    expect(through(80 * inch - 0.01).facts["spare"]).toBeCloseTo(0.01, 9);
    expect(through(80 * inch + 0.001).verdict).toBe("watch");
    expect(through(36 * inch, 36 * inch + 0.001).verdict).toBe("pass");
    expect(through(37 * inch, 36 * inch + 0.001).verdict).toBe("watch");
    const pair = { ...article, article: "door-steel-72x84" };
    const throughPair = (width: number) => only(withItems([item("A", 2, 0.5, { size: { length: "2.2 m", width: mm(width), height: "2.1 m" } })], { openings: [pair] }), "bring-in");
    expect(throughPair(72 * inch).verdict).toBe("pass");
    expect(throughPair(72 * inch + 0.001).verdict).toBe("watch");
  });

  test("an item outside the box is not brought in", () => {
    expect(found(withItems([item("A", 2, -1.2)]), "bring-in")).toEqual([]);
  });

  test("no door at all is watched; working cargo doors without a wall behind let it in", () => {
    expect(only(withItems([item("A", 2, 0.5)]), "bring-in").code).toBe("item cannot be brought in");
    const faces = { left: {}, right: {}, blindEnd: {}, doorEnd: { cargoDoors: "working" }, roof: {} };
    expect(only(withItems([item("A", 2, 0.5)], { faces }), "bring-in").facts["opening"]).toBe("the cargo doors");
    const walled = { ...faces, doorEnd: { cargoDoors: "working", buildUp: "wall" } };
    expect(only(withItems([item("A", 2, 0.5)], { faces: walled }), "bring-in").code).toBe("item cannot be brought in");
    expect(only(withItems([item("A", 2, 0.5)], { faces: { ...faces, doorEnd: { cargoDoors: "fixed shut" } } }), "bring-in").verdict).toBe("watch");
  });

  test("a room behind a partition is reached through the partition's door", () => {
    const behind = (openings: readonly JobFile[]) => only(withItems([item("A", 0.5, 0.5)], { ...partitionAt("1.5 m"), openings }), "bring-in");
    const inner = { id: "D2", kind: "personnel door", face: "P1", at: { along: "500 mm", up: "0 mm" }, size: { width: "700 mm", height: "2000 mm" } };
    expect(behind([door("900 mm")]).verdict).toBe("watch");
    expect(behind([door("900 mm"), inner])).toMatchObject({ verdict: "pass", facts: { opening: "D2" } });
    expect(behind([door("900 mm"), inner]).facts["spare"]).toBeCloseTo(0.1, 9);
  });
});
