import type { SymmetricMatrix } from "../src/physics/conduction/symmetricMatrix.ts";

/** A symmetric matrix in bands, row by row: entry (k, k - d) at k * (width + 1) + d. */
export interface Bands {
  readonly size: number;
  readonly width: number;
  readonly value: Float64Array;
}

/** The bands of a matrix in the order in which it stands. */
export function bandsOf({ diagonal, start, row, value }: SymmetricMatrix): Bands {
  const size = diagonal.length;
  let width = 0;
  for (let k = 0; k < size; k += 1) {
    for (let at = start[k] as number; at < (start[k + 1] as number); at += 1) width = Math.max(width, (row[at] as number) - k);
  }
  const bands = new Float64Array(size * (width + 1));
  for (let k = 0; k < size; k += 1) {
    bands[k * (width + 1)] = diagonal[k] as number;
    for (let at = start[k] as number; at < (start[k + 1] as number); at += 1) {
      const r = row[at] as number;
      bands[r * (width + 1) + r - k] = value[at] as number;
    }
  }
  return { size, width, value: bands };
}

/** The band solver of textbooks: Cholesky within the bands, then both triangles, for one right-hand side. */
export function solveBands({ size, width, value }: Bands, right: Float64Array): Float64Array {
  const L = value.slice();
  const x = right.slice();
  const at = (row: number, column: number): number => row * (width + 1) + row - column;
  for (let r = 0; r < size; r += 1) {
    const first = Math.max(0, r - width);
    for (let c = first; c <= r; c += 1) {
      let sum = L[at(r, c)] as number;
      for (let k = Math.max(first, c - width); k < c; k += 1) sum -= (L[at(r, k)] as number) * (L[at(c, k)] as number);
      L[at(r, c)] = c === r ? Math.sqrt(sum) : sum / (L[at(c, c)] as number);
    }
  }
  for (let r = 0; r < size; r += 1) {
    let sum = x[r] as number;
    for (let k = Math.max(0, r - width); k < r; k += 1) sum -= (L[at(r, k)] as number) * (x[k] as number);
    x[r] = sum / (L[at(r, r)] as number);
  }
  for (let r = size - 1; r >= 0; r -= 1) {
    const known = (x[r] as number) / (L[at(r, r)] as number);
    x[r] = known;
    for (let k = Math.max(0, r - width); k < r; k += 1) x[k] = (x[k] as number) - (L[at(r, k)] as number) * known;
  }
  return x;
}
