import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { makePack, writePack } from "../src/river/pack.ts";
import { DEMO_JOBS } from "./demoJobs.ts";

const { text, bookText } = DEMO_JOBS.at(-1)!;
const STAGES = [
  ...["build", "findings", "takeoff", "price", "plan", "heat", "drawings"].map((stage) => `computing the ${stage}`),
  "composing the papers", "setting pack.pdf",
];

describe("writing a pack", () => {
  let folder = "";
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), "cornerpost-"));
  });
  afterEach(() => rmSync(folder, { recursive: true, force: true }));

  it("writes the same bytes into two folders, tells its steps, and leaves other files alone", () => {
    const [one, two] = [join(folder, "one"), join(folder, "two")];
    mkdirSync(join(one, "drawings"), { recursive: true });
    writeFileSync(join(one, "mine.txt"), "mine");
    writeFileSync(join(one, "drawings", "99.svg"), "old");
    writeFileSync(join(one, "pack.pdf"), "of an earlier run");
    const steps: string[] = [];
    const first = writePack(text, bookText, one, (step) => steps.push(step));
    const second = writePack(text, bookText, two);
    if (!first.ok || !second.ok) throw new Error("the demo job has issues");
    expect(steps).toEqual([...STAGES, `writing ${first.written.length} files`]);
    for (const path of first.written) expect(readFileSync(join(one, path)).equals(readFileSync(join(two, path))), path).toBe(true);
    expect(readFileSync(join(one, "pack.pdf"), "latin1").startsWith("%PDF-")).toBe(true);
    expect(readFileSync(join(one, "mine.txt"), "utf8")).toBe("mine");
    expect(first.strangers).toEqual(["drawings/99.svg"]);
    expect(second.strangers).toEqual([]);
    const all = readdirSync(two, { recursive: true, encoding: "utf8" }).filter((path) => path !== "drawings");
    expect(all.sort()).toEqual([...second.written].sort());
  });

  it("goes on through its stages, and never back", () => {
    const told: (readonly [string, number])[] = [];
    const made = makePack(text, bookText, (step, share) => told.push([step, share]));
    expect(made.ok).toBe(true);
    const shares = told.map(([, share]) => share);
    expect(told.slice(0, STAGES.length).map(([step]) => step)).toEqual(STAGES);
    expect(told.slice(STAGES.length).every(([step]) => /^setting \S+\.pdf$/.test(step))).toBe(true);
    expect(shares).toEqual([...new Set(shares)].toSorted((a, b) => a - b));
    expect(shares[0]).toBe(0);
    expect(shares.at(-1)).toBeLessThan(1);
  });

  it("writes nothing where a file has issues, and gives those of both", () => {
    const into = join(folder, "pack");
    const result = writePack("{", "[]", into);
    if (result.ok) throw new Error("nothing was wrong");
    expect(result.jobIssues).toHaveLength(1);
    expect(result.bookIssues).toHaveLength(1);
    expect(existsSync(into)).toBe(false);
  });

  it("takes its half written file away again when a name is taken by a folder", () => {
    mkdirSync(join(folder, "pack.json"));
    expect(() => writePack(text, bookText, folder)).toThrow(/EISDIR|EEXIST|ENOTEMPTY/);
    expect(readdirSync(folder).filter((name) => name.includes(".part"))).toEqual([]);
  });
});
