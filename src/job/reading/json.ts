import type { JsonObject, JsonValue } from "../file.ts";
import { foundText } from "../issue.ts";
import type { JobIssue } from "../issue.ts";
import { pathText } from "../path.ts";
import { DEPTH_LIMIT } from "./limits.ts";
import { lineCounter } from "./lines.ts";

export type JsonReading =
  | {
      readonly ok: true;
      readonly value: JsonValue;
      /** The line where the value of a path starts; undefined where there is none. */
      readonly lineOf: (path: string) => number | undefined;
      /** Fields written twice in one object; the last one is in the value. */
      readonly repeated: readonly JobIssue[];
    }
  | { readonly ok: false; readonly issue: JobIssue };

/**
 * Reads JSON (RFC 8259) and remembers where each value stands, so that an issue can name its line. The JSON reader of
 * the language does neither that nor name the place of a mistake in every browser.
 */
export function readJson(text: string): JsonReading {
  const cursor: Cursor = { text, at: 0, steps: [], offsets: new Map(), repeated: [] };
  const lines = lineCounter(text);
  try {
    const value = readValue(cursor);
    skipSpace(cursor);
    if (cursor.at < text.length) throw mistake(cursor, "nothing after the closing brace", "");
    const lineOf = (path: string): number | undefined => {
      const offset = cursor.offsets.get(path);
      return offset === undefined ? undefined : lines(offset).line;
    };
    return { ok: true, value, lineOf, repeated: cursor.repeated };
  } catch (error) {
    if (error instanceof Mistake) return { ok: false, issue: { ...error.issue, ...lines(cursor.at) } };
    throw error;
  }
}

interface Cursor {
  readonly text: string;
  at: number;
  readonly steps: (string | number)[];
  readonly offsets: Map<string, number>;
  readonly repeated: JobIssue[];
}

class Mistake extends Error {
  readonly issue: JobIssue;
  constructor(issue: JobIssue) {
    super(issue.wants);
    this.issue = issue;
  }
}

function mistake(cursor: Cursor, wants: string, example: string): Mistake {
  const rest = cursor.text.slice(cursor.at, cursor.at + 24).split(/[\r\n]/, 1)[0] ?? "";
  const end = cursor.at >= cursor.text.length ? "the end of the file" : "the end of the line";
  const found = rest === "" ? end : foundText(rest);
  return new Mistake({ code: "json", path: pathText(cursor.steps), found, wants, example });
}

function readValue(cursor: Cursor): JsonValue {
  skipSpace(cursor);
  cursor.offsets.set(pathText(cursor.steps), cursor.at);
  const letter = cursor.text[cursor.at];
  if (letter === "{") return readObject(cursor);
  if (letter === "[") return readArray(cursor);
  if (letter === '"') return readText(cursor);
  const word = take(cursor, WORD);
  if (word !== undefined) return JSON.parse(word) as JsonValue;
  throw mistake(cursor, "a value: text in double quotes, a number, true, false, null, { or [", '"2 in"');
}

function readObject(cursor: Cursor): JsonObject {
  const fields = new Map<string, JsonValue>();
  readMembers(cursor, "}", () => {
    if (cursor.text[cursor.at] !== '"') throw mistake(cursor, "a field's name in double quotes", '"units": "metric"');
    const key = readText(cursor);
    skipSpace(cursor);
    if (cursor.text[cursor.at] !== ":") throw mistake(cursor, "a colon after the field's name", '"units": "metric"');
    cursor.at += 1;
    inside(cursor, key, () => {
      const twice = fields.has(key);
      const value = readValue(cursor);
      fields.set(key, value);
      if (!twice) return;
      const path = pathText(cursor.steps);
      cursor.repeated.push({ code: "repeated field", path, found: foundText(value), wants: "each field once", example: "" });
    });
  });
  return Object.fromEntries(fields);
}

function readArray(cursor: Cursor): readonly JsonValue[] {
  const values: JsonValue[] = [];
  readMembers(cursor, "]", () => inside(cursor, values.length, () => values.push(readValue(cursor))));
  return values;
}

/** Reads what stands between the brackets, parted by commas. */
function readMembers(cursor: Cursor, end: "}" | "]", readMember: () => void): void {
  if (cursor.steps.length >= DEPTH_LIMIT) throw mistake(cursor, `at most ${DEPTH_LIMIT} brackets inside each other`, "");
  cursor.at += 1;
  skipSpace(cursor);
  if (cursor.text[cursor.at] === end) {
    cursor.at += 1;
    return;
  }
  for (;;) {
    readMember();
    skipSpace(cursor);
    const letter = cursor.text[cursor.at];
    if (letter !== end && letter !== ",") {
      const afterText = cursor.text[cursor.at - 1] === '"';
      throw mistake(cursor, `a comma or ${end}${afterText ? INCH_MARK : ""}`, afterText ? '"7\' 8-5/8 in"' : "");
    }
    cursor.at += 1;
    if (letter === end) return;
    skipSpace(cursor);
    if (cursor.text[cursor.at] === end) throw mistake(cursor, `no comma before ${end}`, "");
  }
}

/** Steps into a field or a list's place and out again. A mistake keeps the steps: they tell where it is. */
function inside(cursor: Cursor, step: string | number, read: () => unknown): void {
  cursor.steps.push(step);
  read();
  cursor.steps.pop();
}

function readText(cursor: Cursor): string {
  const text = take(cursor, TEXT);
  if (text !== undefined && cursor.text[cursor.at] === '"') {
    cursor.at += 1;
    return JSON.parse(`${text}"`) as string;
  }
  throw mistake(cursor, 'text that ends with a double quote on its own line; \\ only as \\" \\\\ \\/ \\b \\f \\n \\r \\t \\u0000', '"2 in"');
}

function skipSpace(cursor: Cursor): void {
  take(cursor, SPACE);
}

/** Takes what the pattern finds at the cursor; undefined where it finds nothing there. */
function take(cursor: Cursor, pattern: RegExp): string | undefined {
  pattern.lastIndex = cursor.at;
  const found = pattern.exec(cursor.text)?.[0];
  if (found !== undefined) cursor.at += found.length;
  return found;
}

const INCH_MARK = '; an inch mark inside a text is written \\" or in';
const SPACE = /[ \t\n\r]*/y;
const WORD = /(?:true|false|null|-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?)(?![\w.+-])/y;
/** The text up to where it stops to be one. Written as runs between escapes, so that long texts need no deep search. */
const TEXT = /"[^"\\\u0000-\u001f]*(?:\\(?:["\\/bfnrt]|u[\da-fA-F]{4})[^"\\\u0000-\u001f]*)*/y;
