import { crossIssues } from "./crossChecks/crossChecks.ts";
import { isObject } from "./file.ts";
import type { JobFile, JsonValue } from "./file.ts";
import type { JobIssue } from "./issue.ts";
import { foundText } from "./issue.ts";
import { jobSchema } from "./job.ts";
import type { Job } from "./job.ts";
import { migrate } from "./migrations.ts";
import { inFileOrder, nearestHolder } from "./reading/fileOrder.ts";
import { fieldIssues } from "./reading/fieldIssues.ts";
import { readJson } from "./reading/json.ts";
import { TEXT_LIMIT, overLimit } from "./reading/limits.ts";

export type JobReading =
  | { readonly ok: true; readonly job: Job; readonly file: JobFile }
  | { readonly ok: false; readonly issues: readonly JobIssue[] };

/**
 * Reads the text of a job file: the job in SI numbers with the file as typed, or every issue at once, in the file's
 * order, each with its line. Never throws.
 */
export function readJob(text: string): JobReading {
  if (text.length > TEXT_LIMIT) {
    const wants = `a job file of at most ${TEXT_LIMIT} characters; this one has ${text.length}`;
    return { ok: false, issues: [{ code: "limit", path: "", found: "", wants, example: "" }] };
  }
  const json = readJson(text.startsWith(BYTE_ORDER_MARK) ? text.slice(BYTE_ORDER_MARK.length) : text);
  if (!json.ok) return { ok: false, issues: [json.issue] };
  const read = readJobValue(json.value);
  if (read.ok && json.repeated.length === 0) return read;
  const issues = inFileOrder(json.value, [...json.repeated, ...(read.ok ? [] : read.issues)]);
  return { ok: false, issues: issues.map((issue) => withLine(issue, json.lineOf)) };
}

/** Reads a job from JSON that is already parsed. Never throws on what JSON can hold. */
export function readJobValue(value: unknown): JobReading {
  const limit = overLimit(value);
  if (limit !== undefined) return { ok: false, issues: [limit] };
  const raw = value as JsonValue;
  if (!isObject(raw)) {
    const example = '{ "format": "cornerpost-job", … }';
    return { ok: false, issues: [{ code: "type", path: "", found: foundText(value), wants: "a job file, which is one object in { }", example }] };
  }
  const migrated = migrate(raw);
  if (!migrated.ok) return { ok: false, issues: [migrated.issue] };
  const { file } = migrated;
  const parsed = jobSchema.safeParse(file);
  const issues = [...(parsed.success ? [] : fieldIssues(file, parsed.error.issues)), ...crossIssues(file)];
  if (parsed.success && issues.length === 0) return { ok: true, job: parsed.data, file };
  return { ok: false, issues: inFileOrder(file, issues) };
}

const BYTE_ORDER_MARK = "\uFEFF";

/** A field that is not there has the line of the object that should hold it. */
function withLine(issue: JobIssue, lineOf: (path: string) => number | undefined): JobIssue {
  const line = nearestHolder(issue.path, lineOf);
  return line === undefined ? issue : { ...issue, line };
}
