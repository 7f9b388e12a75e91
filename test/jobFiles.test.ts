import { existsSync, readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { JOB_VERSION } from "../src/job/job.ts";
import { readJob } from "../src/job/read.ts";
import { writeJob } from "../src/job/write.ts";

const VERSIONS = Array.from({ length: JOB_VERSION }, (_, index) => join("test/job-files", `v${index + 1}.json`));
const EXAMPLES = readdirSync("examples").filter((name) => name.endsWith(".job.json")).map((name) => join("examples", name));

test("a file of every version is kept", () => {
  expect(VERSIONS.filter((path) => !existsSync(path))).toEqual([]);
});

test("there are demo jobs", () => {
  expect(EXAMPLES).toHaveLength(3);
});

test.for([...VERSIONS, ...EXAMPLES])("%s is read without an issue", (path) => {
  const read = readJob(readFileSync(path, "utf8"));
  expect(read.ok ? [] : read.issues).toEqual([]);
});

test.for(EXAMPLES)("%s keeps every text as typed when it is written", (path) => {
  const text = readFileSync(path, "utf8");
  const read = readJob(text);
  if (!read.ok) throw new Error("not read");
  expect(JSON.parse(writeJob(read.file))).toEqual(JSON.parse(text));
  const again = readJob(writeJob(read.file));
  expect(again).toEqual(read);
  expect(again.ok && writeJob(again.file)).toBe(writeJob(read.file));
});
