import { describe, expect, it } from "vitest";
import { DEMO_JOBS } from "../../../test/demoJobs.ts";
import { makeScreenRiver, type Vec3 } from "../../river/screen.ts";
import { fromSheet, GAP, outline, partitionPlacements, sheetBounds, toSheet, unfold, type Placement } from "./unfold.ts";

const SCREENS = DEMO_JOBS.map(({ name, job, book }) => ({ name, screen: makeScreenRiver().run(job, book) }));
const CASES = SCREENS.map(({ name, screen }) => {
  const faces = unfold(screen.build.surfaces);
  const beside = screen.build.surfaces.filter(({ kind }) => kind === "partition").flatMap((one) => partitionPlacements(faces, one));
  return { name, faces, beside, screen };
});

describe.each(CASES)("the unfolded box of $name", ({ faces, beside }) => {
  it("has the six faces, each once", () => {
    expect(faces.map(({ key }) => key)).toEqual(["floor", "left", "blindEnd", "right", "doorEnd", "roof"]);
  });

  it("keeps every length and every right angle", () => {
    for (const placement of [...faces, ...beside]) {
      const a = toSheet(placement, { u: 0.3, v: 0.7 });
      const b = toSheet(placement, { u: 1.5, v: 2.3 });
      expect(Math.hypot(b.x - a.x, b.y - a.y)).toBeCloseTo(2, 12);
      expect(placement.u.x * placement.v.x + placement.u.y * placement.v.y).toBeCloseTo(0, 12);
    }
  });

  it("leads back from the sheet to the face", () => {
    for (const placement of [...faces, ...beside]) {
      const { u, v } = fromSheet(placement, toSheet(placement, { u: 1.234, v: -0.5 }));
      expect(u).toBeCloseTo(1.234, 12);
      expect(v).toBeCloseTo(-0.5, 12);
    }
  });

  // One who looks at a face has right × up pointing back at him: into the room, for one who stands inside (right-hand rule).
  it("shows every face from the room", () => {
    for (const placement of faces) expect(dot(toViewer(placement), placement.surface.inward)).toBeCloseTo(1, 12);
    for (const placement of beside) {
      const inward = placement.side === "blind side" ? 1 : -1;
      expect(dot(toViewer(placement), placement.surface.inward)).toBeCloseTo(inward, 12);
    }
  });

  it("folds walls down from the floor and the roof from the right wall, along one line", () => {
    const find = (key: string): Placement => faces.find((one) => one.key === key) as Placement;
    const [floor, left, right, blind, door, roof] = ["floor", "left", "right", "blindEnd", "doorEnd", "roof"].map((key) => outline(find(key)));
    for (const one of [left, right, roof]) {
      expect(one?.x0).toBeCloseTo(floor?.x0 as number, 9);
      expect(one?.x1).toBeCloseTo(floor?.x1 as number, 9);
    }
    for (const one of [blind, door]) {
      expect(one?.y0).toBeCloseTo(floor?.y0 as number, 9);
      expect(one?.y1).toBeCloseTo(floor?.y1 as number, 9);
    }
    expect((left?.y0 as number) - (floor?.y1 as number)).toBeCloseTo(GAP, 9);
    expect((floor?.y0 as number) - (right?.y1 as number)).toBeCloseTo(GAP, 9);
    expect((right?.y0 as number) - (roof?.y1 as number)).toBeCloseTo(GAP, 9);
    // The foot of a folded wall lies at the floor: down the sheet for left, up for right.
    expect(toSheet(find("left"), { u: 0, v: 1 }).y).toBeGreaterThan(toSheet(find("left"), { u: 0, v: 0 }).y);
    expect(toSheet(find("right"), { u: 0, v: 1 }).y).toBeLessThan(toSheet(find("right"), { u: 0, v: 0 }).y);
  });

  it("lays no face over another", () => {
    const all = [...faces, ...beside.slice(0, 2)].map(outline);
    for (const [i, a] of all.entries()) {
      for (const b of all.slice(i + 1)) {
        const apart = a.x1 <= b.x0 + 1e-9 || b.x1 <= a.x0 + 1e-9 || a.y1 <= b.y0 + 1e-9 || b.y1 <= a.y0 + 1e-9;
        expect(apart).toBe(true);
      }
    }
    const bounds = sheetBounds([...faces, ...beside]);
    expect(all.every(({ x0, y1 }) => x0 >= bounds.x0 && y1 <= bounds.y1)).toBe(true);
  });
});

/** The world's direction that looks out of the sheet: right of the sheet × up the sheet. */
function toViewer({ u, v, surface }: Placement): Vec3 {
  const inWorld = (x: number, y: number): Vec3 => {
    const a = x * u.x + y * u.y;
    const b = x * v.x + y * v.y;
    const { along, up } = surface;
    return { x: along.x * a + up.x * b, y: along.y * a + up.y * b, z: along.z * a + up.z * b };
  };
  const right = inWorld(1, 0);
  const top = inWorld(0, -1);
  return { x: right.y * top.z - right.z * top.y, y: right.z * top.x - right.x * top.z, z: right.x * top.y - right.y * top.x };
}

function dot(a: Vec3, b: Vec3): number {
  return a.x * b.x + a.y * b.y + a.z * b.z;
}
