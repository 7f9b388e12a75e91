import { describe, expect, it } from "vitest";
import { layerStackOf } from "./layerStack.ts";
import { drawStack } from "./stackShapes.ts";

const profile = { depth: 0.036, pitch: 0.278, innerFlat: 0.07, outerFlat: 0.072 };
const stack = layerStackOf({
  foam: { row: "foam-closed-cell-2lb", thickness: "50 mm" },
  studs: { row: "stud-2-1-2-33mil", track: "track-2-1-2-33mil", pitch: "400 mm" },
  boards: [{ row: "gypsum-1-2" }],
  paint: [{ row: "paint-latex", coats: 1 }, { row: "paint-latex", coats: 1 }],
});

describe("the drawing of a stack", () => {
  it("is to scale: one millimetre a unit, from the sheet's outer flat to the last coat", () => {
    const drawn = drawStack(stack, profile);
    const inside = (2.5 + 0.5) * 25.4;
    expect(drawn?.box).toEqual({ x: 0, y: expect.closeTo(-inside - 2 * 2 - 6, 6) as number, width: 560, height: expect.closeTo(inside + 4 + 6 + 36 + 6, 6) as number });
  });

  it("draws the sheet's flats and slopes by its profile", () => {
    expect(drawStack(stack, profile)?.sheet.startsWith("M0 36L72 36L140 0L210 0L278 36L350 36L418 0L488 0L556 36L560 36")).toBe(true);
    expect(drawStack(stack, undefined)?.sheet).toBe("M0 0L560 0");
  });

  it("draws each layer once, studs at their pitch", () => {
    const drawn = drawStack(stack, profile);
    expect(drawn?.layers.map(({ kind }) => kind)).toEqual(["foam", "studs", "board", "paint", "paint"]);
    expect(drawn?.layers[1]?.path.match(/M/g)).toHaveLength(2);
    expect(drawn?.layers[2]?.path).toBe("M0 -63.5H560V-76.2H0Z");
  });

  it("draws batts behind the studs, as thick as they are", () => {
    const batted = layerStackOf({ studs: { row: "stud-2-1-2-33mil", pitch: "400 mm" }, batts: { row: "batt-rock-1-1-2-16" } });
    expect(drawStack(batted, profile)?.layers.map(({ kind, path }) => [kind, path])[0]).toEqual(["batts", "M0 -25.4H560V-63.5H0Z"]);
  });

  it("draws nothing where a depth cannot be read", () => {
    expect(drawStack(layerStackOf({ studs: { row: "stud-2-1-2-33mil", standOff: "much" } }), profile)).toBeUndefined();
  });

  it("does not hang on a pitch of nothing", () => {
    const tight = layerStackOf({ studs: { row: "stud-2-1-2-33mil", pitch: "0 mm" } });
    expect(drawStack(tight, profile)?.layers[0]?.path.length).toBeLessThan(10_000);
  });
});
