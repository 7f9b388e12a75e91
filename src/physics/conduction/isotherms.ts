import type { Vec2 } from "../../geometry/vector.ts";
import { LOWER, UPPER } from "./network.ts";
import type { Field } from "./solution.ts";

/** Where a field has one temperature. */
export interface Isotherm {
  /** degC */
  readonly temperature: number;
  /** Lines that end where the solid ends, and closed ones, whose last point is the first again. */
  readonly lines: readonly (readonly Vec2[])[];
}

/**
 * Isotherms of a field at node temperatures (`nodeTemperatures`), in the order of the levels asked for. A line passes every
 * edge of a cell where the temperature, linear between the edge's nodes, is the level. A cell that a slope cuts is two
 * triangles; where no solid lies there is no line. Throws RangeError at a level that is not a finite number.
 */
export function isotherms(field: Field, temperatures: Float64Array, levels: readonly number[]): readonly Isotherm[] {
  return levels.map((level, at) => {
    if (!Number.isFinite(level)) throw new RangeError(`levels[${at}] is ${level}, not a finite number`);
    return { temperature: level, lines: chained(crossings(field, temperatures, level)) };
  });
}

/** The crossings of one level: where each lies, and which two each piece of line joins. */
interface Crossings {
  readonly at: ReadonlyMap<number, Vec2>;
  readonly pieces: readonly (readonly [number, number])[];
}

/** Edges that leave a node: to the right, up, and the diagonal of the cell at its upper right. */
const EDGES_OF_A_NODE = 3;

function crossings({ xs, ys, slope, halves }: Field, temperatures: Float64Array, level: number): Crossings {
  const columns = xs.length;
  const at = new Map<number, Vec2>();
  const pieces: (readonly [number, number])[] = [];
  const over = Uint8Array.from(temperatures, (temperature) => (temperature >= level ? 1 : 0));

  /** The edge's number where the level crosses it. */
  const crossing = (a: number, b: number, edge: number): number | undefined => {
    if (over[a] === over[b]) return undefined;
    if (!at.has(edge)) {
      const [ta, tb] = [temperatures[a] as number, temperatures[b] as number];
      const part = (level - ta) / (tb - ta);
      const [i, k] = [a % columns, b % columns];
      const between = (lines: Float64Array, from: number, to: number): number => (lines[from] as number) + part * ((lines[to] as number) - (lines[from] as number));
      at.set(edge, { x: between(xs, i, k), y: between(ys, (a - i) / columns, (b - k) / columns) });
    }
    return edge;
  };
  const join = (edges: readonly (number | undefined)[]): void => {
    const [a, b] = edges.filter((edge) => edge !== undefined);
    if (a !== undefined && b !== undefined) pieces.push([a, b]);
  };

  halves.forEach((half, cell) => {
    if (half === 0) return;
    const i = cell % (columns - 1);
    const k = ((cell - i) / (columns - 1)) * columns + i;
    const [a, b, c, d] = [over[k], over[k + 1], over[k + columns], over[k + columns + 1]];
    if (a === b && b === c && c === d) return;
    const bottom = (): number | undefined => crossing(k, k + 1, EDGES_OF_A_NODE * k);
    const top = (): number | undefined => crossing(k + columns, k + columns + 1, EDGES_OF_A_NODE * (k + columns));
    const left = (): number | undefined => crossing(k, k + columns, EDGES_OF_A_NODE * k + 1);
    const right = (): number | undefined => crossing(k + 1, k + columns + 1, EDGES_OF_A_NODE * (k + 1) + 1);
    const rises = slope[cell] as number;
    if (rises !== 0) {
      const [from, to] = rises > 0 ? [k, k + columns + 1] : [k + columns, k + 1];
      const diagonal = (): number | undefined => crossing(from, to, EDGES_OF_A_NODE * k + 2);
      if ((half & LOWER) > 0) join([bottom(), rises > 0 ? right() : left(), diagonal()]);
      if ((half & UPPER) > 0) join([top(), rises > 0 ? left() : right(), diagonal()]);
      return;
    }
    if (a !== d || b !== c) {
      join([bottom(), right(), top(), left()]);
      return;
    }
    // The temperature in the middle says which two opposite corners are joined.
    const middle = [k, k + 1, k + columns, k + columns + 1].reduce((sum, node) => sum + (temperatures[node] as number), 0) / 4;
    const joinsRising = (middle >= level ? 1 : 0) === a;
    join(joinsRising ? [bottom(), right()] : [bottom(), left()]);
    join(joinsRising ? [top(), left()] : [top(), right()]);
  });
  return { at, pieces };
}

/** Pieces joined into lines: those with ends first, then closed ones. An edge has at most two pieces, one in each cell beside it. */
function chained({ at, pieces }: Crossings): readonly (readonly Vec2[])[] {
  const piecesAt = new Map<number, number[]>();
  pieces.forEach((piece, index) => {
    for (const edge of piece) {
      const known = piecesAt.get(edge);
      if (known === undefined) piecesAt.set(edge, [index]);
      else known.push(index);
    }
  });
  const used = new Uint8Array(pieces.length);
  const lineFrom = (start: number): readonly Vec2[] => {
    const line = [at.get(start) as Vec2];
    for (let edge = start; ; ) {
      const next = piecesAt.get(edge)?.find((index) => used[index] === 0);
      if (next === undefined) return withoutRepeats(line);
      used[next] = 1;
      const [a, b] = pieces[next] as readonly [number, number];
      edge = a === edge ? b : a;
      line.push(at.get(edge) as Vec2);
    }
  };
  const ends = [...piecesAt].filter(([, touching]) => touching.length === 1).map(([edge]) => edge);
  const open = ends.flatMap((edge) => (piecesAt.get(edge)?.some((index) => used[index] === 0) === true ? [lineFrom(edge)] : []));
  const closed = pieces.flatMap(([edge], index) => (used[index] === 0 ? [lineFrom(edge)] : []));
  return [...open, ...closed].filter(({ length }) => length > 1);
}

/** A level that meets a node crosses several edges in one point. */
function withoutRepeats(line: readonly Vec2[]): readonly Vec2[] {
  return line.filter(({ x, y }, index) => {
    const before = line[index - 1];
    return before === undefined || before.x !== x || before.y !== y;
  });
}
