import polygonClipping, { type Pair, type Polygon as ClipPolygon } from "polygon-clipping";
import type { Rect } from "./rect.ts";
import { overlaps, rectArea } from "./rect.ts";
import { NO_AREA } from "./tolerance.ts";
import type { Vec2 } from "./vector.ts";

/** A closed outline (counter-clockwise, first point not repeated) with holes (clockwise), metres. */
export interface Polygon {
  readonly outer: readonly Vec2[];
  readonly holes: readonly (readonly Vec2[])[];
}

export function rectPolygon(r: Rect): Polygon {
  return {
    outer: [
      { x: r.u0, y: r.v0 },
      { x: r.u1, y: r.v0 },
      { x: r.u1, y: r.v1 },
      { x: r.u0, y: r.v1 },
    ],
    holes: [],
  };
}

/** A rectangle with rectangles taken out of it; pieces without area are dropped. */
export function cutRects(r: Rect, cuts: readonly Rect[]): readonly Polygon[] {
  const reaching = cuts.filter((cut) => overlaps(r, cut));
  if (reaching.length === 0) return [rectPolygon(r)];
  return polygonClipping
    .difference([ringOf(r)], ...reaching.map((cut): ClipPolygon => [ringOf(cut)]))
    .map(fromRings)
    .filter((polygon) => polygonArea(polygon) > NO_AREA);
}

/** Area inside the outline less the holes, square metres. */
export function polygonArea(polygon: Polygon): number {
  return polygon.holes.reduce((area, hole) => area - Math.abs(signedArea(hole)), Math.abs(signedArea(polygon.outer)));
}

/** Centre of area. Throws RangeError where the polygon has no area. */
export function polygonCentre(polygon: Polygon): Vec2 {
  let area = 0;
  let x = 0;
  let y = 0;
  for (const ring of [polygon.outer, ...polygon.holes]) {
    for (const [a, b] of edgesOf(ring)) {
      const cross = a.x * b.y - b.x * a.y;
      area += cross / 2;
      x += ((a.x + b.x) * cross) / 6;
      y += ((a.y + b.y) * cross) / 6;
    }
  }
  if (Math.abs(area) < NO_AREA) throw new RangeError("a polygon without area has no centre");
  return { x: x / area, y: y / area };
}

/** Smallest rectangle around a polygon. */
export function polygonBounds(polygon: Polygon): Rect {
  const xs = polygon.outer.map((p) => p.x);
  const ys = polygon.outer.map((p) => p.y);
  return { u0: Math.min(...xs), u1: Math.max(...xs), v0: Math.min(...ys), v1: Math.max(...ys) };
}

/** The edges of a ring in order, the closing edge last. */
export function edgesOf(ring: readonly Vec2[]): readonly (readonly [Vec2, Vec2])[] {
  return ring.map((from, index) => [from, ring[(index + 1) % ring.length] as Vec2] as const);
}

/** True where a point lies inside an odd number of rings. */
export function isInRings(rings: readonly (readonly Vec2[])[], { x, y }: Vec2): boolean {
  let isInside = false;
  for (const ring of rings) {
    for (const [a, b] of edgesOf(ring)) {
      if (a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)) isInside = !isInside;
    }
  }
  return isInside;
}

/** True where the polygon is its own bounding rectangle. */
export function isRect(polygon: Polygon): boolean {
  return polygon.holes.length === 0 && Math.abs(rectArea(polygonBounds(polygon)) - polygonArea(polygon)) < NO_AREA;
}

function signedArea(ring: readonly Vec2[]): number {
  return edgesOf(ring).reduce((sum, [a, b]) => sum + (a.x * b.y - b.x * a.y) / 2, 0);
}

function ringOf(r: Rect): Pair[] {
  return [
    [r.u0, r.v0],
    [r.u1, r.v0],
    [r.u1, r.v1],
    [r.u0, r.v1],
  ];
}

function fromRings(rings: ClipPolygon): Polygon {
  const [outer, ...holes] = rings.map((ring) => ring.slice(0, -1).map(([x, y]) => ({ x, y })));
  if (outer === undefined) throw new RangeError("a polygon needs an outline");
  return { outer, holes };
}
