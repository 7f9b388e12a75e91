import type { Network } from "./network.ts";
import type { SymmetricMatrix } from "./symmetricMatrix.ts";

/** The equations of a network's active nodes in the order given: heat that leaves a node by kelvin, W/(m K). */
export function matrixOf({ columns, right, up, upRight, upLeft, films }: Network, order: Int32Array): SymmetricMatrix {
  const size = order.length;
  const place = new Int32Array(right.length).fill(-1);
  for (let at = 0; at < size; at += 1) place[order[at] as number] = at;
  // The eight neighbours of a node: where they lie, and where the conductance to them stands.
  const neighbours = [
    { by: 1, edges: right, from: 0 },
    { by: -1, edges: right, from: -1 },
    { by: columns, edges: up, from: 0 },
    { by: -columns, edges: up, from: -columns },
    { by: columns + 1, edges: upRight, from: 0 },
    { by: -columns - 1, edges: upRight, from: -columns - 1 },
    { by: columns - 1, edges: upLeft, from: -1 },
    { by: 1 - columns, edges: upLeft, from: -columns },
  ];
  const diagonal = new Float64Array(size);
  const start = new Int32Array(size + 1);
  // Every edge is entered once, and a node has four edges to the right and upward at most.
  const row = new Int32Array(4 * size);
  const value = new Float64Array(4 * size);
  for (const { conductance } of films) {
    for (let at = 0; at < size; at += 1) diagonal[at] = (diagonal[at] as number) + (conductance[order[at] as number] as number);
  }
  let count = 0;
  for (let at = 0; at < size; at += 1) {
    const k = order[at] as number;
    let sum = diagonal[at] as number;
    for (const { by, edges, from } of neighbours) {
      const conductance = k + from < 0 ? 0 : (edges[k + from] as number);
      if (conductance === 0) continue;
      sum += conductance;
      const other = place[k + by] as number;
      if (other < at) continue;
      row[count] = other;
      value[count] = -conductance;
      count += 1;
    }
    diagonal[at] = sum;
    start[at + 1] = count;
  }
  return { diagonal, start, row, value };
}
