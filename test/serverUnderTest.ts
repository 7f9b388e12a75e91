import { request } from "node:http";
import { join } from "node:path";
import { onTestFinished } from "vitest";
import { startServer } from "../src/server/server.ts";
import type { RunningServer } from "../src/server/server.ts";
import type { Place } from "../src/store/store.ts";
import { newFolder, NOON } from "./engines.ts";

export interface Answer {
  readonly status: number;
  readonly headers: Readonly<Record<string, string | string[] | undefined>>;
  readonly bytes: Buffer;
  readonly text: string;
  /** The body as JSON; undefined where it is none. */
  readonly json: unknown;
}

export interface ServerUnderTest extends RunningServer {
  readonly folder: string;
  /** What the server told the person who runs it. */
  readonly logged: readonly string[];
  readonly get: (path: string, headers?: Readonly<Record<string, string>>) => Promise<Answer>;
  readonly send: (method: string, path: string, body?: unknown, headers?: Readonly<Record<string, string>>) => Promise<Answer>;
}

/** A server on a free port that is stopped when the test is over. Its ids are "id1", "id2", … */
export async function serverAt(place: Place, webFolder = join(newFolder(), "not built")): Promise<ServerUnderTest> {
  const folder = "folder" in place ? place.folder : newFolder();
  const logged: string[] = [];
  const ids = { last: 0 };
  const server = await startServer({
    folder,
    databaseUrl: "url" in place ? place.url : undefined,
    host: "127.0.0.1",
    port: 0,
    webFolder,
    examples: "examples",
    now: () => NOON,
    newId: () => `id${(ids.last += 1)}`,
    log: (line) => logged.push(line),
  });
  onTestFinished(() => server.close());
  return {
    ...server,
    folder,
    logged,
    get: (path, headers) => ask(server.address, "GET", path, undefined, headers),
    send: (method, path, body, headers) => ask(server.address, method, path, body, headers),
  };
}

/** Asks with exactly the path and headers given, which fetch would put right first. A body that is no text is sent as JSON. */
function ask(address: string, method: string, path: string, body: unknown, headers: Readonly<Record<string, string>> = {}): Promise<Answer> {
  const { hostname, port } = new URL(address);
  const sent = typeof body === "string" || Buffer.isBuffer(body) || body === undefined ? body : JSON.stringify(body);
  const type = sent === undefined ? {} : { "content-type": "application/json" };
  return new Promise((resolve, reject) => {
    const asking = request({ hostname, port, method, path, headers: { ...type, ...headers } }, (response) => {
      const parts: Buffer[] = [];
      response.on("data", (part: Buffer) => parts.push(part));
      response.on("error", reject);
      response.on("end", () => {
        const bytes = Buffer.concat(parts);
        const text = bytes.toString("utf8");
        resolve({ status: response.statusCode!, headers: response.headers, bytes, text, json: jsonOf(text) });
      });
    });
    asking.on("error", reject);
    asking.end(sent);
  });
}

function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
