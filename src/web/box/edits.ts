import type { JsonValue } from "../../job/file.ts";

/** A job file that an edit may write into. */
export type Draft = { [key: string]: DraftValue };
export type DraftValue = null | boolean | number | string | DraftValue[] | Draft;

export type Steps = readonly (string | number)[];

/** Puts a value at a place; groups on the way that are not there are made. Undefined takes the field away. */
export function putAt(draft: Draft, steps: Steps, value: JsonValue | undefined): void {
  const last = steps.at(-1);
  if (last === undefined) throw new RangeError("an edit needs a place");
  const holder = holderAt(draft, steps.slice(0, -1), value !== undefined);
  if (holder === undefined) return;
  if (Array.isArray(holder)) {
    if (typeof last !== "number") throw new RangeError(`a list has no field ${last}`);
    if (value === undefined) holder.splice(last, 1);
    else holder[last] = copyOf(value);
  } else if (value === undefined) Reflect.deleteProperty(holder, last);
  else holder[String(last)] = copyOf(value);
}

/** Puts a value into a list before the index, at its end where none is given; the list is made where there is none. */
export function insertAt(draft: Draft, list: Steps, value: JsonValue, index?: number): void {
  const found = listAt(draft, list);
  if (found === undefined) putAt(draft, list, [value]);
  else found.splice(index ?? found.length, 0, copyOf(value));
}

/** Moves a member of a list to another index. Nothing happens where it would leave the list. */
export function moveAt(draft: Draft, list: Steps, from: number, to: number): void {
  const found = listAt(draft, list);
  if (found === undefined || to < 0 || to >= found.length) return;
  const [moved] = found.splice(from, 1);
  if (moved !== undefined) found.splice(to, 0, moved);
}

/** The list at a place; undefined where none stands there. */
export function listAt(draft: Draft, steps: Steps): DraftValue[] | undefined {
  const found = steps.reduce<DraftValue | undefined>(inner, draft);
  return Array.isArray(found) ? found : undefined;
}

/** A deep copy that may be written into. */
export function copyOf(value: JsonValue): DraftValue {
  if (typeof value !== "object" || value === null) return value;
  if (isList(value)) return value.map(copyOf);
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, copyOf(one)]));
}

function holderAt(draft: Draft, steps: Steps, make: boolean): Draft | DraftValue[] | undefined {
  let at: Draft | DraftValue[] = draft;
  for (const [depth, step] of steps.entries()) {
    let next = inner(at, step);
    if (typeof next !== "object" || next === null) {
      if (!make || Array.isArray(at)) return undefined;
      at[String(step)] = typeof steps[depth + 1] === "number" ? [] : {};
      next = inner(at, step);
    }
    if (typeof next !== "object" || next === null) return undefined;
    at = next;
  }
  return at;
}

function inner(holder: DraftValue | undefined, step: string | number): DraftValue | undefined {
  if (Array.isArray(holder)) return typeof step === "number" ? holder[step] : undefined;
  if (typeof holder !== "object" || holder === null || !Object.hasOwn(holder, step)) return undefined;
  return holder[String(step)];
}

function isList(value: JsonValue): value is readonly JsonValue[] {
  return Array.isArray(value);
}
