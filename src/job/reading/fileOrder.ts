import { isList, isObject } from "../file.ts";
import type { JsonValue } from "../file.ts";
import type { JobIssue } from "../issue.ts";
import { pathText, stepsOf } from "../path.ts";

/** Issues in the order of the file; one about a field that is not there stands with the object that should hold it. */
export function inFileOrder(file: JsonValue, issues: readonly JobIssue[]): readonly JobIssue[] {
  const order = new Map<string, number>();
  number(file, [], order);
  const placed = issues.map((issue) => ({ issue, at: nearestHolder(issue.path, (path) => order.get(path)) ?? order.size }));
  return placed.sort((a, b) => a.at - b.at).map(({ issue }) => issue);
}

/** What is known of the path, or else of the nearest object or list around it. */
export function nearestHolder<T>(path: string, known: (path: string) => T | undefined): T | undefined {
  const steps = stepsOf(path) ?? [];
  for (let length = steps.length; length >= 0; length -= 1) {
    const found = known(pathText(steps.slice(0, length)));
    if (found !== undefined) return found;
  }
  return undefined;
}

function number(value: JsonValue, steps: readonly (string | number)[], order: Map<string, number>): void {
  order.set(pathText(steps), order.size);
  if (isList(value)) for (const [place, inner] of value.entries()) number(inner, [...steps, place], order);
  else if (isObject(value)) for (const [key, inner] of Object.entries(value)) number(inner, [...steps, key], order);
}
