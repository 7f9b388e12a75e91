import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { DEMO_JOBS } from "../../test/demoJobs.ts";
import { checkJob } from "../river/river.ts";
import { run } from "./run.ts";

const DEMO = "examples/trail-crew-bunk-room.job.json";
const BOOK = "examples/price-books/demo-shop-usd.price-book.json";

describe("the command line", () => {
  let folder = "";
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), "cornerpost-"));
  });
  afterEach(() => rmSync(folder, { recursive: true, force: true }));

  const at = (...names: string[]): string => join(folder, ...names);
  const jobWith = (change: (job: Record<string, unknown>) => void): string => {
    const job = JSON.parse(readFileSync(DEMO, "utf8")) as Record<string, unknown>;
    change(job);
    writeFileSync(at("changed.job.json"), JSON.stringify(job, undefined, 2));
    return at("changed.job.json");
  };

  it.each([[], ["help"], ["--help"], ["pack", "-h"]])("prints help for %j", (...args) => {
    const { code, out } = runWith(args);
    expect(code).toBe(0);
    expect(out).toContain("cornerpost pack <job file> --into <folder>");
    expect(out).toContain("Ends with 0");
  });

  it("packs a job: prints what decides it and leaves nothing half written", () => {
    const { code, out, error } = runWith(["pack", DEMO, "--into", at("new", "pack")]);
    expect(error).toBe("");
    expect(code).toBe(0);
    for (const word of ["stops", "mass", "price with tax", "delivery", "pack.pdf"]) expect(out).toContain(word);
    const files = readdirSync(at("new", "pack"), { recursive: true, encoding: "utf8" });
    expect(files).toEqual(expect.arrayContaining(["pack.pdf", "pack.json", "job.json", "quantities.csv", join("drawings", "01.svg")]));
    expect(files.filter((file) => file.includes(".part"))).toEqual([]);
  });

  it("says which issues a job file has, all of them, each with its place and a form that would do", () => {
    const path = jobWith((job) => {
      job["units"] = "cubits";
      job["colour"] = "red";
      delete job["site"];
    });
    for (const command of [["pack", path, "--into", at("pack")], ["check", path]]) {
      const { code, error } = runWith(command);
      expect(code).toBe(1);
      expect(error).toContain("3 issues");
      for (const place of ["units", "colour", "site"]) expect(error).toContain(place);
      expect(error).toContain("metric");
      expect(error).not.toMatch(/\bat .*\.ts:\d+/);
    }
    expect(readdirSync(folder)).toEqual(["changed.job.json"]);
  });

  it("says where it looked for the price book, and takes another", () => {
    const path = jobWith((job) => {
      job["prices"] = { book: "other-shop" };
    });
    const missing = runWith(["pack", path, "--into", at("pack")]);
    expect(missing.code).toBe(1);
    expect(missing.error).toContain(at("price-books", "other-shop.price-book.json"));
    const given = runWith(["pack", path, "--into", at("pack"), "--book", BOOK]);
    expect(given.code).toBe(0);
    expect(given.out).toContain("priced from the book demo-shop-usd; the job names other-shop");
  });

  it("lists the issues of a price book under its own name", () => {
    writeFileSync(at("broken.json"), '{ "format": "cornerpost-price-book" }');
    const { code, error } = runWith(["pack", DEMO, "--into", at("pack"), "--book", at("broken.json")]);
    expect(code).toBe(1);
    expect(error).toContain(`${at("broken.json")} has`);
    expect(error).toContain("labour");
  });

  it.each(DEMO_JOBS)("ends check of $name with 2 only where something stops it", ({ path, job }) => {
    const stops = checkJob(job).findings.filter(({ verdict }) => verdict === "stop").length;
    const { code, out } = runWith(["check", path]);
    expect(code).toBe(stops > 0 ? 2 : 0);
    expect(out).toContain(`stops ${stops}, `);
  });

  it("ends check with 2 for two things in one place", () => {
    const path = jobWith((job) => {
      const items = job["items"] as { id: string }[];
      job["items"] = [...items, { ...items[0], id: "X1" }];
    });
    const { code, out } = runWith(["check", path]);
    expect(code).toBe(2);
    expect(out).toMatch(/^stop {2}fit\/.*X1/m);
  });

  it("shows the working of each finding when asked", () => {
    const plain = runWith(["check", DEMO]).out;
    const worked = runWith(["check", DEMO, "--working"]).out;
    expect(worked.length).toBeGreaterThan(2 * plain.length);
    expect(worked).toContain("Worked out");
  });

  it("helps with foam", () => {
    const path = jobWith((job) => {
      job["box"] = { row: "10-standard", condition: "new" };
      for (const field of ["openings", "items"]) job[field] = [];
    });
    const { code, out, error } = runWith(["foam", path, "--build-up", "ceiling", "--book", BOOK]);
    expect(error).toBe("");
    expect(code).toBe(0);
    for (const word of ["least foam", "its own vapour barrier", "(now)", "studs at 24 in", "USD", "Licensed people"]) expect(out).toContain(word);
  });

  it("says that no build-up has foam", () => {
    const path = jobWith((job) => {
      const buildUps = job["buildUps"] as Record<string, Record<string, unknown>>;
      for (const one of Object.values(buildUps)) delete one["foam"];
    });
    expect(runWith(["foam", path, "--book", BOOK])).toMatchObject({ code: 1, error: expect.stringContaining("no face") as string });
  });

  it.each<[string, readonly string[], string]>([
    ["an unknown command", ["pakc"], 'no command "pakc"'],
    ["no job file", ["pack"], "needs a job file"],
    ["no folder", ["pack", DEMO], "needs a folder"],
    ["two job files", ["check", DEMO, DEMO], "is too much"],
    ["an unknown option", ["check", DEMO, "--loud"], "--loud"],
    ["an option of another command", ["check", DEMO, "--into", "x"], "does not take --into"],
    ["an option of another command", ["pack", DEMO, "--into", "x", "--working"], "does not take --working"],
    ["an option of another command", ["check", DEMO, "--build-up", "wall"], "does not take --build-up"],
    ["an option of another command", ["foam", DEMO, "--into", "x"], "does not take --into"],
    ["a build-up that is not there", ["foam", DEMO, "--build-up", "walls"], 'no build-up "walls" with foam; those with foam: wall, ceiling'],
    ["a file that is not there", ["check", "nowhere.json"], "it is not there"],
    ["a folder in place of a file", ["check", "examples"], "it is a folder"],
  ])("answers %s in plain words", (_, args, wanted) => {
    const { code, error } = runWith(args);
    expect(code).toBe(1);
    expect(error).toContain(wanted);
    expect(error).not.toMatch(/\bat .*\.ts:\d+/);
  });

  it("answers a file that is not text, and a folder that cannot be made, in plain words", () => {
    writeFileSync(at("bytes.json"), Buffer.from([0x7b, 0xff, 0xfe, 0x7d]));
    expect(runWith(["check", at("bytes.json")]).error).toContain("not text in UTF-8");
    const { code, error } = runWith(["pack", DEMO, "--into", at("bytes.json", "pack")]);
    expect(code).toBe(1);
    expect(error).toContain("a file stands where a folder should be");
  });
});

function runWith(args: readonly string[]): { readonly code: number; readonly out: string; readonly error: string } {
  const out: string[] = [];
  const error: string[] = [];
  const code = run(args, { out: (line) => out.push(line), error: (line) => error.push(line) });
  return { code, out: out.join("\n"), error: error.join("\n") };
}
