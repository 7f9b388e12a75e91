import { describe, expect, it } from "vitest";
import { DEMO_JOBS } from "../../../test/demoJobs.ts";
import { makeScreenRiver } from "../../river/screen.ts";
import { litBy, nameOf, selectionOf } from "./about.ts";
import { checkName, countWords, groupFindings } from "./groups.ts";
import { entriesOf, search } from "./search.ts";

const SCREENS = DEMO_JOBS.map(({ job, book }) => makeScreenRiver().run(job, book));
const [screen] = SCREENS as [(typeof SCREENS)[number]];

describe("findings by verdict and check", () => {
  it("hold every finding once, what needs a person first", () => {
    for (const { findings, headline } of SCREENS) {
      const groups = groupFindings(findings);
      const all = groups.flatMap(({ checks }) => checks.flatMap((group) => group.findings.map(({ id }) => id)));
      expect(all.toSorted()).toEqual(findings.map(({ id }) => id).toSorted());
      expect(groups.find(({ verdict }) => verdict === "stop")?.count).toBe(headline.stops === 0 ? undefined : headline.stops);
      const order = groups.map(({ verdict }) => ["stop", "watch", "note", "pass"].indexOf(verdict));
      expect(order).toEqual(order.toSorted((a, b) => a - b));
    }
  });

  it("have words for every check that runs", () => {
    const checks = new Set(SCREENS.flatMap(({ findings }) => findings.map(({ check }) => check)));
    for (const check of checks) expect(checkName(check)).not.toBe(check);
    expect([countWords("stop", 1), countWords("pass", 2), countWords("watch", 0)]).toEqual(["1 stop", "2 passes", "0 watches"]);
  });

  it("are about things that can be selected", () => {
    for (const { findings, build } of SCREENS) {
      for (const id of findings.flatMap(({ about }) => about)) {
        const rooms = build.job.rooms.map((room) => room.id);
        expect(selectionOf(build, id) !== undefined || rooms.includes(id), id).toBe(true);
      }
    }
    expect(nameOf(screen.build, "left")).toBe("left wall");
    expect(selectionOf(screen.build, "nothing")).toBeUndefined();
  });

  it("light up what they are about with the parts that belong to it", () => {
    const lit = litBy(screen.build, ["D1"]);
    expect(lit[0]).toBe("D1");
    const frame = screen.build.parts.filter(({ of }) => of === "D1");
    expect(frame.length).toBeGreaterThan(4);
    expect(lit).toHaveLength(1 + frame.length);
  });
});

describe("the search", () => {
  const entries = entriesOf(screen);

  it("finds by any words, in any order and capitals, kind by kind", () => {
    const groups = search(entries, "PANIC door");
    expect(groups.map(({ kind }) => kind)).toContain("opening");
    expect(search(entries, "d2").find(({ kind }) => kind === "opening")?.entries[0]?.id).toBe("D2");
    expect(search(entries, "left stud 3")[0]).toBeDefined();
  });

  it("finds every entry by its own id", () => {
    for (const entry of entries) {
      const found = search(entries, entry.id, Infinity).find(({ kind }) => kind === entry.kind);
      expect(found?.entries.some(({ id }) => id === entry.id), entry.id).toBe(true);
    }
  });

  it("counts all and shows the first few", () => {
    const parts = search(entries, "stud").find(({ kind }) => kind === "part");
    expect(parts?.entries).toHaveLength(8);
    expect(parts?.count).toBeGreaterThan(8);
  });

  it("finds nothing for nothing, and nothing for what is not there", () => {
    expect(search(entries, "   ")).toEqual([]);
    expect(search(entries, "zeppelin")).toEqual([]);
  });
});
