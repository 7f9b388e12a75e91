import { existsSync, readFileSync, readdirSync } from "node:fs";
import { extname, join, sep } from "node:path";
import type { Context, Hono } from "hono";
import { policy } from "./guard.ts";

/** Addresses at which the app itself opens. */
const PAGES = ["/", "/jobs/:job"];

/**
 * Serves the built app. The folder is listed once, when the server starts, and only what is on the list is served: no
 * address can lead out of it.
 */
export function staticFiles(app: Hono, folder: string, newId: () => string): void {
  for (const path of listed(folder)) {
    const type = TYPES[extname(path)];
    if (type === undefined || path === "index.html") continue;
    const headers = { "content-type": type, "cache-control": path.startsWith("assets/") ? FOREVER : ASK_FIRST };
    app.get(`/${path}`, (context) => context.body(new Uint8Array(readFileSync(join(folder, path))), 200, headers));
  }
  for (const page of PAGES) app.get(page, (context) => index(context, folder, newId()));
}

/** Names of built assets hold a hash of what is in them. */
const FOREVER = "public, max-age=31536000, immutable";
const ASK_FIRST = "no-cache";

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".ico": "image/x-icon",
  ".woff2": "font/woff2",
  ".ttf": "font/ttf",
  ".wasm": "application/wasm",
  ".json": "application/json; charset=utf-8",
  ".webmanifest": "application/manifest+json",
};

function listed(folder: string): readonly string[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(folder.length + 1).split(sep).join("/"));
}

/** The page, with a nonce by which the components' library marks the styles that it adds. */
function index(context: Context, folder: string, nonce: string): Response {
  const path = join(folder, "index.html");
  if (!existsSync(path)) return context.text("The app is not built: start the server with npm start.\n", 404);
  const page = readFileSync(path, "utf8").replace("<head>", `<head><meta property="csp-nonce" content="${nonce}">`);
  return context.html(page, 200, { "content-security-policy": policy(nonce), "cache-control": ASK_FIRST });
}
