import { spawn, spawnSync } from "node:child_process";
import { chownSync, existsSync, mkdtempSync, readdirSync, rmSync } from "node:fs";
import { createServer } from "node:net";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { delimiter, join } from "node:path";
import { Client } from "pg";
import type { TestProject } from "vitest/node";

declare module "vitest" {
  interface ProvidedContext {
    /** Address of a PostgreSQL server with nothing in it, up to and with the last "/"; "" where there is none. */
    readonly postgresql: string;
  }
}

/**
 * Starts a PostgreSQL server of its own for the run, in a folder that is thrown away, on a free port of this machine. Says so
 * where the programs are not there; the tests that need it are then not part of the run.
 */
export async function setup(project: TestProject): Promise<() => Promise<void>> {
  const programs = programFolder();
  if (programs === undefined) {
    project.provide("postgresql", "");
    process.stdout.write("PostgreSQL's programs are not on this machine: the store is held to SQLite alone.\n");
    return () => Promise.resolve();
  }
  const folder = mkdtempSync(join(tmpdir(), "cornerpost-postgresql-"));
  const user = otherUser();
  if (user !== undefined) chownSync(folder, user.uid, user.gid);
  const made = spawnSync(join(programs, "initdb"), ["-D", folder, "-U", "test", "-A", "trust", "-E", "UTF8", "--no-locale", "--no-sync"], { ...user });
  if (made.status !== 0) throw new Error(`initdb failed: ${made.stderr.toString()}`);
  const port = await freePort();
  const settings = ["listen_addresses=127.0.0.1", "unix_socket_directories=", "fsync=off", "max_connections=200"];
  const server = spawn(join(programs, "postgres"), ["-D", folder, "-p", String(port), ...settings.flatMap((setting) => ["-c", setting])], { ...user, stdio: "ignore" });
  const ended = new Promise<void>((resolve) => server.once("exit", () => resolve()));
  const address = `postgres://test@127.0.0.1:${port}/`;
  await answers(`${address}postgres`);
  project.provide("postgresql", address);
  return async () => {
    // Its "immediate" stop: nothing in it is worth keeping.
    server.kill("SIGQUIT");
    await ended;
    rmSync(folder, { recursive: true, force: true });
  };
}

function programFolder(): string | undefined {
  const onPath = (process.env["PATH"] ?? "").split(delimiter);
  const versions = "/usr/lib/postgresql";
  const installed = existsSync(versions) ? readdirSync(versions).map((version) => join(versions, version, "bin")) : [];
  return [...onPath, ...installed].find((folder) => ["initdb", "postgres"].every((program) => existsSync(join(folder, program))));
}

/** PostgreSQL does not run as root: the user that its package made runs it then. */
function otherUser(): { readonly uid: number; readonly gid: number } | undefined {
  if (process.getuid?.() !== 0) return undefined;
  const idOf = (kind: string): number => Number(spawnSync("id", [kind, "postgres"]).stdout.toString());
  return { uid: idOf("-u"), gid: idOf("-g") };
}

async function freePort(): Promise<number> {
  const probe = createServer().listen(0, "127.0.0.1");
  await new Promise((resolve) => probe.once("listening", resolve));
  const { port } = probe.address() as AddressInfo;
  await new Promise((resolve) => probe.close(resolve));
  return port;
}

async function answers(url: string): Promise<void> {
  const deadline = performance.now() + 20_000;
  for (;;) {
    const client = new Client({ connectionString: url });
    try {
      await client.connect();
      await client.end();
      return;
    } catch (error) {
      if (performance.now() > deadline) throw error;
      await new Promise((resolve) => setTimeout(resolve, 100));
    }
  }
}
