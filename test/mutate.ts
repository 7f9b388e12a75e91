import type { JsonValue } from "../src/job/file.ts";

/** A source of numbers from 0 to 1 that gives the same row for the same seed (mulberry32, public domain). */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** A changed job file, and in words what was done to it. */
export interface Mutation {
  readonly said: string;
  readonly file: JsonValue;
}

/** Does one to three things at random places of a JSON value. `others` gives values from elsewhere to put in. */
export function mutate(file: JsonValue, others: readonly JsonValue[], random: () => number): Mutation {
  let value = file;
  const said: string[] = [];
  const times = 1 + Math.floor(random() * 3);
  for (let at = 0; at < times; at += 1) {
    const paths = pathsOf(value).filter((path) => path.length > 0);
    const path = pick(paths, random);
    const { name, change } = pick(WAYS, random);
    const put = change(valueAt(value, path), random, others);
    value = replaced(value, path, put);
    said.push(`${name} at ${path.join(".")}: ${put.kind === "drop" ? "gone" : JSON.stringify(put.values).slice(0, 200)}`);
  }
  return { said: said.join("; "), file: value };
}

type Path = readonly (string | number)[];

/** What stands in a place afterwards: nothing, or values (more than one only counts in a list). */
type Put = { readonly kind: "drop" } | { readonly kind: "put"; readonly values: readonly JsonValue[] };

interface Way {
  readonly name: string;
  readonly change: (value: JsonValue, random: () => number, others: readonly JsonValue[]) => Put;
}

const JUNK: readonly JsonValue[] = [
  null, true, false, 0, -1, 1e308, 1.5, "", " ", "0", "-1 mm", "NaN", "Infinity m", "1e400 m", "<b>&amp;</b>", "=1+1", "\u0000", "\u202Eabc",
  "__proto__", "constructor", "left", "roof", "P1", "D1", [], {}, [[]], { id: "x" }, "0 mm", "0.001 mm", "20 m", "19.999 m", "12 in", "6' 11-15/16\"",
  "1970-01-01", "2199-12-31", "2027-02-30", "99 °C", "-80 °C", "100 %", "0 %", "1 h", "24 h", "0.0001 h",
];

const WAYS: readonly Way[] = [
  { name: "delete", change: () => ({ kind: "drop" }) },
  { name: "junk", change: (_, random) => one(pick(JUNK, random)) },
  { name: "from elsewhere", change: (_, random, others) => one(pick(others, random)) },
  { name: "double", change: (value) => ({ kind: "put", values: [value, value] }) },
  { name: "scale", change: (value, random) => one(scaled(value, pick(FACTORS, random))) },
  { name: "nudge", change: (value, random) => one(scaled(value, 0.8 + 0.4 * random())) },
  { name: "empty", change: (value) => one(emptied(value)) },
  { name: "turn around", change: (value) => one(Array.isArray(value) ? [...(value as readonly JsonValue[])].reverse() : value) },
];

const FACTORS = [0, -1, 0.001, 0.01, 0.1, 0.5, 0.9, 1.1, 1.5, 2, 3, 10, 100, 1000];

function one(value: JsonValue): Put {
  return { kind: "put", values: [value] };
}

/** Every number in a text or value times a factor. */
function scaled(value: JsonValue, factor: number): JsonValue {
  if (typeof value === "number") return value * factor;
  if (typeof value === "string") return value.replace(/\d+(\.\d+)?/g, (digits) => String(Number((Number(digits) * factor).toPrecision(6))));
  return value;
}

function emptied(value: JsonValue): JsonValue {
  if (typeof value === "string") return "";
  if (Array.isArray(value)) return [];
  return typeof value === "object" && value !== null ? {} : null;
}

/** Paths to every value inside, depth first. */
export function pathsOf(value: JsonValue, at: Path = []): readonly Path[] {
  if (typeof value !== "object" || value === null) return [at];
  const inside = Array.isArray(value)
    ? (value as readonly JsonValue[]).flatMap((each, index) => pathsOf(each, [...at, index]))
    : Object.entries(value).flatMap(([key, each]) => pathsOf(each, [...at, key]));
  return [at, ...inside];
}

export function valueAt(value: JsonValue, path: Path): JsonValue {
  return path.reduce<JsonValue>((at, step) => (at as Readonly<Record<string | number, JsonValue>>)[step]!, value);
}

function replaced(value: JsonValue, path: Path, put: Put): JsonValue {
  const [step, ...rest] = path;
  if (step === undefined) return value;
  if (Array.isArray(value)) {
    return (value as readonly JsonValue[]).flatMap((each, index) => {
      if (index !== step) return [each];
      if (rest.length > 0) return [replaced(each, rest, put)];
      return put.kind === "drop" ? [] : put.values;
    });
  }
  const entries = Object.entries(value as Readonly<Record<string, JsonValue>>).flatMap(([key, each]): [string, JsonValue][] => {
    if (key !== step) return [[key, each]];
    if (rest.length > 0) return [[key, replaced(each, rest, put)]];
    return put.kind === "drop" ? [] : put.values.slice(0, 1).map((single) => [key, single]);
  });
  return Object.fromEntries(entries);
}

function pick<T>(list: readonly T[], random: () => number): T {
  return list[Math.floor(random() * list.length)]!;
}
