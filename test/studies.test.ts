// Studies in docs/studies: every figure is computed again, and every sentence that compares figures is held to them.
import { expect, test } from "vitest";
import { CASES, figuresOf, type WallFigures } from "./sideWallStudy.ts";
import { sideWallPage } from "./sideWallPage.ts";

const walls = CASES.map(figuresOf);
const at = (foam: number, standOff: number): WallFigures => walls.find((one) => one.foam === foam && one.standOff === standOff)!;

test("docs/studies/side-wall.md is current; write it again with: npx vitest run test/studies.test.ts -u", async () => {
  await expect(sideWallPage(walls)).toMatchFileSnapshot("../docs/studies/side-wall.md");
});

test("studs that touch the sheet take a wall below its foam's own resistance, and studs that stand off do not", () => {
  for (const { standOff, bridged, foamAlone } of walls.filter(({ foam }) => foam === 2)) {
    if (standOff === 0) expect(bridged).toBeLessThan(foamAlone);
    else expect(bridged).toBeGreaterThan(foamAlone);
  }
});

test("a stud on an inner flat is the worst place, the field the best, in every wall", () => {
  for (const { onInner, bridged, overOuter, field, plain, coldOnInner, coldOverOuter, coldField } of walls) {
    expect([...[onInner, bridged, overOuter, field]].sort((a, b) => a - b)).toEqual([onInner, bridged, overOuter, field]);
    expect(field).toBeGreaterThan(plain);
    expect(coldOnInner).toBeLessThan(coldOverOuter);
    expect(coldOverOuter).toBeLessThan(coldField);
  }
});

test("the first half inch off the sheet helps more than the second, in heat and in cold", () => {
  expect(at(2, 0.5).bridged - at(2, 0).bridged).toBeGreaterThan(at(2, 1).bridged - at(2, 0.5).bridged);
  expect(at(2, 1).bridged).toBeGreaterThan(at(2, 0.5).bridged);
  expect(at(2, 0.5).coldOnInner - at(2, 0).coldOnInner).toBeGreaterThan(at(2, 1).coldOnInner - at(2, 0.5).coldOnInner);
});

test("a third inch of foam between studs saves heat, yet their line gets colder", () => {
  expect(at(3, 0.5).bridged).toBeGreaterThan(at(2, 0.5).bridged);
  expect(at(3, 0.5).coldOnInner).toBeLessThan(at(2, 0.5).coldOnInner - 0.5);
});
