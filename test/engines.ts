import { randomUUID } from "node:crypto";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Client } from "pg";
import { inject, onTestFinished } from "vitest";
import { openStore } from "../src/store/store.ts";
import type { Place, Store } from "../src/store/store.ts";

/** A moment that tests may take for now. */
export const NOON = new Date("2026-10-05T12:00:00.000Z");

export interface EngineUnderTest {
  readonly engine: "sqlite" | "postgresql";
  /** An empty place that goes when the test is over. */
  readonly newPlace: () => Promise<Place>;
}

/** Every engine that this machine can run; each feature of the store is held to all of them. */
export const ENGINES: readonly EngineUnderTest[] = [
  { engine: "sqlite", newPlace: () => Promise.resolve({ folder: newFolder() }) },
  ...(inject("postgresql") === "" ? [] : [{ engine: "postgresql" as const, newPlace: newDatabase }]),
];

/** An empty folder that goes when the test is over. */
export function newFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), "cornerpost-store-"));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** A store that is closed when the test is over. */
export async function storeAt(place: Place): Promise<Store> {
  const store = await openStore(place, () => NOON);
  onTestFinished(() => store.close());
  return store;
}

async function newDatabase(): Promise<Place> {
  const name = `test_${randomUUID().replaceAll("-", "")}`;
  const server = inject("postgresql");
  const client = new Client({ connectionString: `${server}postgres` });
  await client.connect();
  await client.query(`create database ${name}`);
  await client.end();
  return { url: `${server}${name}` };
}
