import { createServer } from "node:http";
import type { Server } from "node:http";
import type { AddressInfo } from "node:net";
import { join } from "node:path";
import { createAdaptorServer } from "@hono/node-server";
import { loadExamples } from "../store/examples.ts";
import { lockFolder } from "../store/folderLock.ts";
import { openStore } from "../store/store.ts";
import { makeApp } from "./app.ts";
import { isLoopback } from "./guard.ts";
import { makePackQueue } from "./packs/packQueue.ts";

export interface ServerSettings {
  /** Folder of the database, its lock and its backups. */
  readonly folder: string;
  /** Address of a PostgreSQL database to be used in place of the folder's own. */
  readonly databaseUrl?: string | undefined;
  readonly host: string;
  /** 0 for any that is free. */
  readonly port: number;
  /** Folder of the built app. */
  readonly webFolder: string;
  /** Folder of the demo jobs for a new database. */
  readonly examples: string;
  readonly now: () => Date;
  /** A new id of letters and digits that nobody can guess. */
  readonly newId: () => string;
  readonly log: (line: string) => void;
}

export interface RunningServer {
  /** As "http://127.0.0.1:4310". */
  readonly address: string;
  /** Lets questions end, and closes lines, packs and store. */
  readonly close: () => Promise<void>;
}

/** The server cannot start as asked; its message is all that the person needs. */
export class StartError extends Error {}

/**
 * Starts a server. Throws StartError for a host beyond this machine or a port that is taken, and StoreError where the folder
 * is in use or the database cannot be opened.
 */
export async function startServer(settings: ServerSettings): Promise<RunningServer> {
  const { folder, databaseUrl, host, port } = settings;
  if (!isLoopback(host)) throw new StartError(`the server does not listen on ${host}: ${NO_ACCOUNTS}`);
  const undo: (() => Promise<void> | void)[] = [];
  const close = async (): Promise<void> => {
    for (const step of undo.toReversed()) await step();
  };
  try {
    const lock = databaseUrl === undefined ? lockFolder(folder) : undefined;
    if (lock !== undefined) undo.push(lock.release);
    const store = await openStore(databaseUrl === undefined ? { folder } : { url: databaseUrl }, settings.now);
    undo.push(store.close);
    await loadExamples(store, settings.examples);
    const packs = makePackQueue(settings.newId, settings.log);
    undo.push(packs.close);
    const stop = new AbortController();
    const backups = join(folder, "backups");
    const app = makeApp({ store, packs, backups, stopped: stop.signal, newId: settings.newId, log: settings.log }, settings.webFolder);
    const http = createAdaptorServer({ fetch: app.fetch, createServer }) as Server;
    const address = await listen(http, host === "localhost" ? "127.0.0.1" : host, port);
    undo.push(async () => {
      stop.abort();
      await closed(http);
    });
    lock?.tellAddress(address);
    return { address, close };
  } catch (error) {
    await close();
    throw error;
  }
}

const NO_ACCOUNTS =
  "it has no accounts yet, so that anyone who reached it could read and change every job. Leave --host out, or give 127.0.0.1";

function listen(http: Server, host: string, port: number): Promise<string> {
  return new Promise((resolve, reject) => {
    http.once("error", (error) => {
      const taken = "code" in error && error.code === "EADDRINUSE";
      reject(taken ? new StartError(`the port ${port} is in use by another program; give another with --port`) : error);
    });
    http.listen(port, host, () => {
      const { address, family, port: bound } = http.address() as AddressInfo;
      resolve(`http://${family === "IPv6" ? `[${address}]` : address}:${bound}`);
    });
  });
}

/** How long questions may take to end when the server stops, and how often those that ended are looked for, ms. */
const PATIENCE_MS = 3000;
const LOOK_MS = 20;

/** Resolves when every question has ended. A browser keeps its connection open after that: such ones are closed. */
async function closed(http: Server): Promise<void> {
  const looks = setInterval(() => http.closeIdleConnections(), LOOK_MS);
  const late = setTimeout(() => http.closeAllConnections(), PATIENCE_MS);
  await new Promise((resolve) => http.close(resolve));
  clearInterval(looks);
  clearTimeout(late);
}
