import { type Front, type Fronts, frontsOf } from "./fronts.ts";
import type { SymmetricMatrix } from "./symmetricMatrix.ts";

/** L D Lᵗ of a symmetric matrix: for each front the dense columns of its unknowns, and the pivots. */
export interface Factor extends Pick<Fronts, "fronts" | "later"> {
  readonly pivots: Float64Array;
  /** Column c of a front starts at its `block` plus c times its rows; above the diagonal it holds nothing of use. */
  readonly columns: Float64Array;
}

/**
 * Factors a positive definite matrix front by front: the unknowns of a front are eliminated together in one dense array, and
 * what that leaves to later unknowns is passed on to the front that eliminates the first of them (multifrontal method;
 * I. S. Duff and J. K. Reid 1983, from memory). `ends` as frontsOf takes them. Throws RangeError at a pivot that is not above zero.
 */
export function factorise(matrix: SymmetricMatrix, ends: Int32Array): Factor {
  const size = matrix.diagonal.length;
  const { fronts, later, room } = frontsOf(matrix, ends);
  const factor = { fronts, later, pivots: new Float64Array(size), columns: new Float64Array(room) };
  const local = new Int32Array(size);
  const left: Float64Array[] = [];
  const spare = scratch();
  for (let at = 0; at < fronts.length; at += 1) {
    const front = fronts[at] as Front;
    const rest = spare.take(front.count ** 2);
    enter(matrix, factor, front, local);
    for (const child of front.children) {
      const values = left[child] as Float64Array;
      addTo(factor, rest, front, fronts[child] as Front, values, local);
      spare.giveBack(values);
    }
    eliminate(factor, rest, front);
    left[at] = rest;
  }
  return factor;
}

/** Arrays of zeros that are used again: each front needs one until its parent has taken what it holds. */
function scratch() {
  const bySize = new Map<number, Float64Array[]>();
  return {
    take(count: number): Float64Array {
      const size = 2 ** Math.ceil(Math.log2(Math.max(1, count)));
      const used = bySize.get(size)?.pop();
      return used === undefined ? new Float64Array(size) : used.fill(0, 0, count);
    },
    giveBack(array: Float64Array): void {
      const alike = bySize.get(array.length);
      if (alike === undefined) bySize.set(array.length, [array]);
      else alike.push(array);
    },
  };
}

/** Enters the matrix into the columns of a front; `local` then tells the row of each of its unknowns. */
function enter({ diagonal, start, row, value }: SymmetricMatrix, { columns, later }: Factor, { begin, end, from, count, block }: Front, local: Int32Array): void {
  const own = end - begin;
  const rows = own + count;
  for (let k = begin; k < end; k += 1) local[k] = k - begin;
  for (let at = 0; at < count; at += 1) local[later[from + at] as number] = own + at;
  for (let k = begin; k < end; k += 1) {
    const column = block + (k - begin) * rows;
    columns[column + k - begin] = diagonal[k] as number;
    for (let entry = start[k] as number, last = start[k + 1] as number; entry < last; entry += 1) {
      columns[column + (local[row[entry] as number] as number)] = value[entry] as number;
    }
  }
}

/** Adds what a child left to the front of its parent; rows of both are in ascending order. */
function addTo({ columns, later }: Factor, rest: Float64Array, { begin, end, count, block }: Front, child: Front, values: Float64Array, local: Int32Array): void {
  const own = end - begin;
  const rows = new Int32Array(child.count);
  for (let i = 0; i < rows.length; i += 1) rows[i] = local[later[child.from + i] as number] as number;
  for (let j = 0; j < rows.length; j += 1) {
    const column = rows[j] as number;
    if (column < own) addColumn(columns, block + column * (own + count), values, j, rows);
    else addColumn(rest, (column - own) * count - own, values, j, rows);
  }
}

function addColumn(to: Float64Array, offset: number, values: Float64Array, j: number, rows: Int32Array): void {
  const count = rows.length;
  const from = j * count;
  for (let i = j; i < count; i += 1) {
    const at = offset + (rows[i] as number);
    to[at] = (to[at] as number) + (values[from + i] as number);
  }
}

/** Columns that are taken off the rest in one pass. */
const PANEL = 4;

