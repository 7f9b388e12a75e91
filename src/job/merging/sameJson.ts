import { isList, isObject } from "../file.ts";
import type { JsonValue } from "../file.ts";

/** Whether two values of JSON say the same. The order of an object's fields says nothing; absent is undefined. */
export function sameJson(one: JsonValue | undefined, other: JsonValue | undefined): boolean {
  if (one === other) return true;
  if (isList(one)) return isList(other) && one.length === other.length && one.every((value, at) => sameJson(value, other[at]));
  if (!isObject(one) || !isObject(other)) return false;
  const names = Object.keys(one);
  return names.length === Object.keys(other).length && names.every((name) => Object.hasOwn(other, name) && sameJson(one[name], other[name]));
}
