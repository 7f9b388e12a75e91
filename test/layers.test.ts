import { mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { cruise } from "dependency-cruiser";
import { expect, test } from "vitest";
import config from "../.dependency-cruiser.mjs";
import { PURE_ROOMS, SEES, WORLDLY_ROOMS } from "../layers.mjs";

/** A small tree that keeps every rule; each planted file is laid on top of it. */
const CLEAN: Readonly<Record<string, string>> = {
  "package.json": `{ "devDependencies": { "planted-dev": "1.0.0" } }`,
  "node_modules/planted-dev/package.json": `{ "name": "planted-dev", "version": "1.0.0", "main": "main.js" }`,
  "node_modules/planted-dev/main.js": "module.exports = {};",
  "src/units/length.ts": "export type Length = number;",
  "src/build/assemble.ts": `import type { Wall } from "./framing/wall.ts";\nexport const assemble = (wall: Wall): Wall => wall;`,
  "src/build/framing/wall.ts": `import type { Length } from "../../units/length.ts";\nexport type Wall = Length;`,
  "src/checks/check.ts": "export type Check = string;",
  "src/checks/checks.ts": `import { fit } from "./fit/fit.ts";\nimport { mass } from "./mass/mass.ts";\nexport const checks = [fit, mass];`,
  "src/checks/fit/fit.ts": `import type { Check } from "../check.ts";\nexport const fit: Check = "fit";`,
  "src/checks/mass/mass.ts": `import { assemble } from "../../build/assemble.ts";\nexport const mass = assemble(1);`,
  "src/checks/mass/mass.test.ts": `import { pick } from "planted-dev";\nimport { box } from "../../../test/box.ts";\npick(box);`,
  "test/box.ts": "export const box = 1;",
};

const PLANTED: readonly { rule: string; from: string; text: string }[] = [
  { rule: "units-sees-too-far", from: "src/units/a.ts", text: `import type { Check } from "../checks/check.ts";\nexport type A = Check;` },
  { rule: "build-sees-too-far", from: "src/build/a.ts", text: `export { checks } from "../checks/checks.ts";` },
  { rule: "front-door-only", from: "src/takeoff/a.ts", text: `import type { Wall } from "../build/framing/wall.ts";\nexport type A = Wall;` },
  { rule: "one-check-knows-no-other", from: "src/checks/mass/a.ts", text: `export { fit } from "../fit/fit.ts";` },
  { rule: "no-circular", from: "src/units/a.ts", text: `import type { B } from "./b.ts";\nexport type A = B | 1;` },
  { rule: "not-to-test", from: "src/units/a.ts", text: `export { box } from "../../test/box.ts";` },
  { rule: "not-to-test", from: "src/checks/mass/a.ts", text: `import "./mass.test.ts";` },
  { rule: "not-to-dev-dependency", from: "src/units/a.ts", text: `export { pick } from "planted-dev";` },
  { rule: "unknown-room", from: "src/attic/a.ts", text: `export type { Length } from "../units/length.ts";` },
  { rule: "unknown-room", from: "src/units/a.ts", text: `export { loose } from "../loose.ts";` },
];

/** Files that a planted import needs in order to resolve; on their own they break no rule that sees importing files. */
const TARGETS: Readonly<Record<string, string>> = {
  "src/units/b.ts": `import type { A } from "./a.ts";\nexport type B = A | 2;`,
  "src/loose.ts": "export const loose = 1;",
};

test("a tree that keeps the rules raises none", async () => {
  expect(await brokenRules(CLEAN)).toEqual([]);
});

test.each(PLANTED)("$rule fires on $from", async ({ rule, from, text }) => {
  const broken = await brokenRules({ ...CLEAN, ...neededBy(text), [from]: text });
  expect(broken).toContainEqual(expect.stringContaining(`${rule}: ${from}`));
});

test("every room has a rule of its own", () => {
  const names = (config.forbidden ?? []).map((rule) => rule.name);
  for (const room of Object.keys(SEES)) expect(names).toContain(`${room}-sees-too-far`);
});

test("the table names only rooms that it has, and has no circle", () => {
  const settled = new Set<string>();
  const rooms = Object.keys(SEES);
  for (const sees of Object.values(SEES)) for (const seen of sees) expect(rooms).toContain(seen);
  for (let round = 0; round < rooms.length; round += 1) {
    for (const room of rooms) if (SEES[room]!.every((seen) => settled.has(seen))) settled.add(room);
  }
  expect(rooms.filter((room) => !settled.has(room))).toEqual([]);
});

test("every entry of src/ is a room in the table", () => {
  const strangers = readdirSync("src").filter((entry) => !Object.hasOwn(SEES, entry));
  expect(strangers).toEqual([]);
});

test("pure rooms see no worldly room", () => {
  for (const room of PURE_ROOMS) {
    expect(SEES[room]!.filter((seen) => WORLDLY_ROOMS.includes(seen))).toEqual([]);
  }
});

function neededBy(text: string): Record<string, string> {
  return Object.fromEntries(
    Object.entries(TARGETS).filter(([path]) => text.includes(path.slice(path.lastIndexOf("/") + 1))),
  );
}

/** Writes the tree into a folder of its own, runs the real rules on it and gives what they say, as `rule: from -> to`. */
async function brokenRules(tree: Readonly<Record<string, string>>): Promise<readonly string[]> {
  const folder = mkdtempSync(join(tmpdir(), "cornerpost-layers-"));
  try {
    for (const [path, text] of Object.entries(tree)) {
      mkdirSync(dirname(join(folder, path)), { recursive: true });
      writeFileSync(join(folder, path), text);
    }
    const { forbidden, options } = config;
    const result = await cruise(["src", "test"], {
      ...options,
      baseDir: folder,
      validate: true,
      ruleSet: { forbidden: forbidden ?? [] },
    });
    if (typeof result.output === "string") throw new Error("expected the cruise result as an object");
    return result.output.summary.violations.map(({ rule, from, to }) => `${rule.name}: ${from} -> ${to}`);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
