import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { holdOf, frameEdges } from "./sectionFrame.ts";
import { boundsOf } from "./geometry/measure.ts";
import { eyeOf, orbited, panned, pictured, placeOnAxis, poseFrom, rayThrough, VIEWS, zoomed, type Pose, type Triple, type ViewName } from "./pose.ts";

const SEED = { seed: 20_261_125, numRuns: 200 };
const BOX = { from: [0, 0, -0.17], to: [6.058, 2.438, 2.726] } as const;
const coordinate = fc.double({ min: -5, max: 5, noNaN: true });
const poses = fc.record({
  target: fc.tuple(coordinate, coordinate, coordinate),
  distance: fc.double({ min: 1, max: 40, noNaN: true }),
  turn: fc.double({ min: -7, max: 7, noNaN: true }),
  tilt: fc.double({ min: -1.5, max: 1.5, noNaN: true }),
});
const inPicture = fc.double({ min: -1, max: 1, noNaN: true });

describe("a pose", () => {
  it("sees a point of a ray where the ray went through the picture", () => {
    fc.assert(
      fc.property(poses, inPicture, inPicture, fc.double({ min: 0.5, max: 30, noNaN: true }), (pose, x, y, far) => {
        const { from, toward } = rayThrough(pose, 1.6, x, y);
        const seen = pictured(pose, 1.6, [from[0] + toward[0] * far, from[1] + toward[1] * far, from[2] + toward[2] * far]);
        expect(seen?.x).toBeCloseTo(x, 9);
        expect(seen?.y).toBeCloseTo(y, 9);
      }),
      SEED,
    );
  });

  it("sees nothing behind the eye", () => {
    const pose: Pose = { target: [0, 0, 0], distance: 5, turn: 0, tilt: 0 };
    expect(pictured(pose, 1, [6, 0, 0])).toBeUndefined();
  });

  it("keeps its distance when turned, and its target in the middle", () => {
    fc.assert(
      fc.property(poses, coordinate, coordinate, (pose, right, up) => {
        const turned = orbited(pose, right, up);
        expect(distance(eyeOf(turned), turned.target)).toBeCloseTo(pose.distance, 9);
        expect(pictured(turned, 1, turned.target)?.x).toBeCloseTo(0, 9);
      }),
      SEED,
    );
  });

  it("moves the target by the share of the picture that it was panned", () => {
    fc.assert(
      fc.property(poses, inPicture, inPicture, (pose, right, up) => {
        const seen = pictured(panned(pose, right / 2, up / 2), 1, pose.target);
        expect(seen?.x).toBeCloseTo(-right, 9);
        expect(seen?.y).toBeCloseTo(-up, 9);
      }),
      SEED,
    );
  });

  it("zooms by the factor, within bounds", () => {
    const pose = poseFrom("corner", BOX, 1.5);
    expect(zoomed(pose, 0.5).distance).toBeCloseTo(pose.distance / 2, 12);
    expect(zoomed(pose, 1e-9).distance).toBeGreaterThan(0);
    expect(zoomed(pose, 1e9).distance).toBeLessThan(1000);
  });

  it.each(Object.keys(VIEWS) as ViewName[])("sees all of a box from %s, in wide and in narrow pictures", (view) => {
    for (const aspect of [0.5, 1, 2]) {
      const pose = poseFrom(view, BOX, aspect);
      for (const x of [0, 6.058]) for (const y of [0, 2.438]) for (const z of [-0.17, 2.726]) {
        const seen = pictured(pose, aspect, [x, y, z]);
        expect(Math.abs(seen?.x ?? NaN)).toBeLessThanOrEqual(1);
        expect(Math.abs(seen?.y ?? NaN)).toBeLessThanOrEqual(1);
      }
    }
  });

  // Left and right as for one who stands outside and faces the cargo doors; x runs toward the doors, y to the right.
  it("stands where its views say", () => {
    const eye = (view: ViewName): Triple => eyeOf(poseFrom(view, BOX, 1));
    expect(eye("doorEnd")[0]).toBeGreaterThan(BOX.to[0]);
    expect(eye("blindEnd")[0]).toBeLessThan(BOX.from[0]);
    expect(eye("left")[1]).toBeLessThan(BOX.from[1]);
    expect(eye("right")[1]).toBeGreaterThan(BOX.to[1]);
    expect(eye("above")[2]).toBeGreaterThan(BOX.to[2]);
    expect(eye("below")[2]).toBeLessThan(BOX.from[2]);
  });
});

describe("the hold of a section", () => {
  it("follows the pointer: a ray through a point of the axis finds that point", () => {
    fc.assert(
      fc.property(poses, fc.constantFrom(0, 1, 2), coordinate, coordinate, coordinate, (pose, axis, x, y, z) => {
        const on: Triple = [x, y, z];
        const start = [...on] as [number, number, number];
        start[axis] += 3;
        const seen = pictured(pose, 1.3, on);
        if (seen === undefined) return;
        const place = placeOnAxis(rayThrough(pose, 1.3, seen.x, seen.y), start, axis);
        if (place !== undefined) expect(place).toBeCloseTo(on[axis], 4);
      }),
      SEED,
    );
  });

  it("finds no place where the ray runs along the axis", () => {
    expect(placeOnAxis({ from: [0, 0, 0], toward: [1, 0, 0] }, [0, 1, 0], 0)).toBeUndefined();
  });

  it.each([0, 1, 2] as const)("lies on the frame of a section across axis %i, which lies in its plane around the build", (axis) => {
    const plane = { axis, at: 1.25, takes: 1 } as const;
    const { from, to } = boundsOf(frameEdges(BOX, plane));
    expect([from[axis], to[axis]]).toEqual([1.25, 1.25]);
    for (const other of [0, 1, 2] as const) {
      const hold = holdOf(BOX, plane)[other];
      expect(hold).toBeGreaterThanOrEqual(from[other]);
      expect(hold).toBeLessThanOrEqual(to[other]);
      if (other !== axis) expect(from[other] < BOX.from[other] && to[other] > BOX.to[other]).toBe(true);
    }
  });
});

function distance(a: Triple, b: Triple): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}
