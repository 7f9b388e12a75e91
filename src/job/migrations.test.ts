import { expect, test } from "vitest";
import { JOB_VERSION } from "./job.ts";
import { MIGRATIONS, migrate } from "./migrations.ts";
import type { Migration } from "./migrations.ts";

const STEPS: readonly Migration[] = [
  { from: 1, up: ({ a = null, ...rest }) => ({ ...rest, version: 2, b: a }), down: ({ b = null, ...rest }) => ({ ...rest, version: 1, a: b }) },
  { from: 2, up: (file) => ({ ...file, version: 3, c: true }), down: (file) => ({ ...file, version: 2, c: null }) },
];

test("there is a step for every version before the newest", () => {
  expect(MIGRATIONS.map(({ from }) => from)).toEqual(Array.from({ length: JOB_VERSION - 1 }, (_, index) => index + 1));
});

test("takes a file through every step from its version on", () => {
  expect(migrate({ version: 1, a: "x" }, STEPS, 3)).toEqual({ ok: true, file: { version: 3, b: "x", c: true } });
  expect(migrate({ version: 2, b: "x" }, STEPS, 3)).toEqual({ ok: true, file: { version: 3, b: "x", c: true } });
  expect(migrate({ version: 3, c: false }, STEPS, 3)).toEqual({ ok: true, file: { version: 3, c: false } });
});

test.for([
  { raw: { format: "other" }, code: "format" },
  { raw: { version: 4 }, code: "version" },
  { raw: { version: 0 }, code: "version" },
  { raw: { version: 1.5 }, code: "version" },
  { raw: { version: "1" }, code: "version" },
])("refuses $raw", ({ raw, code }) => {
  expect(migrate(raw, STEPS, 3)).toMatchObject({ ok: false, issue: { code, path: code } });
});
