import fc from "fast-check";
import { lusolve } from "mathjs";
import { expect, test } from "vitest";
import { dissect } from "./dissection.ts";
import { factorise, solveFactored } from "./factor.ts";
import type { SymmetricMatrix } from "./symmetricMatrix.ts";

/** Rows below the diagonal, as numbers where there is an entry. */
const rows = fc.integer({ min: 1, max: 12 }).chain((size) =>
  fc.tuple(...Array.from({ length: size }, (_, k) => fc.array(fc.option(fc.double({ min: -1, max: 1, noNaN: true }), { nil: undefined }), { minLength: k, maxLength: k }))),
);

test("solves random sparse systems as the dense solver of a general library does, however they are grouped", () => {
  fc.assert(
    fc.property(rows, fc.integer({ min: 1, max: 12 }), fc.integer({ min: 1, max: 12 }), (below, first, more) => {
      const dense = densely(below);
      const right = below.map((_, k) => k + 1);
      const want = (lusolve(dense, right) as number[][]).map(([value]) => value!);
      const got = Float64Array.from(right);
      solveFactored(factorise(sparsely(below), groupsOf(below.length, first, more)), got);
      want.forEach((value, k) => expect(got[k]).toBeCloseTo(value, 9));
    }),
    { seed: 20265, numRuns: 200 },
  );
});

test("a matrix that is not positive definite throws", () => {
  for (const ends of [Int32Array.of(2), Int32Array.of(1, 2)]) {
    expect(() => factorise({ ...sparsely([[], [0.5]]), diagonal: Float64Array.of(1, 0.25) }, ends)).toThrow(RangeError);
  }
  expect(() => factorise({ ...sparsely([[]]), diagonal: Float64Array.of(Number.NaN) }, Int32Array.of(1))).toThrow(RangeError);
});

test("nested dissection takes every active node once, and a parting line after what it parts", () => {
  const [columns, rowCount] = [9, 5];
  const active = new Uint8Array(columns * rowCount).fill(1);
  active[7] = 0;
  const { order, ends } = dissect(columns, rowCount, active);
  expect([...order].sort((a, b) => a - b)).toEqual([...active.keys()].filter((k) => k !== 7));
  const last = [...order.slice(-rowCount)].map((k) => k % columns);
  expect(last).toEqual([4, 4, 4, 4, 4]);
  expect([...ends.slice(-2)]).toEqual([order.length - rowCount, order.length]);
});

/** Ends of groups: one of some unknowns, then groups of some more. */
function groupsOf(size: number, first: number, more: number): Int32Array {
  const ends = [Math.min(first, size)];
  while (ends.at(-1)! < size) ends.push(Math.min(ends.at(-1)! + more, size));
  return Int32Array.from(ends);
}

/** Diagonal large enough for the matrix to be positive definite. */
function diagonalOf(below: readonly (readonly (number | undefined)[])[], k: number): number {
  return 1 + below.length - k / (2 * below.length);
}

function densely(below: readonly (readonly (number | undefined)[])[]): number[][] {
  return below.map((_, i) => below.map((_unused, j) => (i === j ? diagonalOf(below, i) : entryOf(below, Math.max(i, j), Math.min(i, j)))));
}

function sparsely(below: readonly (readonly (number | undefined)[])[]): SymmetricMatrix {
  const entries = below.map((_, column) => below.flatMap((line, row) => (line[column] === undefined ? [] : [{ value: line[column], row }])));
  const start = new Int32Array(below.length + 1);
  entries.forEach((column, k) => (start[k + 1] = start[k]! + column.length));
  return {
    diagonal: Float64Array.from(below, (_, k) => diagonalOf(below, k)),
    start,
    row: Int32Array.from(entries.flat(), ({ row }) => row),
    value: Float64Array.from(entries.flat(), ({ value }) => value),
  };
}

function entryOf(below: readonly (readonly (number | undefined)[])[], row: number, column: number): number {
  const entry = below[row]![column];
  return entry === undefined ? 0 : entry;
}
