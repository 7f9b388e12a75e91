import type { Vec2 } from "../../../geometry/vector.ts";
import type { Field } from "../../../physics/conduction.ts";
import { type Fills, NOTHING } from "./fills.ts";

/** What is seen of a material or a sheet: a closed ring without its first point repeated, or an open line. */
export interface Outline {
  readonly what: string;
  readonly points: readonly Vec2[];
  readonly closed: boolean;
}

/**
 * Rings around all that is seen of each fill, those around its outside counter-clockwise and those around holes clockwise.
 * They follow the lines of the mesh, which lie on every edge of the section.
 */
export function ringsOf(fills: Fills, field: Field): readonly (readonly (readonly Vec2[])[])[] {
  return edgesAround(fills, field).map((next) => [...next.keys()].flatMap((start) => ringsFrom(start, next)).map((ring) => cornersOf(ring, field)));
}

/** For each fill its edges, from node to nodes, with the fill at their left. */
function edgesAround({ names, lower, upper }: Fills, { xs, ys, slope }: Field): readonly Map<number, number[]>[] {
  const next = names.map(() => new Map<number, number[]>());
  const [wide, tall, columns] = [xs.length - 1, ys.length - 1, xs.length];
  const add = (fill: number, from: number, to: number): void => {
    if (fill === NOTHING) return;
    const known = next[fill]?.get(from);
    if (known === undefined) next[fill]?.set(from, [to]);
    else known.push(to);
  };
  /** An edge with `left` at its left when walked from a to b. */
  const between = (left: number, right: number, a: number, b: number): void => {
    if (left === right) return;
    add(left, a, b);
    add(right, b, a);
  };
  const half = (halves: Int16Array, i: number, j: number): number => (i < 0 || j < 0 || i >= wide || j >= tall ? NOTHING : (halves[j * wide + i] as number));
  const risesAt = (i: number, j: number): boolean => i >= 0 && i < wide && (slope[j * wide + i] as number) > 0;
  for (let j = 0; j <= tall; j += 1) {
    for (let i = 0; i <= wide; i += 1) {
      const k = j * columns + i;
      if (i < wide) between(half(lower, i, j), half(upper, i, j - 1), k, k + 1);
      if (j === tall) continue;
      const atLeft = half(risesAt(i - 1, j) ? lower : upper, i - 1, j);
      const atRight = half(risesAt(i, j) ? upper : lower, i, j);
      between(atLeft, atRight, k, k + columns);
      if (i === wide || slope[j * wide + i] === 0) continue;
      const [above, below] = [half(upper, i, j), half(lower, i, j)];
      if (risesAt(i, j)) between(above, below, k, k + columns + 1);
      else between(above, below, k + columns, k + 1);
    }
  }
  return next;
}

/** The rings that leave a node; their edges are taken out of `next`. */
function ringsFrom(start: number, next: Map<number, number[]>): readonly (readonly number[])[] {
  const rings: (readonly number[])[] = [];
  for (let first = next.get(start)?.pop(); first !== undefined; first = next.get(start)?.pop()) {
    const ring = [start];
    // As many edges come to a node as leave it, so that a walk only ends where it began.
    for (let node = first; node !== start; node = next.get(node)?.pop() as number) ring.push(node);
    rings.push(ring);
  }
  return rings;
}

/** The points of a ring at which it turns. */
function cornersOf(ring: readonly number[], { xs, ys }: Field): readonly Vec2[] {
  const points = ring.map((k) => ({ x: xs[k % xs.length] as number, y: ys[Math.floor(k / xs.length)] as number }));
  return points.filter((b, at) => {
    const a = points[(at + points.length - 1) % points.length] as Vec2;
    const c = points[(at + 1) % points.length] as Vec2;
    const turn = (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x);
    return Math.abs(turn) > STRAIGHT * Math.hypot(b.x - a.x, b.y - a.y) * Math.hypot(c.x - b.x, c.y - b.y);
  });
}

/** Sine of the turn below which a ring runs on straight: points of one slope lie off it by rounding alone. */
const STRAIGHT = 1e-4;
