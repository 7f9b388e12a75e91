import type { Vec2 } from "../../river/screen.ts";
import { distanceToPiece } from "./distance.ts";

/** Heights for marks in one column, each as near to where it wants to be as the others let it, in the order given. */
export function spread(wanted: readonly number[], apart: number, from: number, to: number): readonly number[] {
  const order = wanted.map((_, index) => index).sort((a, b) => (wanted[a] as number) - (wanted[b] as number));
  const gap = Math.min(apart, order.length < 2 ? apart : (to - from) / (order.length - 1));
  const placed: number[] = [...wanted];
  let least = from;
  for (const index of order) {
    placed[index] = Math.max(least, placed[index] as number);
    least = (placed[index]) + gap;
  }
  let most = to;
  for (const index of order.toReversed()) {
    placed[index] = Math.min(most, placed[index] as number);
    most = (placed[index]) - gap;
  }
  return placed;
}

/** Where along a line its label is tried, as shares of its length. */
const TRIED = [0.5, 0.35, 0.65, 0.2, 0.8];

/** A place for the label of each group of lines, clear of those before by `apart`; undefined where none of its lines is `least` long or has room. */
export function labelPlaces(groups: readonly (readonly (readonly Vec2[])[])[], apart: number, least: number, taken: readonly Vec2[]): readonly (Vec2 | undefined)[] {
  const used = [...taken];
  return groups.map((lines) => {
    const long = lines.map((line) => ({ line, length: lengthOf(line) })).filter(({ length }) => length >= least);
    const places = long.toSorted((a, b) => b.length - a.length).flatMap(({ line, length }) => TRIED.map((share) => pointAlong(line, share * length)));
    const place = places.find((one) => used.every(({ x, y }) => Math.abs(x - one.x) >= apart || Math.abs(y - one.y) >= apart / 2.5));
    if (place !== undefined) used.push(place);
    return place;
  });
}

function lengthOf(line: readonly Vec2[]): number {
  return line.slice(1).reduce((sum, { x, y }, k) => sum + Math.hypot(x - (line[k] as Vec2).x, y - (line[k] as Vec2).y), 0);
}

function pointAlong(line: readonly Vec2[], length: number): Vec2 {
  let left = length;
  for (const [k, b] of line.slice(1).entries()) {
    const a = line[k] as Vec2;
    const piece = Math.hypot(b.x - a.x, b.y - a.y);
    if (left <= piece && piece > 0) return { x: a.x + (left / piece) * (b.x - a.x), y: a.y + (left / piece) * (b.y - a.y) };
    left -= piece;
  }
  return line.at(-1) as Vec2;
}

/** So many places each way are tried for a name. */
const TRIED_EACH_WAY = 32;
/** With so many times the room that a name needs, a place nearer to the middle is better than one with more room. */
const ENOUGH = 3;

/**
 * The place within rings, those around holes too, that has most room for a name of a width and a height, clear of lines that
 * cross it; undefined where there is no room for it.
 */
export function namePlace(rings: readonly (readonly Vec2[])[], lines: readonly (readonly Vec2[])[], width: number, height: number): Vec2 | undefined {
  const edges = rings.flatMap((ring) => ring.map((b, k) => [ring.at(k - 1) as Vec2, b] as const));
  const all = [...edges, ...lines.flatMap((line) => line.slice(1).map((b, k) => [line[k] as Vec2, b] as const))];
  const points = rings.flat();
  const [left, right] = [Math.min(...points.map(({ x }) => x)), Math.max(...points.map(({ x }) => x))];
  const [top, bottom] = [Math.min(...points.map(({ y }) => y)), Math.max(...points.map(({ y }) => y))];
  const tried = Array.from({ length: TRIED_EACH_WAY }, (_, k) => (k + 0.5) / TRIED_EACH_WAY);
  let best: { readonly place: Vec2; readonly score: number } | undefined;
  for (const up of tried) {
    for (const along of tried) {
      const place = { x: left + along * (right - left), y: top + up * (bottom - top) };
      if (!isWithin(edges, place)) continue;
      // In a plane where the name is a square of two by two.
      const room = Math.min(...all.map(([a, b]) => distanceToPiece(a, b, place, 2 / width, 2 / height)));
      const score = Math.min(room, ENOUGH) - Math.hypot(along - 0.5, up - 0.5);
      if (room >= 1 && (best === undefined || score > best.score)) best = { place, score };
    }
  }
  return best?.place;
}

type Edge = readonly [Vec2, Vec2];

function isWithin(edges: readonly Edge[], { x, y }: Vec2): boolean {
  return edges.filter(([a, b]) => a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)).length % 2 === 1;
}
