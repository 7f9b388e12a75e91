import type { z } from "zod";
import { valueAt } from "../file.ts";
import type { JsonObject, JsonValue } from "../file.ts";
import { foundText } from "../issue.ts";
import type { IssueCode, JobIssue } from "../issue.ts";
import { jobSchema } from "../job.ts";
import { pathText } from "../path.ts";
import type { FieldProblem } from "../schema/fields.ts";
import { nearest } from "./nearest.ts";
import { exampleOf, fieldNames, schemaAt, wantedBy } from "./schemaAt.ts";

/** What the schema, a job file's or `root`, says about each field by itself, in the file's own words. */
export function fieldIssues(
  raw: JsonObject,
  issues: readonly z.core.$ZodIssue[],
  root: z.core.$ZodType = jobSchema,
): readonly JobIssue[] {
  return issues.flatMap((issue) =>
    issue.code === "unrecognized_keys" ? unknownFields(raw, issue, root) : [fieldIssue(raw, issue, root)],
  );
}

function unknownFields(raw: JsonObject, issue: z.core.$ZodIssueUnrecognizedKeys, root: z.core.$ZodType): readonly JobIssue[] {
  const schema = schemaAt(root, issue.path);
  const known = schema === undefined ? [] : fieldNames(schema);
  return issue.keys.map((key) => ({
    code: "unknown field",
    path: pathText([...issue.path, key]),
    found: foundText(valueAt(raw, [...stepsIn(issue.path), key])),
    wants: `one of ${known.join(", ")}`,
    example: JSON.stringify(nearest(key, known) ?? ""),
  }));
}

function fieldIssue(raw: JsonObject, issue: z.core.$ZodIssue, root: z.core.$ZodType): JobIssue {
  const found = valueAt(raw, stepsIn(issue.path));
  const path = pathText(issue.path);
  const at = { path, found: foundText(found) };
  if (issue.code === "invalid_key") {
    return { ...at, code: "text", wants: "a name of letters, digits, spaces and hyphens, starting with a letter, 40 at most", example: '"wall"' };
  }
  const schema = schemaAt(root, issue.path) ?? root;
  const said = issue.code === "custom" ? (issue.params as FieldProblem | undefined) : undefined;
  const usual = { ...at, wants: wants(issue, wantedBy(schema), said), example: JSON.stringify(exampleOf(schema)) };
  if (said !== undefined) return { ...usual, code: said.code, example: JSON.stringify(said.example) };
  return { ...usual, code: codeOf(issue, found) };
}

function wants(issue: z.core.$ZodIssue, wanted: string, said: FieldProblem | undefined): string {
  if (said !== undefined) return `${wanted}; this ${asClause(said)}`;
  if (issue.code === "too_small") return `${wanted}, at least ${counted(issue.minimum, issue.origin)}`;
  if (issue.code === "too_big") return `${wanted}, at most ${counted(issue.maximum, issue.origin)}`;
  return issue.code === "invalid_format" ? `${wanted}: ${issue.message}` : wanted;
}

/** The reason as the end of a sentence that starts with "this": a parser's reason stands on its own. */
function asClause({ code, reason }: FieldProblem): string {
  return code === "unit" ? `cannot be read, ${reason}` : reason;
}

function counted(limit: number | bigint, origin: string): string {
  if (origin === "string") return `${limit} ${limit === 1 ? "letter" : "letters"}`;
  return origin === "array" ? `${limit} ${limit === 1 ? "entry" : "entries"}` : `${limit}`;
}

function codeOf(issue: z.core.$ZodIssue, found: JsonValue | undefined): IssueCode {
  if (found === undefined) return "missing";
  if (issue.code === "invalid_value") return "choice";
  if (issue.code === "invalid_format") return "text";
  if (issue.code !== "too_small" && issue.code !== "too_big") return "type";
  if (issue.origin === "array") return "count";
  return issue.origin === "string" ? "text" : "number";
}

function stepsIn(path: readonly PropertyKey[]): readonly (string | number)[] {
  return path.map((step) => (typeof step === "symbol" ? String(step) : step));
}
