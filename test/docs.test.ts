import { existsSync, readFileSync, readdirSync } from "node:fs";
import { dirname, join } from "node:path";
import { expect, test } from "vitest";

const PAGES = ["README.md", "CHANGELOG.md", ...markdownIn("docs")];
const LINK = /\]\(([^)#]+)[^)]*\)/g;
const REPO_PATH = /`((?:src|test|scripts|bench|bin|docs|examples)\/[^`\s<*]+)`/g;
const NPM_COMMAND = /npm (?:run ([a-z:-]+)|(test|start)\b)/g;

test("every link leads to a file", () => {
  const lost = everyMatch(LINK).filter(
    ({ page, found }) => !found.includes("://") && !existsSync(join(dirname(page), found)),
  );
  expect(lost).toEqual([]);
});

test("every path of the repo that a page names is there", () => {
  expect(everyMatch(REPO_PATH).filter(({ found }) => !existsSync(found))).toEqual([]);
});

test("every npm command that a page names is a script", () => {
  const { scripts } = JSON.parse(read("package.json")) as { readonly scripts: Readonly<Record<string, string>> };
  const named = everyMatch(NPM_COMMAND);
  expect(named.map(({ found }) => found)).toContain("test");
  expect(named.filter(({ found }) => !Object.hasOwn(scripts, found))).toEqual([]);
});

test("docs/README.md lists every page", () => {
  const index = read("docs/README.md");
  const pages = markdownIn("docs").filter((page) => page !== "docs/README.md");
  expect(pages.filter((page) => !index.includes(`](${page.slice("docs/".length)})`))).toEqual([]);
});

/** What the pattern's groups find, on each page. */
function everyMatch(pattern: RegExp): readonly { readonly page: string; readonly found: string }[] {
  return PAGES.flatMap((page) =>
    [...read(page).matchAll(pattern)].map((match) => ({ page, found: (match[1] ?? match[2])! })),
  );
}

function markdownIn(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".md"))
    .map((file) => join(folder, file));
}

function read(path: string): string {
  return readFileSync(path, "utf8");
}
