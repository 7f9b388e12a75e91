import { isList, isObject } from "./file.ts";
import type { JsonObject, JsonValue } from "./file.ts";
import { ORDER_STEP, mergedOrder, orderOf, rowsById } from "./merging/rows.ts";
import { pathText } from "./path.ts";
import { sameJson } from "./merging/sameJson.ts";
import { readJson } from "./reading/json.ts";

export { sameJson } from "./merging/sameJson.ts";

/** One field, or one whole list or object that came or went, that differs between two files. Absent is undefined. */
export interface Change {
  /** As `openings.fan.at.up`: in a list whose rows have ids, the id stands in place of the index. */
  readonly path: string;
  readonly before?: JsonValue | undefined;
  readonly after?: JsonValue | undefined;
}

/** A place that both sides changed, each to something else. */
export interface Conflict {
  readonly path: string;
  readonly base?: JsonValue | undefined;
  readonly mine?: JsonValue | undefined;
  readonly theirs?: JsonValue | undefined;
}

export interface Comparison {
  readonly mine: readonly Change[];
  readonly theirs: readonly Change[];
  readonly conflicts: readonly Conflict[];
}

/** Which side a conflict's path takes. */
export type Choices = Readonly<Record<string, "mine" | "theirs">>;

export type Merge =
  | { readonly ok: true; readonly file: JsonValue }
  /** Conflicts that no choice settles. */
  | { readonly ok: false; readonly open: readonly Conflict[] };

/** What each side changed since the base, and where the two meet. A value of undefined is a file that is not there. */
export function compareFiles(base: JsonValue, mine: JsonValue, theirs: JsonValue): Comparison {
  const leaves: Leaf[] = [];
  merge(base, mine, theirs, [], (leaf) => {
    leaves.push(leaf);
    return leaf.mine;
  });
  return {
    mine: leaves.filter((leaf) => !sameJson(leaf.base, leaf.mine)).map(({ path, base: before, mine: after }) => ({ path, before, after })),
    theirs: leaves.filter((leaf) => !sameJson(leaf.base, leaf.theirs)).map(({ path, base: before, theirs: after }) => ({ path, before, after })),
    conflicts: leaves.filter(inConflict),
  };
}

/** What differs between two files, in the order of the fields. */
export function changesBetween(before: JsonValue, after: JsonValue): readonly Change[] {
  return compareFiles(before, before, after).theirs;
}

/**
 * A file with the changes of both sides. Rows with ids are matched by id, other lists by index where all three are of one
 * length and as one value where they are not. Nothing that a side changed is left out: a place that both changed
 * differently takes the side that `choices` names for its path, and without a choice there is no merged file.
 */
export function mergeFiles(base: JsonValue, mine: JsonValue, theirs: JsonValue, choices: Choices = {}): Merge {
  const open: Conflict[] = [];
  const file = merge(base, mine, theirs, [], (leaf) => {
    if (sameJson(leaf.base, leaf.mine)) return leaf.theirs;
    if (!inConflict(leaf)) return leaf.mine;
    const choice = Object.hasOwn(choices, leaf.path) ? choices[leaf.path] : undefined;
    if (choice === undefined) open.push(leaf);
    return choice === "theirs" ? leaf.theirs : leaf.mine;
  });
  if (open.length > 0 || file === undefined) return { ok: false, open };
  return { ok: true, file };
}

/** The content of a file for comparing: its JSON, or the text itself where it is no JSON or writes a field twice. */
export function contentOf(text: string): JsonValue {
  const json = readJson(text);
  return json.ok && json.repeated.length === 0 ? json.value : text;
}

type Value = JsonValue | undefined;
type Steps = readonly (string | number)[];
interface Leaf {
  readonly path: string;
  readonly base: Value;
  readonly mine: Value;
  readonly theirs: Value;
}
type Settle = (leaf: Leaf) => Value;

function inConflict({ base, mine, theirs }: Leaf): boolean {
  return !sameJson(base, mine) && !sameJson(base, theirs) && !sameJson(mine, theirs);
}

/** Walks the three together as long as they have one shape, and lets `settle` decide wherever they do not or at the end. */
function merge(base: Value, mine: Value, theirs: Value, steps: Steps, settle: Settle): Value {
  if (isObject(base) && isObject(mine) && isObject(theirs)) return mergeFields(base, mine, theirs, steps, settle);
  if (isList(base) && isList(mine) && isList(theirs)) {
    const rows = mergeRows(base, mine, theirs, steps, settle);
    if (rows !== undefined) return rows;
    if (base.length === mine.length && base.length === theirs.length) {
      return base.flatMap((value, at) => present(merge(value, mine[at], theirs[at], [...steps, at], settle)));
    }
  }
  return settle({ path: pathText(steps), base, mine, theirs });
}

function mergeFields(base: JsonObject, mine: JsonObject, theirs: JsonObject, steps: Steps, settle: Settle): JsonObject {
  const names = [...new Set([mine, theirs, base].flatMap((side) => Object.keys(side)))];
  return Object.fromEntries(
    names.flatMap((name) => {
      const value = merge(own(base, name), own(mine, name), own(theirs, name), [...steps, name], settle);
      return present(value).map((one) => [name, one] as const);
    }),
  );
}

/** Merges lists whose rows all have ids of their own; undefined where they are not such lists. */
function mergeRows(
  base: readonly JsonValue[],
  mine: readonly JsonValue[],
  theirs: readonly JsonValue[],
  steps: Steps,
  settle: Settle,
): readonly JsonValue[] | undefined {
  const [b, m, t] = [rowsById(base), rowsById(mine), rowsById(theirs)];
  if (b === undefined || m === undefined || t === undefined) return undefined;
  const merged = new Map<string, JsonValue>();
  for (const id of new Set([...m.keys(), ...t.keys(), ...b.keys()])) {
    for (const row of present(merge(b.get(id), m.get(id), t.get(id), [...steps, id], settle))) merged.set(id, row);
  }
  const common = [...b.keys()].filter((id) => m.has(id) && t.has(id));
  const order = settle({ path: pathText([...steps, ORDER_STEP]), base: common, mine: orderOf(m, common), theirs: orderOf(t, common) });
  const settled = isList(order) ? order.map(String) : common;
  return mergedOrder(settled, [...m.keys()], [...t.keys()], [...b.keys()]).flatMap((id) => present(merged.get(id)));
}

function own(object: JsonObject, name: string): Value {
  return Object.hasOwn(object, name) ? object[name] : undefined;
}

function present(value: Value): readonly JsonValue[] {
  return value === undefined ? [] : [value];
}
