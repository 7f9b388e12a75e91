export const ISSUE_CODES = [
  // The file as a file.
  "json", "repeated field", "limit", "format", "version",
  // One field.
  "missing", "type", "unknown field", "choice", "text", "count", "number", "unit", "range", "reference", "date",
  // Fields against each other.
  "duplicate", "unknown name", "build-up", "rooms", "opening", "partition", "no room", "contradiction",
] as const;
export type IssueCode = (typeof ISSUE_CODES)[number];

/** Something in a job file that has no meaning, or none yet. Engineering answers are findings, never issues. */
export interface JobIssue {
  readonly code: IssueCode;
  /** Where: `openings[2].at.up`; "" for the file as a whole. */
  readonly path: string;
  /** What stands there, as JSON writes it, at most 80 characters; "" where nothing stands there. */
  readonly found: string;
  /** What is wanted there, in plain words. */
  readonly wants: string;
  /** A form that would do, as JSON writes it; "" where no single one can be named. */
  readonly example: string;
  /** Counted from 1; absent where the job did not come as text. */
  readonly line?: number;
  /** Counted from 1; only where the text is not JSON. */
  readonly column?: number;
}

/** The issue as one plain sentence. */
export function issueText(issue: JobIssue): string {
  const sentence = SENTENCES[issue.code] ?? wrongValue;
  return `${placeOf(issue)}${sentence(issue)}${issue.example === "" ? "" : `, for example ${issue.example}`}.`;
}

type Sentence = (issue: JobIssue) => string;

const wrongValue: Sentence = ({ path, found, wants }) =>
  `${path === "" ? "the file" : path} is ${found === "" ? "missing" : found}; wanted: ${wants}`;

const SENTENCES: Readonly<Partial<Record<IssueCode, Sentence>>> = {
  json: ({ found, wants }) => `the text is not JSON: found ${found}; wanted: ${wants}`,
  "repeated field": ({ path }) => `${path} is written twice; wanted: each field once`,
  limit: ({ path, wants }) => `${path === "" ? "the file" : path} is too much; wanted: ${wants}`,
  "unknown field": ({ path, wants }) => `${path} is not a field of a job file; wanted: ${wants}`,
};

function placeOf({ line, column }: JobIssue): string {
  if (line === undefined) return "";
  return column === undefined ? `line ${line}: ` : `line ${line}, column ${column}: `;
}

/** A value as JSON writes it, cut at 80 characters; "" for nothing. */
export function foundText(value: unknown): string {
  if (value === undefined) return "";
  const text = typeof value === "string" ? JSON.stringify(value.slice(0, LONGEST)) : JSON.stringify(value);
  return text.length <= LONGEST ? text : `${text.slice(0, LONGEST - 1)}…`;
}

const LONGEST = 80;
