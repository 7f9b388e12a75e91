import type { Network } from "./network.ts";

/** A node of a part of the network from which no heat can reach an air; undefined where every part touches one. */
export function loosePart({ columns, right, up, upRight, upLeft, films, active }: Network): number | undefined {
  const reached = new Uint8Array(active.length);
  const waiting: number[] = [];
  const reach = (k: number): void => {
    if (reached[k] === 1) return;
    reached[k] = 1;
    waiting.push(k);
  };
  for (const { conductance } of films) {
    conductance.forEach((film, k) => {
      if (film > 0) reach(k);
    });
  }
  const passes = (edges: Float64Array, k: number): boolean => k >= 0 && (edges[k] as number) > 0;
  for (let k = waiting.pop(); k !== undefined; k = waiting.pop()) {
    if (passes(right, k)) reach(k + 1);
    if (passes(right, k - 1)) reach(k - 1);
    if (passes(up, k)) reach(k + columns);
    if (passes(up, k - columns)) reach(k - columns);
    if (passes(upRight, k)) reach(k + columns + 1);
    if (passes(upRight, k - columns - 1)) reach(k - columns - 1);
    if (passes(upLeft, k - 1)) reach(k + columns - 1);
    if (passes(upLeft, k - columns)) reach(k - columns + 1);
  }
  const loose = active.findIndex((isActive, k) => isActive === 1 && reached[k] === 0);
  return loose === -1 ? undefined : loose;
}
