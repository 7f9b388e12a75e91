import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { frameIn, inWindow, lieOf, toMetres, toPixels } from "./frame.ts";

const SEED = { seed: 20261125 };
const WINDOW = { u0: 0.1, u1: 0.5, v0: -0.2, v1: 0.3 };
const AXIS = { along: { x: 1, y: 0, z: 0 }, across: { x: 0, y: 1, z: 0 }, up: { x: 0, y: 0, z: 1 }, down: { x: 0, y: 0, z: -1 } };

describe("a section on the screen", () => {
  it.each([
    ["cut level, with the room above", AXIS.along, AXIS.across, { isTurned: false, isDown: false }],
    ["of a floor, whose y rises", AXIS.along, AXIS.up, { isTurned: false, isDown: false }],
    ["of a roof, whose y falls", AXIS.along, AXIS.down, { isTurned: false, isDown: true }],
    ["of a head, whose x rises", AXIS.up, AXIS.across, { isTurned: true, isDown: false }],
    ["of a sill, whose x falls", AXIS.down, AXIS.across, { isTurned: true, isDown: true }],
  ])("stands upright: %s", (_, x, y, lie) => {
    expect(lieOf({ x, y })).toEqual(lie);
    // Higher in the box is higher on the screen.
    const frame = frameIn(WINDOW, lie, 400, 400);
    const low = toPixels(frame, { x: 0.2, y: 0 });
    const rises = Math.abs(x.z) > 0 ? { x: 0.2 + 0.1 * x.z, y: 0 } : { x: 0.2, y: 0.1 * (y.z === 0 ? 1 : y.z) };
    expect(toPixels(frame, rises).y).toBeLessThan(low.y);
  });

  it("fits the room it is given and is never stretched", () => {
    const frame = frameIn(WINDOW, { isTurned: false, isDown: false }, 1000, 250);
    expect(frame).toMatchObject({ width: 200, height: 250, scale: 500 });
    expect(frameIn(WINDOW, { isTurned: true, isDown: false }, 1000, 250)).toMatchObject({ width: 313, height: 250, scale: 625 });
  });

  it("goes from metres to pixels and back", () => {
    const flag = fc.boolean();
    fc.assert(
      fc.property(flag, flag, fc.double({ min: 0.1, max: 0.5, noNaN: true }), fc.double({ min: -0.2, max: 0.3, noNaN: true }), (isTurned, isDown, x, y) => {
        const frame = frameIn(WINDOW, { isTurned, isDown }, 600, 400);
        const pixel = toPixels(frame, { x, y });
        expect(pixel.x).toBeGreaterThanOrEqual(-1e-9);
        expect(pixel.x).toBeLessThanOrEqual(frame.width + 0.5);
        expect(pixel.y).toBeLessThanOrEqual(frame.height + 0.5);
        const back = toMetres(frame, pixel);
        expect(back.x).toBeCloseTo(x, 12);
        expect(back.y).toBeCloseTo(y, 12);
      }),
      SEED,
    );
    expect(inWindow(WINDOW, { x: 9, y: -9 })).toEqual({ x: 0.5, y: -0.2 });
  });
});
