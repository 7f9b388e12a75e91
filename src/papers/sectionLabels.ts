import { isInRings } from "../geometry/polygon.ts";
import type { Rect } from "../geometry/rect.ts";
import type { Vec2 } from "../geometry/vector.ts";

type BoxAt = (middle: Vec2) => Rect;
type IsFree = (box: Rect) => boolean;

/** A free box that lies wholly inside the rings (even and odd), as near as can be to the middle of what they enclose; undefined for none. */
export function placeInAir(rings: readonly (readonly Vec2[])[], boxAt: BoxAt, isFree: IsFree): Rect | undefined {
  const points = rings.flat();
  if (points.length === 0) return undefined;
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  const [x0, x1, y0, y1] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const steps = (from: number, to: number): readonly number[] => {
    const count = Math.max(1, Math.ceil((to - from) / STEP));
    return Array.from({ length: count }, (_, k) => from + ((k + 0.5) / count) * (to - from));
  };
  const away = ({ x, y }: Vec2): number => Math.hypot(x - (x0 + x1) / 2, y - (y0 + y1) / 2);
  const tried = steps(x0, x1).flatMap((x) => steps(y0, y1).map((y) => ({ x, y })));
  return tried
    .toSorted((a, b) => away(a) - away(b))
    .map(boxAt)
    .find((box) => isFree(box) && lattice(box).every((at) => isInRings(rings, at)));
}

/** A free box on one of the lines, the longest first, from its middle outward; none on a line that the box would cover. */
export function placeOnLines(lines: readonly (readonly Vec2[])[], boxAt: BoxAt, isFree: IsFree): Rect | undefined {
  const measured = lines.map((line) => ({ line, length: lengthOf(line) })).toSorted((a, b) => b.length - a.length);
  for (const { line, length } of measured) {
    for (const share of SHARES) {
      const box = boxAt(alongLine(line, share * length));
      if (length > box.u1 - box.u0 && isFree(box)) return box;
    }
  }
  return undefined;
}

/** Points along a line, its corners among them, at most `step` apart. */
export function dotsAlong(line: readonly Vec2[], step: number): readonly Vec2[] {
  return line.slice(1).flatMap((b, k) => {
    const a = line[k] as Vec2;
    const count = Math.max(1, Math.ceil(Math.hypot(b.x - a.x, b.y - a.y) / step));
    return Array.from({ length: count + 1 }, (_, at) => ({ x: a.x + (at / count) * (b.x - a.x), y: a.y + (at / count) * (b.y - a.y) }));
  });
}

/** Step between places that are tried, mm. */
const STEP = 1;
const SHARES: readonly number[] = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9];

function lattice({ u0, u1, v0, v1 }: Rect): readonly Vec2[] {
  return [0, 0.25, 0.5, 0.75, 1].flatMap((share) => [v0, (v0 + v1) / 2, v1].map((y) => ({ x: u0 + share * (u1 - u0), y })));
}

function lengthOf(line: readonly Vec2[]): number {
  return line.slice(1).reduce((sum, { x, y }, k) => sum + Math.hypot(x - (line[k] as Vec2).x, y - (line[k] as Vec2).y), 0);
}

function alongLine(line: readonly Vec2[], distance: number): Vec2 {
  let left = distance;
  for (const [k, b] of line.slice(1).entries()) {
    const a = line[k] as Vec2;
    const step = Math.hypot(b.x - a.x, b.y - a.y);
    if (left <= step && step > 0) return { x: a.x + (left / step) * (b.x - a.x), y: a.y + (left / step) * (b.y - a.y) };
    left -= step;
  }
  return line.at(-1) as Vec2;
}
