import { isObject } from "../file.ts";
import type { JsonValue } from "../file.ts";

/** The step of a path that stands for the order of a list's rows. No row may have it as its id. */
export const ORDER_STEP = "order of rows";

/** The rows of a list by their ids, in the list's order; undefined where a row has none, or one twice. */
export function rowsById(list: readonly JsonValue[]): ReadonlyMap<string, JsonValue> | undefined {
  const rows = new Map<string, JsonValue>();
  for (const row of list) {
    const id = isObject(row) && Object.hasOwn(row, "id") ? row["id"] : undefined;
    if (typeof id !== "string" || id === ORDER_STEP || rows.has(id)) return undefined;
    rows.set(id, row);
  }
  return rows;
}

/** The given ids in the order in which the rows stand. */
export function orderOf(rows: ReadonlyMap<string, JsonValue>, ids: readonly string[]): readonly string[] {
  const wanted = new Set(ids);
  return [...rows.keys()].filter((id) => wanted.has(id));
}

/**
 * Every id once: those that all sides hold in their settled order, and behind each the rows that follow it on one side
 * only. Where both sides put rows at one place, the side whose first id sorts first goes first, so that it does not matter
 * which side is called mine.
 */
export function mergedOrder(settled: readonly string[], ...sides: readonly (readonly string[])[]): readonly string[] {
  const fixed = new Set(settled);
  const followers = sides.map((side) => followersIn(side, fixed));
  const order = new Set<string>();
  for (const anchor of [undefined, ...settled]) {
    if (anchor !== undefined) order.add(anchor);
    const runs = followers.flatMap((side) => side.get(anchor) ?? []);
    for (const run of runs.toSorted(byFirst)) for (const id of run) order.add(id);
  }
  return [...order];
}

type Followers = ReadonlyMap<string | undefined, readonly (readonly string[])[]>;

/** The run of other ids that follows each fixed id, and the one before the first under undefined. */
function followersIn(side: readonly string[], fixed: ReadonlySet<string>): Followers {
  const runs = new Map<string | undefined, readonly (readonly string[])[]>();
  const starts = [-1, ...side.flatMap((id, at) => (fixed.has(id) ? [at] : []))];
  starts.forEach((start, nth) => {
    const run = side.slice(start + 1, starts[nth + 1]);
    if (run.length > 0) runs.set(side[start], [run]);
  });
  return runs;
}

function byFirst(one: readonly string[], other: readonly string[]): number {
  const [a, b] = [one.join("\n"), other.join("\n")];
  return a < b ? -1 : a > b ? 1 : 0;
}
