// Writes the pack of every demo job into out/demo/<name>, so that anyone can look at real packs after one command.
import { spawnSync } from "node:child_process";
import { readdirSync, rmSync } from "node:fs";

const SUFFIX = ".job.json";
const jobs = readdirSync("examples").filter((file) => file.endsWith(SUFFIX)).sort();
if (jobs.length === 0) fail("No demo job found in examples/.");

// A pack left by an earlier run must not pass for one written now.
rmSync("out/demo", { recursive: true, force: true });

for (const file of jobs) {
  const into = `out/demo/${file.slice(0, -SUFFIX.length)}`;
  console.log(`\n== ${file} -> ${into}`);
  const run = spawnSync(process.execPath, ["bin/cornerpost.mjs", "pack", `examples/${file}`, "--into", into], {
    stdio: "inherit",
  });
  if (run.status !== 0) fail(`The pack of examples/${file} was not written.`);
}

/**
 * @param {string} message
 * @returns {never}
 */
function fail(message) {
  console.error(message);
  process.exit(1);
}
