import { resolve } from "node:path";
import { parseArgs } from "node:util";
import { backupPlace } from "../store/backup.ts";
import { lockFolder } from "../store/folderLock.ts";
import { restore } from "../store/restore.ts";
import { StoreError } from "../store/store.ts";
import { HELP } from "./help.ts";
import { startServer, StartError } from "./server.ts";
import type { ServerSettings } from "./server.ts";

/** What the command line is given by the process that runs it. */
export interface World extends Pick<ServerSettings, "databaseUrl" | "webFolder" | "examples" | "now" | "newId"> {
  readonly args: readonly string[];
  readonly out: (line: string) => void;
  readonly error: (line: string) => void;
  /** Resolves when the person or the system asks the server to stop. */
  readonly stopped: Promise<unknown>;
}

/** Runs one command line of the server and gives its exit code: 0 done, 1 hindered. A server runs until it is stopped. */
export async function run(world: World): Promise<number> {
  try {
    await command(world);
    return 0;
  } catch (error) {
    if (!(error instanceof StoreError || error instanceof StartError)) throw error;
    world.error(`cornerpost: ${error.message}`);
    return 1;
  }
}

async function command(world: World): Promise<void> {
  const { values, positionals } = parsed(world.args);
  const [name = "start", file, ...more] = positionals;
  const { databaseUrl, now, out } = world;
  const folder = resolve(values.folder);
  const place = databaseUrl === undefined ? { folder } : { url: databaseUrl };
  if (values.help) {
    out(HELP);
    return;
  }
  if (more.length > 0 || (name === "start" && file !== undefined)) throw new StartError(`"${positionals.join(" ")}" is too much; try --help`);
  if (name === "start") return start(world, folder, values.host, portIn(values.port));
  if (name !== "backup" && name !== "restore") throw new StartError(`there is no command "${name}"; try --help`);
  if (file === undefined) throw new StartError(`${name} needs a file; try --help`);
  if (name === "backup") {
    const bytes = await backupPlace(place, resolve(file));
    out(`${file} holds the backup, ${bytes} bytes`);
    return;
  }
  const lock = databaseUrl === undefined ? lockFolder(folder) : undefined;
  try {
    const rows = await restore(resolve(file), place, now);
    out(`${rows} rows restored and compared with the backup`);
  } finally {
    lock?.release();
  }
}

async function start(world: World, folder: string, host: string, port: number): Promise<void> {
  const { databaseUrl, out, error, stopped } = world;
  const server = await startServer({ ...world, folder, host, port, log: error });
  out(`Cornerpost is at ${server.address}`);
  out(databaseUrl === undefined ? `Data is kept in ${folder}` : "Data is kept in the database of DATABASE_URL");
  await stopped;
  await server.close();
}

function portIn(text: string): number {
  const port = Number(text);
  if (!/^\d{1,5}$/.test(text) || port > 65_535) throw new StartError(`"${text}" is no port; give a number from 0 to 65535`);
  return port;
}

function parsed(args: readonly string[]) {
  try {
    return parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        folder: { type: "string", default: "data" },
        port: { type: "string", default: "4310" },
        host: { type: "string", default: "127.0.0.1" },
        help: { type: "boolean", short: "h", default: false },
      },
    });
  } catch (error) {
    throw new StartError(`${error instanceof Error ? error.message : String(error)}; try --help`);
  }
}
