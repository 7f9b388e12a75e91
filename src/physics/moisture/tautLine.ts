import { nth } from "./nth.ts";

/** A place on a line. `most` is what the line may not pass above; where `held` is given, the line goes through it. */
export interface Knot {
  readonly at: number;
  readonly most: number;
  readonly held: number | undefined;
}

/** A corner of the line: the knot by its place in the list, and the line's value there. */
export interface Corner {
  readonly knot: number;
  readonly value: number;
}

/**
 * The tautest line through the held knots that nowhere passes above the others: between two held knots the lower convex
 * hull of what lies between; beyond the first or last held knot the line runs out level, or on down to the least of the
 * knots there and then level. Gives its corners in order; undefined where no knot is held. `at` rises from knot to knot.
 */
export function tautLine(knots: readonly Knot[]): readonly Corner[] | undefined {
  const held = knots.flatMap(({ held: value }, knot) => (value === undefined ? [] : [{ knot, value }]));
  const [first, last] = [held[0], held.at(-1)];
  if (first === undefined || last === undefined) return undefined;
  const anchors = [...freeEnd(knots, first, 0), ...held, ...freeEnd(knots, last, knots.length - 1)];
  return anchors.reduce<readonly Corner[]>((corners, to) => {
    const from = corners.at(-1);
    return from === undefined ? [to] : [...corners, ...hull(knots, from, to).slice(1)];
  }, []);
}

/** The end of a line that nothing holds: no higher than any knot on the way, and than the knot that is held. */
function freeEnd(knots: readonly Knot[], from: Corner, end: number): readonly Corner[] {
  if (from.knot === end) return [];
  const onTheWay = knots.slice(Math.min(from.knot, end), Math.max(from.knot, end) + 1).filter(({ held }) => held === undefined);
  return [{ knot: end, value: Math.min(from.value, ...onTheWay.map(({ most }) => most)) }];
}

/** Corners of the lower convex hull from one to the other, both among them. */
function hull(knots: readonly Knot[], from: Corner, to: Corner): readonly Corner[] {
  const corners: Corner[] = [from];
  const slope = (a: Corner, b: Corner): number => (b.value - a.value) / (nth(knots, b.knot).at - nth(knots, a.knot).at);
  const bendsDown = (next: Corner): boolean => {
    const [a, b] = corners.slice(-2);
    return a !== undefined && b !== undefined && slope(a, b) >= slope(b, next);
  };
  for (let knot = from.knot + 1; knot <= to.knot; knot += 1) {
    const next = knot === to.knot ? to : { knot, value: nth(knots, knot).most };
    while (bendsDown(next)) corners.pop();
    corners.push(next);
  }
  return corners;
}
