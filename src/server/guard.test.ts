import { EventEmitter, once } from "node:events";
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { DEMO_JOBS } from "../../test/demoJobs.ts";
import { newFolder, NOON } from "../../test/engines.ts";
import { serverAt } from "../../test/serverUnderTest.ts";
import type { Answer } from "../../test/serverUnderTest.ts";
import { addressOf, ANSWERS, apiError, ERROR_STATUS, ROUTES } from "../job/api.ts";
import { isLoopback } from "./guard.ts";
import { run } from "./run.ts";
import { startServer } from "./server.ts";

const { text, name } = DEMO_JOBS[0]!;
const ANN = { who: "Ann", why: "" };

/** The code of an error, which has the status of its code and nothing of the server's inside. */
function codeOf({ status, json, text: body }: Answer): string {
  const { code } = apiError.parse(json);
  expect(status).toBe(ERROR_STATUS[code]);
  expect(body).not.toMatch(/node_modules|\.ts:|SQLITE|at Object/);
  return code;
}

const settings = { webFolder: "none", examples: "examples", now: () => NOON, newId: () => "id", log: () => undefined };

describe("what the server listens on", () => {
  it.each(["0.0.0.0", "::", "192.168.1.5", "example.org", ""])("is never %j", async (host) => {
    await expect(startServer({ ...settings, folder: newFolder(), host, port: 0 })).rejects.toThrow(/no accounts/);
  });

  it("is this machine by any of its loopback names", () => {
    expect(["127.0.0.1", "localhost", "::1", "127.1.2.3"].map(isLoopback)).toEqual([true, true, true, true]);
    expect(["127.0.0.1.evil.example", "localhost.evil.example", "128.0.0.1", "127.0.0"].map(isLoopback)).toEqual([false, false, false, false]);
  });
});

