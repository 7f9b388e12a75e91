import type { JobIssue } from "../issue.ts";
import { pathText } from "../path.ts";

/** Far above any real job; keeps a wrong file from stopping the program. */
export const TEXT_LIMIT = 2_000_000;
export const DEPTH_LIMIT = 32;
const VALUES_LIMIT = 200_000;

/** The first thing that makes a value too large or too deep to be read, or that JSON cannot hold. */
export function overLimit(root: unknown): JobIssue | undefined {
  const waiting: { readonly value: unknown; readonly steps: readonly (string | number)[] }[] = [{ value: root, steps: [] }];
  let seen = 0;
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    const { value, steps } = next;
    seen += 1;
    if (seen > VALUES_LIMIT) return limitIssue([], `at most ${VALUES_LIMIT} values`);
    if (typeof value !== "object" || value === null) {
      if (isPlain(value)) continue;
      return limitIssue(steps, "text, a finite number, true, false, null, a list or an object");
    }
    if (steps.length >= DEPTH_LIMIT) return limitIssue(steps, `at most ${DEPTH_LIMIT} brackets inside each other`);
    if (Object.hasOwn(value, "__proto__")) return limitIssue([...steps, "__proto__"], "a field with another name");
    const entries: readonly [string | number, unknown][] = Array.isArray(value) ? [...value.entries()] : Object.entries(value);
    for (const [step, inner] of entries) waiting.push({ value: inner, steps: [...steps, step] });
  }
  return undefined;
}

function isPlain(value: unknown): boolean {
  return value === null || typeof value === "string" || typeof value === "boolean" || Number.isFinite(value);
}

function limitIssue(steps: readonly (string | number)[], wants: string): JobIssue {
  return { code: "limit", path: pathText(steps), found: "", wants, example: "" };
}
