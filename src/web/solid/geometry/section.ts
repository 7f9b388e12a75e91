import type { Polygon, Vec2 } from "../../../river/screen.ts";
import { n } from "./measure.ts";
import { triangulate } from "./triangulate.ts";

/** A plane square to one axis of the world; what lies beyond it, on the side that it faces, is taken away. */
export interface CutPlane {
  readonly axis: 0 | 1 | 2;
  /** Metres from the world's origin. */
  readonly at: number;
  /** 1 where what has greater coordinates is taken away, -1 where what has smaller ones is. */
  readonly takes: 1 | -1;
}

/** Where a plane cuts a closed form: nine numbers a triangle that fills it, six an edge around it. */
export interface CutFace {
  readonly fill: Float64Array;
  readonly edges: Float64Array;
}

/** True where the plane takes a point away. */
export function isTaken(plane: CutPlane | undefined, point: readonly [number, number, number]): boolean {
  return plane !== undefined && (point[plane.axis] - plane.at) * plane.takes > 0;
}

/** The face that a plane cuts through closed triangles. */
export function cutFace(triangles: Float64Array, { axis, at, takes }: CutPlane): CutFace {
  const [p, q] = ACROSS[axis];
  const plane = at + ASIDE;
  const segments: Segment[] = [];
  for (let start = 0; start < triangles.length; start += 9) {
    const segment = cutTriangle(triangles, start, axis, plane);
    if (segment !== undefined) segments.push(segment);
  }
  const inSpace = ({ x, y }: Vec2): readonly number[] => {
    const point = [at, at, at];
    point[p] = x;
    point[q] = y;
    return point;
  };
  const fill = polygonsOf(loopsOf(segments.map(({ from, to }) => ({ from: flat(from, p, q), to: flat(to, p, q) })))).flatMap((polygon) =>
    triangulate(polygon).flatMap(([a, b, c]) => (takes === 1 ? [a, b, c] : [a, c, b]).flatMap(inSpace)),
  );
  return {
    fill: Float64Array.from(fill),
    edges: Float64Array.from(segments.flatMap(({ from, to }) => [...inSpace(flat(from, p, q)), ...inSpace(flat(to, p, q))])),
  };
}

type Point = readonly [number, number, number];

interface Segment {
  readonly from: Point;
  readonly to: Point;
}

interface FlatSegment {
  readonly from: Vec2;
  readonly to: Vec2;
}

/** The other two axes, so that the three are right-handed. */
const ACROSS = [[1, 2], [2, 0], [0, 1]] as const;

/** The plane is moved aside by less than any length in a job, so that it meets no corner: corners lie at round figures. */
const ASIDE = 6.18e-8;

/** Points nearer than this are one. */
const ONE_POINT = 1e-6;

function flat(point: Point, p: 0 | 1 | 2, q: 0 | 1 | 2): Vec2 {
  return { x: point[p], y: point[q] };
}

/** Where the plane goes in and out of a triangle, with the solid on the left as seen from the side of greater coordinates. */
function cutTriangle(t: Float64Array, start: number, axis: 0 | 1 | 2, plane: number): Segment | undefined {
  let into: Point | undefined;
  let out: Point | undefined;
  for (let corner = 0; corner < 3; corner += 1) {
    const a = start + corner * 3;
    const b = start + ((corner + 1) % 3) * 3;
    const above = n(t, a + axis) > plane;
    if (above === n(t, b + axis) > plane) continue;
    const met = above ? between(t, b, a, axis, plane) : between(t, a, b, axis, plane);
    if (above) into = met;
    else out = met;
  }
  return into === undefined || out === undefined ? undefined : { from: into, to: out };
}

/** Always reckoned from below the plane to above, so that triangles which share an edge get the very same point. */
function between(t: Float64Array, below: number, above: number, axis: 0 | 1 | 2, plane: number): Point {
  const share = (plane - n(t, below + axis)) / (n(t, above + axis) - n(t, below + axis));
  const at = (k: number): number => n(t, below + k) + share * (n(t, above + k) - n(t, below + k));
  return [at(0), at(1), at(2)];
}

/** Segments joined end to end; those that do not close are left out. */
function loopsOf(segments: readonly FlatSegment[]): readonly (readonly Vec2[])[] {
  const key = ({ x, y }: Vec2): string => `${String(Math.round(x / ONE_POINT))},${String(Math.round(y / ONE_POINT))}`;
  const leaving = new Map<string, Vec2[]>();
  for (const { from, to } of segments) {
    if (key(from) === key(to)) continue;
    const at = leaving.get(key(from));
    if (at === undefined) leaving.set(key(from), [to]);
    else at.push(to);
  }
  const loops: Vec2[][] = [];
  for (const [start, ends] of leaving) {
    while (ends.length > 0) {
      const loop: Vec2[] = [];
      let next = ends.pop();
      while (next !== undefined) {
        loop.push(next);
        next = key(next) === start ? undefined : leaving.get(key(next))?.pop();
      }
      const end = loop.at(-1);
      if (end !== undefined && key(end) === start && loop.length > 2) loops.push(loop);
    }
  }
  return loops;
}

/** Loops that run counter-clockwise with the clockwise ones that lie in them. */
function polygonsOf(loops: readonly (readonly Vec2[])[]): readonly Polygon[] {
  const [outer, holes] = [loops.filter((loop) => turn(loop) > 0), loops.filter((loop) => turn(loop) < 0)];
  return outer.map((ring) => ({ outer: ring, holes: outer.length === 1 ? holes : holes.filter((hole) => hole[0] !== undefined && within(ring, hole[0])) }));
}

/** Twice the area of a ring, above zero where it runs counter-clockwise. */
function turn(ring: readonly Vec2[]): number {
  return ring.reduce((sum, a, index) => {
    const b = ring[(index + 1) % ring.length] as Vec2;
    return sum + a.x * b.y - b.x * a.y;
  }, 0);
}

function within(ring: readonly Vec2[], { x, y }: Vec2): boolean {
  return ring.reduce((odd, a, index) => {
    const b = ring[(index + 1) % ring.length] as Vec2;
    return a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x) ? !odd : odd;
  }, false);
}
