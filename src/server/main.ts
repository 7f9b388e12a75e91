import { randomBytes } from "node:crypto";
import { join } from "node:path";
import { run } from "./run.ts";

const ROOT = join(import.meta.dirname, "../..");

process.exitCode = await run({
  args: process.argv.slice(2),
  databaseUrl: process.env["DATABASE_URL"],
  webFolder: join(ROOT, "dist/web"),
  examples: join(ROOT, "examples"),
  now: () => new Date(),
  newId: () => randomBytes(10).toString("hex"),
  out: (line) => process.stdout.write(`${line}\n`),
  error: (line) => process.stderr.write(`${line}\n`),
  stopped: new Promise((resolve) => {
    process.once("SIGINT", resolve);
    process.once("SIGTERM", resolve);
  }),
});
