import { describe, expect, it } from "vitest";
import { DEMO_JOBS } from "../../../../test/demoJobs.ts";
import { makeScreenRiver, type Part, type Surface } from "../../../river/screen.ts";
import { cutFace } from "./section.ts";
import { areaOf, boundsOf, crossAt, volumeOf } from "./measure.ts";
import { partForm } from "./partForm.ts";

const CASES = DEMO_JOBS.map(({ name, job, book }) => {
  const { build } = makeScreenRiver().run(job, book);
  const formed = build.parts.flatMap((part) => {
    const surface = build.surfaces.find(({ id }) => id === part.surface) as Surface;
    const form = partForm(part, surface);
    return form === undefined ? [] : [{ part, surface, form }];
  });
  return { name, build, formed };
});

describe.each(CASES)("the forms of $name", ({ build, formed }) => {
  it("leaves out only coats, the rest of the box and what comes off again", () => {
    const has = new Set(formed.map(({ part }) => part.id));
    const without = build.parts.filter(({ id }) => !has.has(id));
    for (const { role, temporary } of without) expect(role === "coating" || role === "rest of the box" || temporary).toBe(true);
  });

  // A closed thing has no resultant of its outward areas (Gauss).
  it("closes every form", () => {
    for (const { part, form } of formed) {
      const sum = [0, 0, 0];
      for (let at = 0; at < form.triangles.length; at += 9) crossAt(form.triangles, at).forEach((one, k) => (sum[k] = (sum[k] as number) + one));
      expect(Math.hypot(...sum), part.id).toBeLessThan(1e-9);
    }
  });

  it("gives every form the volume of its shape, facing outward", () => {
    for (const { part, surface, form } of formed) expect(volumeOf(form.triangles), part.id).toBeCloseTo(volumeByHand(part, surface), 9);
  });

  it("keeps every form within its part's extent", () => {
    for (const { part, surface, form } of formed) {
      const { from, to } = boundsOf(form.triangles);
      const { rect, depth } = part;
      const sizes = [surface.along, surface.up, surface.inward].map(({ x, y, z }) => Math.abs(x) * (to[0] - from[0]) + Math.abs(y) * (to[1] - from[1]) + Math.abs(z) * (to[2] - from[2]));
      expect(sizes[0], part.id).toBeLessThanOrEqual(rect.u1 - rect.u0 + 1e-9);
      expect(sizes[1], part.id).toBeLessThanOrEqual(rect.v1 - rect.v0 + 1e-9);
      expect(sizes[2], part.id).toBeLessThanOrEqual(depth.to - depth.from + 1e-9);
    }
  });

  it("lays each sheet's side out to its developed area", () => {
    const sheets = formed.filter(({ part }) => part.shape.kind === "sheet");
    expect(sheets).toHaveLength(4);
    for (const { part, surface, form } of sheets) {
      if (part.shape.kind !== "sheet") continue;
      const { inward } = surface;
      let inner = 0;
      let outer = 0;
      for (let at = 0; at < form.triangles.length; at += 9) {
        const [x, y, z] = crossAt(form.triangles, at);
        const toRoom = x * inward.x + y * inward.y + z * inward.z;
        const area = Math.hypot(x, y, z) / 2;
        if (toRoom > 1e-15) inner += area;
        if (toRoom < -1e-15) outer += area;
      }
      expect(Math.abs(inner - part.shape.developed), part.id).toBeLessThan(1e-9);
      expect(Math.abs(outer - part.shape.developed), part.id).toBeLessThan(1e-9);
    }
  });

  it("gives each panel its area on both sides, and its thickness around every edge", () => {
    for (const { part, form } of formed) {
      if (part.shape.kind !== "panel") continue;
      const around = part.shape.outline.flatMap(({ outer, holes }) => [outer, ...holes]).reduce((sum, ring) => sum + lengthOf(ring), 0);
      const depth = part.depth.to - part.depth.from;
      expect(areaOf(form.triangles), part.id).toBeCloseTo(2 * part.shape.area + around * depth, 9);
    }
  });

  // Cavalieri: the faces that planes at many places cut add up to the volume, exactly where the form is a prism along that axis.
  it("cuts bars and blocks to their section at any place", () => {
    for (const { part, form } of formed) {
      if (part.shape.kind !== "bar" && part.shape.kind !== "block") continue;
      const { from, to } = boundsOf(form.triangles);
      for (const axis of [0, 1, 2] as const) {
        const at = from[axis] + 0.37 * (to[axis] - from[axis]);
        const { fill } = cutFace(form.triangles, { axis, at, takes: 1 });
        expect(areaOf(fill), part.id).toBeCloseTo(volumeOf(form.triangles) / (to[axis] - from[axis]), 9);
      }
    }
  });

  it("cuts sheets level into their thickness along the wave, and faces the cut to what is taken", () => {
    for (const { part, surface, form } of formed) {
      if (part.shape.kind !== "sheet" || surface.inward.z !== 0 || surface.profile === undefined) continue;
      const top = surface.panel.v1 - 0.01;
      const { fill } = cutFace(form.triangles, { axis: 2, at: top, takes: 1 });
      expect(areaOf(fill), part.id).toBeCloseTo((surface.panel.u1 - surface.panel.u0) * surface.profile.thickness, 9);
      for (let at = 0; at < fill.length; at += 9) expect(crossAt(fill, at)[2]).toBeGreaterThanOrEqual(0);
      const under = cutFace(form.triangles, { axis: 2, at: top, takes: -1 }).fill;
      for (let at = 0; at < under.length; at += 9) expect(crossAt(under, at)[2]).toBeLessThanOrEqual(0);
    }
  });

  it("cuts every form closed wherever a plane goes", () => {
    for (const { part, form } of formed) {
      const { from, to } = boundsOf(form.triangles);
      for (const axis of [0, 1, 2] as const) {
        const places = [0.21, 0.5, 0.83].map((share) => Math.round((from[axis] + share * (to[axis] - from[axis])) * 1000) / 1000);
        for (const at of places.filter((one) => one > from[axis] && one < to[axis])) {
          const { fill, edges } = cutFace(form.triangles, { axis, at, takes: 1 });
          // Green: the area within closed edges, by their own directions. Points within a thousandth of a millimetre are taken as one.
          expect(areaOf(fill), `${part.id} ${String(axis)} ${String(at)}`).toBeCloseTo(areaWithin(edges, axis), 6);
          expect(areaWithin(edges, axis)).toBeGreaterThan(0);
        }
      }
    }
  });
});