/** Eliminates the own unknowns of a front: its columns become those of L, the rest what is left to later unknowns. */
function eliminate({ columns, pivots }: Factor, rest: Float64Array, { begin, end, count: after, block }: Front): void {
  const own = end - begin;
  const rows = own + after;
  const at = (column: number): number => block + column * rows;
  for (let first = 0; first < own; first += PANEL) {
    const last = Math.min(own, first + PANEL);
    for (let c = first; c < last; c += 1) {
      const pivot = columns[at(c) + c] as number;
      if (!(pivot > 0)) throw new RangeError(`the matrix is not positive definite: pivot ${begin + c} is ${pivot}`);
      pivots[begin + c] = pivot;
      for (let j = c + 1; j < last; j += 1) takeOff(columns, columns, at(c), at(j), j, rows, pivot);
    }
    if (last - first === PANEL) {
      for (let j = last; j < own; j += 1) takeFourOff(columns, columns, at(first), at(j), j, rows, pivots, begin + first);
      for (let j = 0; j < after; j += 1) takeFourOff(columns, rest, at(first), j * after - own, own + j, rows, pivots, begin + first);
    } else {
      for (let c = first; c < last; c += 1) {
        for (let j = 0; j < after; j += 1) takeOff(columns, rest, at(c), j * after - own, own + j, rows, pivots[begin + c] as number);
      }
    }
    for (let c = first; c < last; c += 1) {
      const inverse = 1 / (pivots[begin + c] as number);
      for (let entry = at(c) + c + 1; entry < at(c + 1); entry += 1) columns[entry] = (columns[entry] as number) * inverse;
    }
  }
}

/** Takes off a column what a pivot's column makes of it, from a row down to the last. */
function takeOff(from: Float64Array, to: Float64Array, column: number, target: number, row: number, rows: number, pivot: number): void {
  const factor = (from[column + row] as number) / pivot;
  for (let r = row; r < rows; r += 1) to[target + r] = (to[target + r] as number) - factor * (from[column + r] as number);
}

/** The same with four pivots that follow each other. */
function takeFourOff(from: Float64Array, to: Float64Array, column: number, target: number, row: number, rows: number, pivots: Float64Array, pivot: number): void {
  const [a, b, c, d] = [column, column + rows, column + 2 * rows, column + 3 * rows];
  const fa = (from[a + row] as number) / (pivots[pivot] as number);
  const fb = (from[b + row] as number) / (pivots[pivot + 1] as number);
  const fc = (from[c + row] as number) / (pivots[pivot + 2] as number);
  const fd = (from[d + row] as number) / (pivots[pivot + 3] as number);
  for (let r = row; r < rows; r += 1) {
    to[target + r] =
      (to[target + r] as number) - fa * (from[a + r] as number) - fb * (from[b + r] as number) - fc * (from[c + r] as number) - fd * (from[d + r] as number);
  }
}

/** Solves L D Lᵗ x = right, in place. */
export function solveFactored(factor: Factor, right: Float64Array): void {
  const { fronts, pivots } = factor;
  const work = new Float64Array(fronts.reduce((most, { count }) => Math.max(most, count), 0));
  for (let f = 0; f < fronts.length; f += 1) forward(factor, fronts[f] as Front, right, work);
  for (let k = 0; k < right.length; k += 1) right[k] = (right[k] as number) / (pivots[k] as number);
  for (let f = fronts.length - 1; f >= 0; f -= 1) backward(factor, fronts[f] as Front, right, work);
}

function forward({ columns, later }: Factor, { begin, end, from, count, block }: Front, right: Float64Array, work: Float64Array): void {
  const own = end - begin;
  const rows = own + count;
  work.fill(0, 0, count);
  for (let c = 0; c < own; c += 1) {
    const known = right[begin + c] as number;
    const column = block + c * rows;
    for (let r = c + 1; r < own; r += 1) right[begin + r] = (right[begin + r] as number) - (columns[column + r] as number) * known;
    for (let r = 0; r < count; r += 1) work[r] = (work[r] as number) + (columns[column + own + r] as number) * known;
  }
  for (let r = 0; r < count; r += 1) {
    const k = later[from + r] as number;
    right[k] = (right[k] as number) - (work[r] as number);
  }
}

function backward({ columns, later }: Factor, { begin, end, from, count, block }: Front, right: Float64Array, work: Float64Array): void {
  const own = end - begin;
  const rows = own + count;
  for (let r = 0; r < count; r += 1) work[r] = right[later[from + r] as number] as number;
  for (let c = own - 1; c >= 0; c -= 1) {
    const column = block + c * rows;
    let sum = right[begin + c] as number;
    for (let r = c + 1; r < own; r += 1) sum -= (columns[column + r] as number) * (right[begin + r] as number);
    for (let r = 0; r < count; r += 1) sum -= (columns[column + own + r] as number) * (work[r] as number);
    right[begin + c] = sum;
  }
}
