import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { DEMO_JOBS } from "../../test/demoJobs.ts";
import { isList, isObject, valueAt } from "./file.ts";
import type { JobFile, JsonValue } from "./file.ts";
import { changesBetween, compareFiles, contentOf, mergeFiles } from "./merge.ts";
import type { Change } from "./merge.ts";
import { pathText, stepsOf } from "./path.ts";
import { readJob } from "./read.ts";

const RUNS = { seed: 20261005, numRuns: 400 };

const leaf = fc.oneof(fc.constantFrom<JsonValue>(null, true, 0, 1, "2 in", ""), fc.constant<JsonValue>([]), fc.constant<JsonValue>({}));
/** Files with nested objects, rows with ids, rows without, and lists of texts; small alphabets, so that sides often meet. */
const { value } = fc.letrec<{ value: JsonValue }>((tie) => ({
  value: fc.oneof(
    { maxDepth: 3, withCrossShrink: true },
    leaf,
    fc.dictionary(fc.constantFrom("a", "b", "at", "odd key"), tie("value"), { maxKeys: 4 }),
    rowsOf(tie("value")),
    fc.array(tie("value"), { maxLength: 4 }),
  ),
}));
const object = fc.dictionary(fc.constantFrom("a", "b", "c", "d"), value, { maxKeys: 4 }) as fc.Arbitrary<JobFile>;

function rowsOf(inner: fc.Arbitrary<JsonValue>): fc.Arbitrary<JsonValue> {
  const row = fc.record({ id: fc.constantFrom("p", "q", "r", "s", "t"), x: inner }, { requiredKeys: ["id"] });
  return fc.uniqueArray(row, { selector: ({ id }) => id, maxLength: 5 });
}

/** A side that keeps most of the base, as people do. */
const side = (base: JobFile): fc.Arbitrary<JobFile> =>
  fc.infiniteStream(fc.tuple(fc.nat(9), value)).map((stream) => edited(base, stream) as JobFile);

function edited(from: JsonValue, stream: fc.Stream<[number, JsonValue]>): JsonValue {
  const [dice, other] = drawn(stream);
  if (isObject(from)) {
    const kept = Object.entries(from).flatMap(([name, inner]) => {
      const [cut] = drawn(stream);
      return cut === 0 && name !== "id" ? [] : [[name, name === "id" ? inner : edited(inner, stream)] as const];
    });
    return Object.fromEntries(dice === 0 ? [...kept, ["new", other]] : kept);
  }
  if (isList(from)) {
    const kept = from.flatMap((inner) => (drawn(stream)[0] === 0 ? [] : [edited(inner, stream)]));
    if (dice === 1) return kept.toReversed();
    return dice === 2 ? [...kept, { id: `n${JSON.stringify(other).length % 3}`, x: other }] : kept;
  }
  return dice <= 1 ? other : from;
}

/** The next of a stream that has no end. */
function drawn<T>(stream: fc.Stream<T>): T {
  const next = stream.next();
  if (next.done === true) throw new Error("the stream ended");
  return next.value;
}

const threeSides = object.chain((base) => fc.tuple(fc.constant(base), side(base), side(base)));

describe("merging three files", () => {
  it("gives a side back where the other changed nothing, and where both did the same", () => {
    fc.assert(
      fc.property(object.chain((base) => fc.tuple(fc.constant(base), side(base))), ([base, mine]) => {
        for (const sides of [[mine, base], [base, mine], [mine, mine]] as const) {
          expect(mergeFiles(base, ...sides)).toEqual({ ok: true, file: mine });
        }
        expect(compareFiles(base, mine, mine).conflicts).toEqual([]);
        expect(changesBetween(base, base)).toEqual([]);
      }),
      RUNS,
    );
  });

  it("gives the same whoever is called mine", () => {
    fc.assert(
      fc.property(threeSides, fc.boolean(), ([base, mine, theirs], takeMine) => {
        const paths = compareFiles(base, mine, theirs).conflicts.map(({ path }) => path);
        const all = (choice: "mine" | "theirs") => Object.fromEntries(paths.map((path) => [path, choice]));
        const one = mergeFiles(base, mine, theirs, all(takeMine ? "mine" : "theirs"));
        const other = mergeFiles(base, theirs, mine, all(takeMine ? "theirs" : "mine"));
        expect(one.ok).toBe(true);
        expect(one).toEqual(other);
      }),
      RUNS,
    );
  });

  it("loses nothing: each change of a side stands in the merged file, or gave way in a conflict that a person settled", () => {
    fc.assert(
      fc.property(threeSides, fc.infiniteStream(fc.boolean()), ([base, mine, theirs], coins) => {
        const { conflicts, ...changes } = compareFiles(base, mine, theirs);
        const choices = Object.fromEntries(conflicts.map(({ path }) => [path, drawn(coins) ? ("mine" as const) : ("theirs" as const)]));
        const merged = mergeFiles(base, mine, theirs, choices);
        if (!merged.ok) throw new Error("every conflict was settled");
        for (const who of ["mine", "theirs"] as const) {
          for (const change of changes[who]) {
            if ((choices[change.path] ?? who) === who) expect(found(merged.file, change)).toEqual(change.after);
          }
        }
        const touched = new Set([...changes.mine, ...changes.theirs].map(({ path }) => path));
        for (const { path } of conflicts) expect(touched.has(path)).toBe(true);
      }),
      RUNS,
    );
  });

  it("lets changes of different fields commute", () => {
    fc.assert(
      fc.property(object, value, value, fc.boolean(), (base, x, y, gone) => {
        const mine = { ...base, a: x };
        const theirs = gone ? without(base, "b") : { ...base, b: y };
        expect(compareFiles(base, mine, theirs).conflicts).toEqual([]);
        expect(mergeFiles(base, mine, theirs)).toEqual({ ok: true, file: gone ? without(mine, "b") : { ...mine, b: y } });
      }),
      RUNS,
    );
  });

  it("gives no file as long as a conflict is open, and lists what is open", () => {
    const [base, mine, theirs] = [{ a: 1, b: 1 }, { a: 2, b: 2 }, { a: 3, b: 3 }];
    expect(mergeFiles(base, mine, theirs, { a: "mine" })).toEqual({ ok: false, open: [{ path: "b", base: 1, mine: 2, theirs: 3 }] });
    expect(mergeFiles(base, mine, theirs, { a: "mine", b: "theirs" })).toEqual({ ok: true, file: { a: 2, b: 3 } });
  });
});

