import { stepsOf } from "./path.ts";

export type JsonValue = null | boolean | number | string | readonly JsonValue[] | JsonObject;
export interface JsonObject {
  readonly [key: string]: JsonValue;
}

/** True for a list of JSON. */
export function isList(value: JsonValue | undefined): value is readonly JsonValue[] {
  return Array.isArray(value);
}

/** True for an object of JSON. */
export function isObject(value: JsonValue | undefined): value is JsonObject {
  return typeof value === "object" && value !== null && !isList(value);
}

/** A job file in its newest version, as the user typed it: every text is kept. */
export type JobFile = JsonObject;

/** The value at a field's or list's place; undefined where there is none. Only own fields count. */
export function valueAt(raw: JsonValue | undefined, steps: readonly (string | number)[]): JsonValue | undefined {
  let at = raw;
  for (const step of steps) {
    if (isList(at) && typeof step === "number") at = at[step];
    else if (isObject(at) && typeof step === "string" && Object.hasOwn(at, step)) at = at[step];
    else return undefined;
  }
  return at;
}

/** The user's own text at a job path such as `openings[2].at.up`; undefined where nothing is typed there. */
export function typedAt(file: JobFile, path: string): string | undefined {
  const steps = stepsOf(path);
  const value = steps === undefined ? undefined : valueAt(file, steps);
  if (value === undefined || typeof value === "object") return undefined;
  return String(value);
}
