import { describe, expect, it } from "vitest";
import { compareFiles, mergeFiles } from "../../job/merge.ts";
import { choose, chooseAll, openConflicts, openWords } from "./choices.ts";
import { pathWords } from "./pathWords.ts";
import { cutWords, isLong, valueWords } from "./valueWords.ts";

const base = { openings: [{ id: "D1", at: { along: "1 m", up: "0 m" } }], site: { wind: "40 m/s" } };
const mine = { openings: [{ id: "D1", at: { along: "2 m", up: "0 m" } }], site: { wind: "45 m/s" } };
const theirs = { openings: [{ id: "D1", at: { along: "3 m", up: "0 m" } }], site: { wind: "50 m/s" } };

describe("a conflict", () => {
  const { conflicts } = compareFiles(base, mine, theirs);

  it("is open until every place has a side, and then merges", () => {
    expect(conflicts.map(({ path }) => path)).toEqual(["openings.D1.at.along", "site.wind"]);
    const one = choose({}, "site.wind", "theirs");
    expect(openConflicts(conflicts, one).map(({ path }) => path)).toEqual(["openings.D1.at.along"]);
    expect(mergeFiles(base, mine, theirs, one).ok).toBe(false);
    const all = choose(one, "openings.D1.at.along", "mine");
    expect(openConflicts(conflicts, all)).toEqual([]);
    expect(mergeFiles(base, mine, theirs, all)).toEqual({ ok: true, file: { ...mine, site: { wind: "50 m/s" } } });
  });

  it("takes one side for all", () => {
    expect(mergeFiles(base, mine, theirs, chooseAll(conflicts, "theirs"))).toEqual({ ok: true, file: theirs });
    expect([openWords(0), openWords(1), openWords(3)]).toEqual([
      "Every place in conflict has a side.",
      "One place in conflict has no side yet.",
      "3 places in conflict have no side yet.",
    ]);
  });

  it("says where in the words of the forms", () => {
    expect(pathWords("openings.D1.at.along")).toBe("Openings › D1 › Place › Along");
    expect(pathWords("site.wind")).toBe("Site › Wind");
    expect(pathWords('buildUps["long wall"].boards[0].row')).toBe("Build-ups › long wall › Boards › 1 › Board");
    expect(pathWords("partitions.P1.studsFrom")).toBe("Partitions › P1 › Studs from");
    expect(pathWords("notes[2]")).toBe("Notes › 3");
    expect(pathWords("unheardOf.field")).toBe("unheardOf › field");
    expect(pathWords("")).toBe("The whole file");
  });

  it("says what stands there", () => {
    expect(valueWords("2 in")).toBe("2 in");
    expect([valueWords(undefined), valueWords(true), valueWords(4), valueWords([])]).toEqual(["nothing", "yes", "4", "an empty list"]);
    expect(valueWords([{ row: "gypsum-1-2" }, { row: "plywood-1-4", lay: "along studs" }])).toBe("gypsum-1-2; plywood-1-4");
    expect(valueWords({ along: "1 m", up: "0 m" })).toBe("along 1 m, up 0 m");
  });

  it("cuts what is long, text and lists alike, and nothing else", () => {
    const long = [valueWords("x".repeat(900)), valueWords(Array.from({ length: 200 }, (_, at) => ({ id: `D${at}` }))), valueWords({ notes: ["🏗".repeat(300)] })];
    for (const words of long) {
      expect([isLong(words), [...cutWords(words)].length, cutWords(words).at(-1)]).toEqual([true, 160, "…"]);
      expect(cutWords(words)).not.toMatch(/\p{Surrogate}/u);
      expect(words.startsWith(cutWords(words).slice(0, -1))).toBe(true);
    }
    expect(cutWords(valueWords("4' 0-9/16\""))).toBe("4' 0-9/16\"");
  });
});