describe("a question", () => {
  it.each(["evil.example", "evil.example:4310", "127.0.0.1.evil.example", "[::2]:80", "192.168.0.1"])("sent to the host %j is refused", async (host) => {
    const { get } = await serverAt({ folder: newFolder() });
    expect(codeOf(await get(ROUTES.jobs, { host }))).toBe("wrong_host");
    expect(codeOf(await get("/", { host }))).toBe("wrong_host");
  });

  it.each(["localhost@evil.example", "a b", "127.0.0.1/x", "127.0.0.1:99999"])("sent to %j, which is no host, is refused", async (host) => {
    const { get } = await serverAt({ folder: newFolder() });
    const { status, text: body } = await get(ROUTES.jobs, { host });
    expect(status).toBeOneOf([400, 403]);
    expect(body).not.toContain(name);
  });

  it("that writes is refused from another page, and taken from its own and from programs", async () => {
    const { send, address } = await serverAt({ folder: newFolder() });
    const write = (headers: Readonly<Record<string, string>>) => send("POST", ROUTES.jobs, { file: text, ...ANN }, headers);
    for (const origin of ["http://evil.example", "null", "http://127.0.0.1:1", address.replace("http:", "https:"), `${address}.evil.example`]) {
      expect(codeOf(await write({ origin }))).toBe("wrong_origin");
      expect(codeOf(await send("POST", addressOf(ROUTES.makePack, { job: name, number: 1 }), undefined, { origin }))).toBe("wrong_origin");
      expect(codeOf(await send("DELETE", addressOf(ROUTES.pack, { pack: "x" }), undefined, { origin }))).toBe("wrong_origin");
    }
    expect(codeOf(await write({ "sec-fetch-site": "cross-site" }))).toBe("wrong_origin");
    expect((await write({ origin: address, "sec-fetch-site": "same-origin" })).status).toBe(201);
    expect((await write({})).status).toBe(201);
  });

  it("that is too large is refused before it is read to its end, with or without its length", async () => {
    const { send } = await serverAt({ folder: newFolder() });
    const large = { file: "x".repeat(2_200_000), ...ANN };
    expect(codeOf(await send("POST", ROUTES.jobs, large))).toBe("too_large");
    expect(codeOf(await send("POST", ROUTES.jobs, large, { "transfer-encoding": "chunked" }))).toBe("too_large");
    const files = Array.from({ length: 6 }, () => ({ name: "a", file: "x".repeat(1_900_000) }));
    expect(codeOf(await send("POST", ROUTES.import, { files, ...ANN }))).toBe("too_large");
    expect((await send("POST", ROUTES.import, { files: files.slice(0, 5), ...ANN })).status).toBe(200);
  });

  it("that is not what is asked for says where", async () => {
    const { send } = await serverAt({ folder: newFolder() });
    const refusals: readonly [unknown, string, string][] = [
      ["{", "not_json", ""],
      [Buffer.from([0x22, 0xff, 0x22]), "not_json", ""],
      ["[]", "bad_request", ""],
      [{ file: text, who: "  ", why: "" }, "bad_request", "who"],
      [{ file: text, who: "a\nb", why: "" }, "bad_request", "who"],
      [{ file: text, who: "x".repeat(81), why: "" }, "bad_request", "who"],
      [{ file: text, who: "a", why: "x".repeat(501) }, "bad_request", "why"],
      [{ file: 7, who: "a", why: "" }, "bad_request", "file"],
      [{ file: "a\0b", who: "a", why: "" }, "bad_request", "file"],
      ['{"file":"\\ud800","who":"a","why":""}', "bad_request", "file"],
    ];
    for (const [body, code, path] of refusals) {
      const answer = await send("POST", ROUTES.jobs, body);
      expect([codeOf(answer), apiError.parse(answer.json).path]).toEqual([code, path]);
    }
    expect(codeOf(await send("POST", ROUTES.jobs, JSON.stringify({ file: text, ...ANN }), { "content-type": "text/plain" }))).toBe("not_json");
    const saves = addressOf(ROUTES.revisions, { job: name });
    for (const base of [0, 1.5, "1", 99]) expect(codeOf(await send("POST", saves, { base, file: text, ...ANN }))).toBe("bad_request");
  });

  it("for what is not there, or by a method that is not taken, is told so", async () => {
    const { get, send } = await serverAt({ folder: newFolder() });
    const missing = ["/api/jobs/none", "/api/jobs/none/revisions", `/api/jobs/${name}/revisions/2`, `/api/jobs/${name}/revisions/0`, `/api/jobs/${name}/revisions/1e0`,
      "/api/jobs/none/file", "/api/price-books/none", "/api/packs/none", "/api/packs/none/file", "/api/none", "/none", "/jobs"];
    for (const path of missing) expect(codeOf(await get(path))).toBe("not_found");
    expect(codeOf(await send("PUT", ROUTES.jobs))).toBe("wrong_method");
    expect(codeOf(await get(ROUTES.import))).toBe("wrong_method");
  });

  it("with hostile text keeps it as text", async () => {
    const { get, send } = await serverAt({ folder: newFolder() });
    const hostile = `<script>alert(1)</script>"'; drop table revision; -- \u202e${"🏗".repeat(3)}`;
    const file = JSON.stringify({ job: { title: hostile }, ["__proto__"]: { admin: true } });
    const { json } = await send("POST", ROUTES.jobs, { file, who: hostile, why: hostile });
    const { job } = ANSWERS.revision.parse(json);
    const kept = await get(addressOf(ROUTES.job, { job }));
    expect(ANSWERS.revision.parse(kept.json)).toMatchObject({ file, title: hostile, who: hostile, why: hostile });
    expect(kept.headers["content-type"]).toBe("application/json");
    expect((await get(`/api/jobs/${encodeURIComponent("' or 1=1 --")}`)).status).toBe(404);
  });
});

