/** Patches of this many nodes or fewer are taken as they come. */
const SMALL = 16;

/** The order in which the nodes of a grid are eliminated, in groups that are eliminated together. */
export interface Dissection {
  /** Active nodes; node k = j * columns + i. */
  readonly order: Int32Array;
  /** Where in the order each group ends. A group comes after all that it parts. */
  readonly ends: Int32Array;
}

/**
 * Nested dissection of index space: a line of nodes parts the grid in two; both sides come before it and are parted in turn, so
 * that eliminating one side never joins nodes of the other. Patches and parting lines are the groups.
 */
export function dissect(columns: number, rows: number, active: Uint8Array): Dissection {
  const order = new Int32Array(columns * rows);
  const ends: number[] = [];
  let count = 0;
  const take = (i0: number, i1: number, j0: number, j1: number): void => {
    const before = count;
    for (let j = j0; j < j1; j += 1) {
      for (let i = i0; i < i1; i += 1) {
        const k = j * columns + i;
        if (active[k] === 1) {
          order[count] = k;
          count += 1;
        }
      }
    }
    if (count > before) ends.push(count);
  };
  const part = (i0: number, i1: number, j0: number, j1: number): void => {
    const wide = i1 - i0;
    const tall = j1 - j0;
    if (wide * tall <= SMALL) {
      take(i0, i1, j0, j1);
    } else if (wide >= tall) {
      const middle = (i0 + i1) >> 1;
      part(i0, middle, j0, j1);
      part(middle + 1, i1, j0, j1);
      take(middle, middle + 1, j0, j1);
    } else {
      const middle = (j0 + j1) >> 1;
      part(i0, i1, j0, middle);
      part(i0, i1, middle + 1, j1);
      take(i0, i1, middle, middle + 1);
    }
  };
  part(0, columns, 0, rows);
  return { order: order.slice(0, count), ends: Int32Array.from(ends) };
}