/** Volume by the part's own numbers: a sheet moved by its thickness sweeps its flat area times that. */
function volumeByHand({ shape, rect, depth }: Part, surface: Surface): number {
  const deep = depth.to - depth.from;
  switch (shape.kind) {
    case "panel":
      return shape.area * deep;
    case "sheet":
      return shape.area * (surface.profile?.thickness as number);
    case "fill":
      return shape.volume;
    case "bar":
    case "block":
    case "film":
      return (rect.u1 - rect.u0) * (rect.v1 - rect.v0) * deep;
  }
}

function lengthOf(ring: readonly { readonly x: number; readonly y: number }[]): number {
  return ring.reduce((sum, a, at) => {
    const b = ring[(at + 1) % ring.length] as { readonly x: number; readonly y: number };
    return sum + Math.hypot(b.x - a.x, b.y - a.y);
  }, 0);
}

function areaWithin(edges: Float64Array, axis: 0 | 1 | 2): number {
  const [p, q] = ([[1, 2], [2, 0], [0, 1]] as const)[axis];
  const at = (index: number): number => edges[index] as number;
  let area = 0;
  for (let k = 0; k < edges.length; k += 6) area += (at(k + p) * at(k + 3 + q) - at(k + 3 + p) * at(k + q)) / 2;
  return area;
}
