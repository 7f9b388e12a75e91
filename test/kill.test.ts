import { spawn } from "node:child_process";
import type { ChildProcess } from "node:child_process";
import { once } from "node:events";
import fc from "fast-check";
import { sql } from "kysely";
import { expect, it } from "vitest";
import { ANSWERS, addressOf, ROUTES } from "../src/job/api.ts";
import type { JobRevision } from "../src/job/api.ts";
import { listRevisions, revisionOf } from "../src/store/revisions.ts";
import { openStore } from "../src/store/store.ts";
import type { Place, Store } from "../src/store/store.ts";
import { DEMO_JOBS } from "./demoJobs.ts";
import { ENGINES, newFolder, NOON } from "./engines.ts";

const ROUNDS = 20;
/** How long after its first acknowledged save a server is killed, ms. */
const DELAYS = fc.sample(fc.integer({ min: 0, max: 120 }), { seed: 20261005, numRuns: ROUNDS });
const CLIENTS = DEMO_JOBS.map(({ name, text }) => ({ job: name, text }));

it.each(ENGINES)(
  "a server on $engine that is killed in the middle of saves, again and again, has kept each one that it acknowledged",
  { timeout: 120_000 },
  async ({ newPlace }) => {
    const place = await newPlace();
    const acknowledged: JobRevision[] = [];
    for (const [round, delay] of DELAYS.entries()) {
      const { server, address } = await started(place);
      const before = acknowledged.length;
      const saving = CLIENTS.map((client) => saveUntilGone(address, client, round, acknowledged));
      await expect.poll(() => acknowledged.length, { interval: 1, timeout: 20_000 }).toBeGreaterThan(before);
      await new Promise((resolve) => setTimeout(resolve, delay));
      server.kill("SIGKILL");
      await Promise.all([once(server, "exit"), ...saving]);
      await holdsTo(place, acknowledged.slice(before), round);
    }
    await holdsTo(place, acknowledged, ROUNDS);
    expect(acknowledged.length).toBeGreaterThan(ROUNDS * 2);
  },
);

async function started(place: Place): Promise<{ readonly server: ChildProcess; readonly address: string }> {
  const folder = "folder" in place ? place.folder : newFolder();
  const env = "url" in place ? { ...process.env, DATABASE_URL: place.url } : process.env;
  const args = ["--import", "tsx", "src/server/main.ts", "--folder", folder, "--port", "0"];
  const server = spawn(process.execPath, args, { env, stdio: ["ignore", "pipe", "inherit"] });
  const [first] = (await once(server.stdout, "data")) as [Buffer];
  return { server, address: /http:\S+/.exec(first.toString())![0] };
}

/** Saves one revision after another, from whatever is the latest, until the server does not answer any more. */
async function saveUntilGone(address: string, { job, text }: (typeof CLIENTS)[number], round: number, acknowledged: JobRevision[]): Promise<void> {
  try {
    const latest = ANSWERS.revision.parse(await (await fetch(`${address}${addressOf(ROUTES.job, { job })}`)).json());
    for (let base = latest.number; ; base += 1) {
      const body = JSON.stringify({ base, file: `${text}\n${round} ${base}`, who: "Ann", why: "" });
      const answer = await fetch(`${address}${addressOf(ROUTES.revisions, { job })}`, { method: "POST", headers: { "content-type": "application/json" }, body });
      expect(answer.status).toBe(201);
      const saved = ANSWERS.saved.parse(await answer.json());
      if (!saved.saved) return expect.unreachable();
      acknowledged.push(saved.revision);
    }
  } catch (error) {
    // What fetch throws when the connection breaks; anything else is a finding.
    if (!(error instanceof TypeError)) throw error;
  }
}

/** Opens the database that a dead server left, and looks for every revision that it had acknowledged. */
async function holdsTo(place: Place, acknowledged: readonly JobRevision[], round: number): Promise<void> {
  const store = await openStore(place, () => NOON);
  try {
    if (store.engine === "sqlite") expect((await sql`pragma integrity_check`.execute(store.db)).rows).toEqual([{ integrity_check: "ok" }]);
    for (const revision of acknowledged) expect(await revisionOf(store, revision.job, revision.number), `round ${round}`).toEqual(revision);
    for (const { job } of CLIENTS) await hasNoGap(store, job);
  } finally {
    await store.close();
  }
}

async function hasNoGap(store: Store, job: string): Promise<void> {
  const numbers = (await listRevisions(store, job)).map(({ number }) => number);
  expect(numbers).toEqual(numbers.map((_, at) => numbers.length - at));
}
