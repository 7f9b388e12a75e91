// Builds the app's page where it is missing or older than what it is made from.
import { spawnSync } from "node:child_process";
import { existsSync, readdirSync, statSync } from "node:fs";
import { join } from "node:path";

const ROOT = join(import.meta.dirname, "..");
const PAGE = join(ROOT, "dist/web/index.html");
/** Rooms that are no part of the page. */
const OTHER_ROOMS = ["server", "store", "cli"];

/** Returns when the page is there and no older than its sources. Throws where it cannot be built. */
export function buildPage() {
  if (!isStale()) return;
  process.stdout.write("Building the app\n");
  // In a process of its own: whoever asks may run as a test or in development, and the page is for use all the same.
  const vite = join(ROOT, "node_modules/vite/bin/vite.js");
  const built = spawnSync(process.execPath, [vite, "build", "--logLevel", "warn"], { cwd: ROOT, env: { ...process.env, NODE_ENV: "production" }, stdio: "inherit" });
  if (built.status !== 0) throw new Error("the app's page could not be built");
}

/** Whether the built page is missing or older than any file that it is made from. */
function isStale() {
  if (!existsSync(PAGE)) return true;
  const built = statSync(PAGE).mtimeMs;
  return ["src", "vite.config.ts", "package-lock.json"].some((path) => newest(join(ROOT, path)) > built);
}

/**
 * @param {string} path
 * @returns {number}
 */
function newest(path) {
  const stat = statSync(path);
  if (!stat.isDirectory()) return /\.test\.tsx?$/.test(path) ? 0 : stat.mtimeMs;
  return Math.max(0, ...readdirSync(path).filter((name) => !OTHER_ROOMS.includes(name)).map((name) => newest(join(path, name))));
}
