import { describe, expect, test } from "vitest";
import { checkWorking } from "../../test/checkWorking.ts";
import { demoBuilds } from "../../test/demoBuilds.ts";
import { clearSizeWorking, partSizeWorking } from "./sizes.ts";

describe.each(demoBuilds())("sizes of $name", ({ build }) => {
  test("the clear size worked out from the layers is that between the rooms' finished faces", () => {
    const { rooms } = build;
    const span = (axis: "x" | "y" | "z"): number => Math.max(...rooms.map((room) => room[axis].to)) - Math.min(...rooms.map((room) => room[axis].from));
    const working = clearSizeWorking(build);
    working.forEach(({ value }, at) => expect(value).toBeCloseTo(span((["x", "y", "z"] as const)[at]!), 9));
    expect(checkWorking(working)).toBe(9);
  });

  test("a part's size is that of its place", () => {
    for (const part of build.parts.slice(0, 50)) {
      const { rect, depth } = part;
      expect(partSizeWorking(part).map(({ value }) => value)).toEqual([rect.u1 - rect.u0, rect.v1 - rect.v0, depth.to - depth.from]);
    }
  });
});
