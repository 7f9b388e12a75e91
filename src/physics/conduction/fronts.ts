import type { SymmetricMatrix } from "./symmetricMatrix.ts";

/** Unknowns that are eliminated together, from `begin` to before `end`, and the later ones that this touches. */
export interface Front {
  readonly begin: number;
  readonly end: number;
  /** The later ones stand from here, in ascending order, in the list of all fronts. */
  readonly from: number;
  readonly count: number;
  /** Fronts that leave something to this one. */
  readonly children: readonly number[];
  /** Where its columns start among those of all fronts; a column has a row for each own and each later unknown. */
  readonly block: number;
}

export interface Fronts {
  readonly fronts: readonly Front[];
  readonly later: Int32Array;
  /** Room for all columns. */
  readonly room: number;
}

/** The fronts of a matrix whose unknowns are eliminated in groups; `ends` tells where each group ends, in ascending order. */
export function frontsOf({ diagonal, start, row }: SymmetricMatrix, ends: Int32Array): Fronts {
  const size = diagonal.length;
  const frontAt = new Int32Array(size);
  ends.forEach((end, at) => frontAt.fill(at, at === 0 ? 0 : (ends[at - 1]), end));
  const seen = new Int32Array(size).fill(-1);
  const children: number[][] = Array.from(ends, () => []);
  const fronts: Front[] = [];
  let later = new Int32Array(4 * size);
  let from = 0;
  let room = 0;
  for (let at = 0; at < ends.length; at += 1) {
    const begin = at === 0 ? 0 : (ends[at - 1] as number);
    const end = ends[at] as number;
    const own = children[at] as number[];
    // No front touches more unknowns than there are.
    if (later.length < from + size) later = grown(later);
    let to = from;
    const touch = (rows: Int32Array, first: number, last: number): void => {
      for (let entry = first; entry < last; entry += 1) {
        const k = rows[entry] as number;
        if (k < end || seen[k] === at) continue;
        seen[k] = at;
        later[to] = k;
        to += 1;
      }
    };
    touch(row, start[begin] as number, start[end] as number);
    for (const child of own) {
      const { from: first, count } = fronts[child] as Front;
      touch(later, first, first + count);
    }
    later.subarray(from, to).sort();
    const count = to - from;
    if (count > 0) (children[frontAt[later[from] as number] as number] as number[]).push(at);
    fronts.push({ begin, end, from, count, children: own, block: room });
    room += (end - begin) * (end - begin + count);
    from = to;
  }
  return { fronts, later, room };
}

function grown(list: Int32Array): Int32Array<ArrayBuffer> {
  const longer = new Int32Array(2 * list.length);
  longer.set(list);
  return longer;
}
