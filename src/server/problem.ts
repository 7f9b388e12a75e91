import type { ApiError, ErrorCode } from "../job/api.ts";
import { ERROR_STATUS } from "../job/api.ts";
import type { JsonValue } from "../job/file.ts";
import type { JobIssue } from "../job/issue.ts";

/** Thrown by a route, and answered with its body and the status of its code. */
export class Problem extends Error {
  readonly body: ApiError;

  constructor(code: ErrorCode, path = "", facts: Readonly<Record<string, JsonValue>> = {}) {
    super(path === "" ? code : `${code} at ${path}`);
    this.name = "Problem";
    this.body = { code, path, facts };
  }

  get status() {
    return ERROR_STATUS[this.body.code];
  }
}

/** Gives the value, or throws the problem "not_found". */
export function found<T>(value: T | undefined, what: string): T {
  if (value === undefined) throw new Problem("not_found", "", { what });
  return value;
}

/** Issues as facts of a problem. */
export function issueFacts(issues: readonly JobIssue[]): readonly JsonValue[] {
  return issues.map((issue) => ({ ...issue }));
}
