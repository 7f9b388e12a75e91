import { existsSync, readFileSync, readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { DEMO_JOBS } from "../../test/demoJobs.ts";
import { ENGINES, newFolder, NOON, storeAt } from "../../test/engines.ts";
import { backup, backupPlace } from "./backup.ts";
import { sumOf } from "./backup/rows.ts";
import { loadExamples } from "./examples.ts";
import { createJob, listJobs } from "./jobs.ts";
import { restore } from "./restore.ts";
import { latestRevision, listRevisions, saveRevision } from "./revisions.ts";
import type { Store } from "./store.ts";

const { text } = DEMO_JOBS[0]!;
const ANN = { who: "Ann", why: "" };
const now = (): Date => NOON;

/** Texts that a backup by lines could trip over. */
const HARD = ["", "a\nb\r\nc\u2028d\u2029e", "quote \" and \\ and 🏗", "null", '{"table":"job"}'];

async function filled(store: Store): Promise<void> {
  await loadExamples(store, "examples");
  for (const [at, file] of HARD.entries()) await createJob(store, { id: `hard${at}`, demo: false, file, ...ANN });
}

describe.each(ENGINES)("a backup of $engine", ({ engine, newPlace }) => {
  it.each(ENGINES)("is restored into an empty $engine, the same to the last row", async ({ newPlace: otherPlace }) => {
    const store = await storeAt(await newPlace());
    await filled(store);
    const path = join(newFolder(), "backup");
    const bytes = await backup(store, path);
    expect(readFileSync(path).length).toBe(bytes);
    const place = await otherPlace();
    const { rows, sha256 } = await sumOf(store.db);
    expect(await restore(path, place, now)).toBe(rows);
    expect(readFileSync(path).length).toBe(bytes);
    const copy = await storeAt(place);
    expect(await sumOf(copy.db)).toEqual({ rows, sha256 });
    for (const [at, file] of HARD.entries()) expect((await latestRevision(copy, `hard${at}`))!.file).toBe(file);
    expect(await loadExamples(copy, "examples")).toBe(false);
    expect(await saveRevision(copy, { job: "hard0", base: 1, file: text, ...ANN })).toMatchObject({ ok: true });
    await expect(restore(path, place, now)).rejects.toMatchObject({ code: "not_empty" });
  });

  it("made while saves go on is one moment: every save up to it, none after", async () => {
    const place = await newPlace();
    const store = await storeAt(place);
    await createJob(store, { id: "a", demo: false, file: "{}", ...ANN });
    await createJob(store, { id: "b", demo: false, file: "{}", ...ANN });
    const state = { saving: true, number: 1 };
    const saving = (async () => {
      // Each round saves into a and then into b, so that a moment has as many of b as of a, or one fewer.
      while (state.saving) {
        for (const job of ["a", "b"]) expect((await saveRevision(store, { job, base: state.number, file: text, ...ANN })).ok).toBe(true);
        state.number += 1;
      }
    })();
    await expect.poll(() => state.number).toBeGreaterThan(5);
    const path = join(newFolder(), "backup");
    const before = state.number;
    await (engine === "sqlite" ? backupPlace(place, path) : backup(store, path));
    const after = state.number;
    state.saving = false;
    await saving;
    const copyPlace = await newPlace();
    await restore(path, copyPlace, now);
    const copy = await storeAt(copyPlace);
    const [a, b] = await Promise.all(["a", "b"].map(async (job) => (await listRevisions(copy, job)).length));
    expect(a! - b!).toBeOneOf([0, 1]);
    expect(b).toBeGreaterThanOrEqual(before);
    expect(a).toBeLessThanOrEqual(after + 1);
  });

  it("that is damaged, cut short or something else restores nothing", async () => {
    const store = await storeAt(await newPlace());
    await filled(store);
    const folder = newFolder();
    const path = join(folder, "backup");
    await backup(store, path);
    const whole = readFileSync(path);
    const place = await newPlace();
    const other = Buffer.from(whole);
    const at = other.indexOf("Bunk room for a desert");
    other.write("Bank", at, "latin1");
    const damaged = engine === "sqlite" ? [whole.subarray(0, whole.length / 2), Buffer.from(whole).fill(0xff, 4096, 12_288)] : [whole.subarray(0, whole.length / 2), whole.subarray(0, -80), other, Buffer.concat([whole, Buffer.from("{}\n")])];
    for (const bytes of [...damaged, Buffer.from(""), Buffer.from("{}"), Buffer.from(text)]) {
      writeFileSync(path, bytes);
      await expect(restore(path, place, now)).rejects.toMatchObject({ code: "bad_backup" });
    }
    expect(await listJobs(await storeAt(place))).toEqual([]);
  });

  it("writes over nothing, and leaves nothing half written", async () => {
    const store = await storeAt(await newPlace());
    const folder = newFolder();
    const path = join(folder, "backup");
    writeFileSync(path, "mine");
    await expect(backup(store, path)).rejects.toMatchObject({ code: "exists" });
    expect(readFileSync(path, "utf8")).toBe("mine");
    await expect(backup(store, join(folder, "no such folder", "backup"))).rejects.toThrow();
    expect(readdirSync(folder)).toEqual(["backup"]);
  });
});

it("a folder without a database has no backup, and none is made in it", async () => {
  const folder = newFolder();
  await expect(backupPlace({ folder }, join(folder, "backup"))).rejects.toMatchObject({ code: "unreachable" });
  expect(existsSync(join(folder, "cornerpost.sqlite"))).toBe(false);
});
