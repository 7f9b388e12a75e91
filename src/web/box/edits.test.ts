import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { DEMO_JOBS } from "../../../test/demoJobs.ts";
import type { JobFile } from "../../job/file.ts";
import { readJobValue } from "../../job/read.ts";
import { typedFile } from "../state/typedFile.ts";
import { copyOf, type Draft, insertAt, moveAt, putAt } from "./edits.ts";
import { idsOf, nextId } from "./ids.ts";
import { OPENING_STARTERS } from "./starters.ts";
import { addBuildUp, addItem, addOpening, addPartition, duplicateThing, removalWords, removeThing, renameBuildUp, usesOf } from "./things.ts";

const edited = (file: JobFile, recipe: (draft: Draft) => void): JobFile => {
  const draft = copyOf(file) as Draft;
  recipe(draft);
  return draft;
};
const issuesOf = (file: JobFile) => {
  const read = readJobValue(file);
  return read.ok ? [] : read.issues;
};
/** Each partition of a job with the openings that are cut in it; those with none left out. */
const partitionsCut = (demo: JobFile): readonly (readonly [id: string, openings: readonly string[]])[] => {
  const { partitions = [], openings = [] } = typedFile(demo);
  return partitions.map(({ id }) => [id, openings.filter(({ face }) => face === id).map((one) => one.id)] as const).filter(([, cut]) => cut.length > 0);
};
const [{ file }] = DEMO_JOBS as [(typeof DEMO_JOBS)[number]];

describe("edits at a place", () => {
  it("put, make groups on the way, and take away", () => {
    expect(edited({}, (draft) => putAt(draft, ["a", "b"], "1 in"))).toEqual({ a: { b: "1 in" } });
    expect(edited({ a: { b: "1 in" } }, (draft) => putAt(draft, ["a", "b"], undefined))).toEqual({ a: {} });
    expect(edited({ a: 1 }, (draft) => putAt(draft, ["x", "y"], undefined))).toEqual({ a: 1 });
    expect(edited({ a: ["x", "y"] }, (draft) => putAt(draft, ["a", 0], undefined))).toEqual({ a: ["y"] });
  });

  it("insert into lists, and make the first", () => {
    expect(edited({}, (draft) => insertAt(draft, ["a", "list"], "x"))).toEqual({ a: { list: ["x"] } });
    expect(edited({ a: ["x", "z"] }, (draft) => insertAt(draft, ["a"], "y", 1))).toEqual({ a: ["x", "y", "z"] });
  });

  it("move back and forth to where it was, and never out of the list", () => {
    const list = fc.uniqueArray(fc.string(), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(list, fc.nat(9), fc.nat(9), (a, from, to) => {
        const start = { a };
        const there = edited(start, (draft) => moveAt(draft, ["a"], from % a.length, to));
        if (to >= a.length) expect(there).toEqual(start);
        else expect(edited(there, (draft) => moveAt(draft, ["a"], to, from % a.length))).toEqual(start);
      }),
      { seed: 11 },
    );
  });
});

describe("things in the box", () => {
  it.each(OPENING_STARTERS.map(({ kind }) => kind))("a new %s can be read, in both systems", (kind) => {
    for (const system of ["metric", "imperial"] as const) {
      expect(issuesOf(edited(file, (draft) => addOpening(draft, kind, "left", system)))).toEqual([]);
    }
  });

  it("new and copied things get ids of their own", () => {
    const after = edited(file, (draft) => {
      addItem(draft, "metric");
      addItem(draft, "imperial");
      duplicateThing(draft, "openings", "D1");
    });
    expect(issuesOf(after)).toEqual([]);
    expect(idsOf(after).size).toBe(idsOf(file).size + 3);
  });

  it("a partition brings its room, and takes it away again", () => {
    for (const { file: demo } of DEMO_JOBS) {
      const before = demo["partitions"];
      const added = edited(demo, (draft) => {
        const id = addPartition(draft, "5000 mm");
        expect(issuesOf(draft).filter(({ code }) => code !== "no room" && code !== "partition")).toEqual([]);
        removeThing(draft, "partitions", id);
      });
      expect(added["rooms"]).toEqual(demo["rooms"]);
      expect(added["partitions"] ?? []).toEqual(before ?? []);
    }
  });

  it("a partition takes the openings in it along, and says which", () => {
    const cut = DEMO_JOBS.flatMap(({ file: demo }) => partitionsCut(demo).map(([id, openings]) => ({ demo, id, openings })));
    expect(cut.length).toBeGreaterThan(0);
    for (const { demo, id, openings } of cut) {
      const words = removalWords(demo, "partitions", id);
      for (const opening of openings) expect(words).toContain(opening);
      const rated = edited(demo, (draft) => putAt(draft, ["fire", "rated"], [{ face: id, rating: "60 min", from: "both", design: "as listed" }]));
      const after = edited(rated, (draft) => removeThing(draft, "partitions", id));
      expect(JSON.stringify(after)).not.toContain(`"face":"${id}"`);
      expect(idsOf(after).size).toBe(idsOf(demo).size - openings.length - 2);
    }
    expect(removalWords(file, "openings", "D1")).toBe("Remove D1");
  });

  it("a build-up renamed is renamed wherever it is used", () => {
    const name = "wall";
    const bunk = DEMO_JOBS.map((demo) => demo.file).find((one) => usesOf(one, name).length > 2);
    if (bunk === undefined) return expect.unreachable();
    const after = edited(bunk, (draft) => expect(renameBuildUp(draft, name, "thick wall")).toBe(true));
    expect(issuesOf(after)).toEqual([]);
    expect(usesOf(after, name)).toEqual([]);
    expect(usesOf(after, "thick wall").map(({ where }) => where)).toEqual(usesOf(bunk, name).map(({ where }) => where));
    expect(Object.keys(after["buildUps"] as object)).toEqual(Object.keys(bunk["buildUps"] as object).map((one) => (one === name ? "thick wall" : one)));
  });

  it("a build-up takes no name that is taken or will not do", () => {
    const names = Object.keys(file["buildUps"] as object);
    for (const to of [names[1] ?? "", "", "2 in wall", "a/b", "x".repeat(41)]) {
      edited(file, (draft) => expect(renameBuildUp(draft, names[0] ?? "", to)).toBe(false));
    }
  });

  it("a copied build-up has a free name and the same layers", () => {
    const name = Object.keys(file["buildUps"] as object)[0] ?? "";
    const after = edited(file, (draft) => expect(addBuildUp(draft, name)).toBe(`${name} 2`));
    expect((after["buildUps"] as Draft)[`${name} 2`]).toEqual((file["buildUps"] as Draft)[name]);
    expect(issuesOf(after)).toEqual([]);
  });

  it("ids count on, and pass over what is taken in any capitals", () => {
    const of = (...ids: string[]): JobFile => ({ openings: ids.map((id) => ({ id })) });
    expect(nextId(of("D1", "d2"), "D1")).toBe("D3");
    expect(nextId(of("IN9"), "IN9")).toBe("IN10");
    expect(nextId(of("rack"), "rack")).toBe("rack-2");
    expect(nextId(of(), "W1")).toBe("W1");
  });
});