describe("the page", () => {
  const built = (): string => {
    const folder = newFolder();
    mkdirSync(join(folder, "web", "assets"), { recursive: true });
    writeFileSync(join(folder, "secret.json"), "secret");
    writeFileSync(join(folder, "web", "index.html"), "<html><head></head><body>the app</body></html>");
    writeFileSync(join(folder, "web", "assets", "app-1a2b.js"), "1");
    writeFileSync(join(folder, "web", "mark.svg"), "<svg/>");
    writeFileSync(join(folder, "web", "notes.php"), "secret");
    return join(folder, "web");
  };

  it("comes with a strict policy, its type, and for hashed files for good", async () => {
    const { get } = await serverAt({ folder: newFolder() }, built());
    const [page, other] = [await get("/"), await get(`/jobs/${name}`)];
    expect(page.text).toContain("the app");
    expect(other.text).toContain("the app");
    const [nonce, otherNonce] = [page, other].map(({ text: html }) => /csp-nonce" content="(\w+)"/.exec(html)![1]!);
    expect(nonce).not.toBe(otherNonce);
    const policy = String(page.headers["content-security-policy"]);
    for (const part of ["default-src 'self'", "script-src 'self';", `style-src 'self' 'nonce-${nonce}'`, "object-src 'none'", "base-uri 'none'", "frame-ancestors 'none'"]) {
      expect(policy).toContain(part);
    }
    expect(policy).not.toMatch(/unsafe|\*|http:|blob:/);
    const script = await get("/assets/app-1a2b.js");
    expect(script.headers).toMatchObject({ "content-type": "text/javascript; charset=utf-8", "cache-control": "public, max-age=31536000, immutable" });
    expect((await get("/mark.svg")).headers).toMatchObject({ "content-type": "image/svg+xml", "cache-control": "no-cache" });
  });

  it("and every other answer bears the strict headers", async () => {
    const { get, send } = await serverAt({ folder: newFolder() }, built());
    const answers = [await get("/"), await get("/assets/app-1a2b.js"), await get(ROUTES.jobs), await get("/none"), await send("POST", ROUTES.jobs, "{"), await get("/", { host: "evil.example" })];
    for (const { headers } of answers) {
      expect(headers).toMatchObject({ "x-content-type-options": "nosniff", "referrer-policy": "no-referrer", "x-frame-options": "DENY" });
      expect(headers["content-security-policy"]).toContain("frame-ancestors 'none'");
      expect(headers["access-control-allow-origin"]).toBeUndefined();
    }
  });

  it("is all that its folder gives: no address leads out of it", async () => {
    const { get } = await serverAt({ folder: newFolder() }, built());
    const paths = ["/../secret.json", "/assets/../../secret.json", "/%2e%2e/secret.json", "/..%2fsecret.json", "/assets/..%5c..%5csecret.json",
      "/assets/%2e%2e%2f%2e%2e%2fsecret.json", "//etc/passwd", "/assets/", "/index.html%00.js", "/notes.php", "/%c0%ae%c0%ae/secret.json"];
    for (const path of paths) {
      const { status, text: body } = await get(path);
      expect([path, status]).toEqual([path, 404]);
      expect(body).not.toContain("secret");
    }
  });

  it("says how to build it where it is not built", async () => {
    const { get } = await serverAt({ folder: newFolder() });
    expect([(await get("/")).status, (await get("/")).text]).toEqual([404, "The app is not built: start the server with npm start.\n"]);
  });
});

describe("the command line of the server", () => {
  const world = (args: readonly string[], stopped: Promise<unknown> = Promise.resolve()) => {
    const lines: string[] = [];
    const say = (line: string): void => void lines.push(line);
    return { lines, exit: run({ ...settings, databaseUrl: undefined, args, out: say, error: say, stopped }) };
  };

  it("starts once on a folder, points a second start to the first, backs up meanwhile, and restores elsewhere", async () => {
    const folder = newFolder();
    const file = join(newFolder(), "backup.sqlite");
    const stop = new EventEmitter();
    const first = world(["--folder", folder, "--port", "0"], once(stop, "stop"));
    await expect.poll(() => first.lines.length).toBe(2);
    const address = /http:\S+/.exec(first.lines[0]!)![0];
    expect((await fetch(`${address}${ROUTES.jobs}`)).status).toBe(200);
    const second = world(["--folder", folder, "--port", "0"]);
    expect(await second.exit).toBe(1);
    expect(second.lines).toEqual([`cornerpost: the folder ${folder} is in use by the server at ${address}`]);
    expect(await world(["restore", file, "--folder", folder]).exit).toBe(1);
    expect(await world(["backup", file, "--folder", folder]).exit).toBe(0);
    expect(await world(["backup", file, "--folder", folder]).exit).toBe(1);
    expect(await world(["backup", join(folder, "none", "backup"), "--folder", folder]).exit).toBe(1);
    const other = join(newFolder(), "new");
    const restored = world(["restore", file, "--folder", other]);
    expect([await restored.exit, restored.lines[0]]).toEqual([0, expect.stringMatching(/^\d+ rows restored and compared/)]);
    expect(await world(["restore", file, "--folder", other]).exit).toBe(1);
    const port = new URL(address).port;
    expect(await world(["--folder", other, "--port", port]).exit).toBe(1);
    stop.emit("stop");
    expect(await first.exit).toBe(0);
    expect(await world(["--folder", folder, "--port", "0"]).exit).toBe(0);
  });

  it.each([
    "--port x", "--port 70000", "fly", "backup", "start now", "--colour", "--host 0.0.0.0", "restore /no/such/file", "restore /tmp", "backup a b",
  ])("says what is wrong with %j", async (line) => {
    const { exit, lines } = world([...line.split(" "), "--folder", newFolder()]);
    expect(await exit).toBe(1);
    expect(lines).toEqual([expect.stringMatching(/^cornerpost: /)]);
  });
});
