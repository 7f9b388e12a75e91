import type { Polygon, Rect } from "../../../river/screen.ts";

/** A rectangle of an outline; `inZone` where it lies in the zone that was asked for. */
export interface Piece {
  readonly v0: number;
  readonly v1: number;
  readonly inZone: boolean;
}

/** All of an outline between two lines across u. */
export interface Strip {
  readonly u0: number;
  readonly u1: number;
  readonly pieces: readonly Piece[];
}

/**
 * Cuts outlines whose sides run along u and v into strips: at every corner, at the lines given and at the sides of the
 * zone. Pieces of a strip come in order of v; those that touch differ in `inZone`.
 */
export function stripsOf(outline: readonly Polygon[], lines: readonly number[], zone: Rect): readonly Strip[] {
  const rings = outline.flatMap(({ outer, holes }) => [outer, ...holes]);
  const corners = rings.flat().map(({ x }) => x);
  const least = Math.min(...corners);
  const greatest = Math.max(...corners);
  const between = [...lines, zone.u0, zone.u1].filter((u) => u > least && u < greatest);
  const us = apart([...corners, ...between].sort((a, b) => a - b));
  return us.slice(1).map((u1, index) => {
    const u0 = us[index] as number;
    const middle = (u0 + u1) / 2;
    const crossings = rings
      .flatMap((ring) =>
        ring.flatMap((a, at) => {
          const b = ring[(at + 1) % ring.length];
          return b !== undefined && a.x < middle !== b.x < middle ? [a.y] : [];
        }),
      )
      .sort((a, b) => a - b);
    const inU = middle > zone.u0 && middle < zone.u1;
    const pieces = crossings.flatMap((v0, at) => {
      const v1 = crossings[at + 1];
      return at % 2 === 0 && v1 !== undefined ? cutAtZone(v0, v1, inU, zone) : [];
    });
    return { u0, u1, pieces };
  });
}

function cutAtZone(v0: number, v1: number, inU: boolean, zone: Rect): readonly Piece[] {
  if (!inU) return [{ v0, v1, inZone: false }];
  const low = Math.min(Math.max(v0, zone.v0), v1);
  const high = Math.max(Math.min(v1, zone.v1), low);
  return [
    { v0, v1: low, inZone: false },
    { v0: low, v1: high, inZone: true },
    { v0: high, v1, inZone: false },
  ].filter((piece) => piece.v1 > piece.v0);
}

/** Lines nearer than this are one: far below what any number in a job can say. */
const ONE_LINE = 1e-12;

function apart(sorted: readonly number[]): readonly number[] {
  const kept: number[] = [];
  for (const u of sorted) {
    const last = kept.at(-1);
    if (last === undefined || u - last > ONE_LINE) kept.push(u);
  }
  return kept;
}