describe("rows with ids", () => {
  const row = (id: string, x = 0): JsonValue => ({ id, x });
  const [p, q, r] = [row("p"), row("q"), row("r")];

  it("are matched by id: one side moves a row and adds one, the other changes and adds", () => {
    const merged = mergeFiles([p, q, r], [r, p, q, row("new")], [row("p", 7), q, row("also"), r]);
    expect(merged).toEqual({ ok: true, file: [r, row("p", 7), q, row("also"), row("new")] });
  });

  it("are in conflict where one side takes a row out that the other changed, and where both order them differently", () => {
    expect(compareFiles([p, q], [q], [row("p", 7), q]).conflicts).toEqual([{ path: "p", base: p, mine: undefined, theirs: row("p", 7) }]);
    const { conflicts } = compareFiles({ rows: [p, q, r] }, { rows: [q, p, r] }, { rows: [r, p, q] });
    expect(conflicts).toEqual([{ path: 'rows["order of rows"]', base: ["p", "q", "r"], mine: ["q", "p", "r"], theirs: ["r", "p", "q"] }]);
  });

  it("are one value where an id stands twice or is missing", () => {
    const [base, mine, theirs] = [[p, q], [p, p], [{ x: 1 }, q, r]];
    expect(compareFiles(base, mine, theirs).conflicts).toEqual([{ path: "", base, mine, theirs }]);
  });
});

describe("a job", () => {
  const { text, file } = DEMO_JOBS.find(({ file: one }) => isList(one["openings"]) && one["openings"].length > 1)!;
  const openings = file["openings"] as readonly { readonly id: string }[];

  it("takes an opening moved by one and a title and another opening changed by the other, and can still be read", () => {
    const mine = { ...file, openings: openings.map((one, at) => (at === 0 ? { ...one, note: "by Ann" } : one)) };
    const theirs = { ...file, job: { ...(file["job"] as object), title: "By Bob" }, openings: openings.toReversed() };
    const merged = mergeFiles(file, mine, theirs);
    if (!merged.ok) throw new Error("nothing met");
    expect(valueAt(merged.file, ["job", "title"])).toBe("By Bob");
    expect((merged.file as { openings: { id: string; note?: string }[] }).openings.map(({ id, note }) => [id, note])).toEqual(
      openings.toReversed().map(({ id }) => [id, id === openings[0]!.id ? "by Ann" : undefined]),
    );
    expect(readJob(JSON.stringify(mergeFiles(file, file, theirs))).ok).toBe(false);
    const plain = mergeFiles(file, file, theirs);
    expect(plain.ok && readJob(JSON.stringify(plain.file)).ok).toBe(true);
  });

  it("is compared by its text where the text is no JSON or writes a field twice", () => {
    expect(contentOf("{ not")).toBe("{ not");
    expect(contentOf('{"a":1,"a":2}')).toBe('{"a":1,"a":2}');
    expect(changesBetween(contentOf(text), contentOf("{ not"))).toEqual([{ path: "", before: contentOf(text), after: "{ not" }]);
  });

  it("with hostile names is merged as data", () => {
    const [base, mine, theirs] = ['{"__proto__":{"x":1},"constructor":1}', '{"__proto__":{"x":2},"constructor":1}', '{"__proto__":{"x":1},"constructor":2}'].map(contentOf) as [JsonValue, JsonValue, JsonValue];
    const merged = mergeFiles(base, mine, theirs, JSON.parse('{"__proto__":"theirs"}') as Record<string, "mine">);
    expect(merged.ok && JSON.stringify(merged.file)).toBe('{"__proto__":{"x":2},"constructor":2}');
    expect({}).not.toHaveProperty("x");
  });
});

function without(from: JobFile, name: string): JobFile {
  return Object.fromEntries(Object.entries(from).filter(([one]) => one !== name));
}

/** What stands at the path of a change; of an order, only what the change speaks of. */
function found(file: JsonValue, { path, after }: Change): JsonValue | undefined {
  const steps = stepsOf(path);
  if (steps === undefined) throw new Error(`no path: ${path}`);
  let at: JsonValue | undefined = file;
  for (const step of steps) {
    if (isList(at) && step === "order of rows") return at.map(idOf).filter((id) => isList(after) && after.includes(id));
    at = isList(at) && typeof step === "string" ? at.find((row) => idOf(row) === step) : valueAt(at, [step]);
  }
  expect(pathText(steps)).toBe(path);
  return at;
}

function idOf(row: JsonValue): string {
  const id = isObject(row) ? row["id"] : undefined;
  return typeof id === "string" ? id : "";
}
