import { existsSync, readFileSync, readdirSync } from "node:fs";
import { expect, test } from "vitest";

const FOLDERS = readdirSync("src/checks", { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map((entry) => entry.name);

test("src/checks/checks.ts takes a check from every folder", () => {
  const list = readFileSync("src/checks/checks.ts", "utf8");
  expect(FOLDERS.length).toBeGreaterThan(0);
  expect(FOLDERS.filter((folder) => !list.includes(`from "./${folder}/`))).toEqual([]);
});

test("every check has a test beside it", () => {
  const untested = FOLDERS.filter((folder) => !readdirSync(`src/checks/${folder}`).some((file) => file.endsWith(".test.ts")));
  expect(untested).toEqual([]);
});

test("every check has a page that says how it is computed", () => {
  expect(FOLDERS.filter((folder) => !existsSync(`docs/checks/${folder}.md`))).toEqual([]);
});
