// Runs everything that must hold before a change is good, all of it even when a step fails, and says how much passed.
import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readFileSync, rmSync } from "node:fs";

const REPORT = "out/vitest.json";
const TOOLS = [
  { script: "types", heading: "types: the compiler accepts every file" },
  { script: "layers", heading: "layers: each room imports only what layers.mjs allows" },
  { script: "lint", heading: "lint: pure rooms stay pure, habits are kept" },
  { script: "unused", heading: "unused: no file, export or dependency without a user" },
];

/** @typedef {{ passed: number, failed: number }} Tally */
/** @type {Tally} */
const PASSED = { passed: 1, failed: 0 };
/** @type {Tally} */
const FAILED = { passed: 0, failed: 1 };

const tools = TOOLS.map(({ script, heading }) => (runStep(heading, [script]) ? PASSED : FAILED));
const tests = runTests();
const passed = count("passed");
const failed = count("failed");

console.log(`\n${String(passed)} passed, ${String(failed)} failed`);
process.exit(failed === 0 ? 0 : 1);

/** @param {"passed" | "failed"} which */
function count(which) {
  return [...tools, tests].reduce((sum, tally) => sum + tally[which], 0);
}

/**
 * Runs one npm script under a heading and tells whether it succeeded.
 *
 * @param {string} heading
 * @param {readonly string[]} script the script's name, then what is passed on to it
 * @returns {boolean}
 */
function runStep(heading, script) {
  console.log(`\n== ${heading}`);
  const start = performance.now();
  const run = spawnSync("npm", ["run", "--silent", ...script], { stdio: "inherit" });
  const ok = run.status === 0;
  const seconds = ((performance.now() - start) / 1000).toFixed(1);
  console.log(`== ${ok ? "ok" : "FAILED"} after ${seconds} s`);
  return ok;
}

/**
 * Runs every test and tallies them. A runner that fails without a failed test, and a run without tests, are failures.
 *
 * @returns {Tally}
 */
function runTests() {
  mkdirSync("out", { recursive: true });
  // An old report must not be counted when the runner dies before it writes a new one.
  rmSync(REPORT, { force: true });
  const reporters = ["--reporter=default", "--reporter=json", `--outputFile.json=${REPORT}`];
  const ok = runStep("tests: unit tests and demo jobs", ["unit", "--", ...reporters]);
  const tally = readReport();
  if (tally.failed > 0) return tally;
  if (!ok || tally.passed === 0) {
    console.error(ok ? "No test ran." : "The test runner failed outside of any test.");
    return { passed: tally.passed, failed: 1 };
  }
  return tally;
}

/**
 * @typedef {object} Report what the test runner writes, as far as it is read here
 * @property {number} numPassedTests
 * @property {number} numFailedTests
 * @property {number} numPendingTests
 * @property {number} numTodoTests
 * @property {{ status: string, assertionResults: { status: string }[] }[]} testResults
 */

/**
 * Reads the runner's report. A test file that could not be loaded counts as one failure, and so does a skipped test: a
 * test that does not run holds nothing.
 *
 * @returns {Tally}
 */
function readReport() {
  if (!existsSync(REPORT)) {
    console.error("The test runner left no report.");
    return FAILED;
  }
  /** @type {unknown} */
  const json = JSON.parse(readFileSync(REPORT, "utf8"));
  const report = /** @type {Report} */ (json);
  const unloaded = report.testResults.filter(
    (file) => file.status === "failed" && !file.assertionResults.some((test) => test.status === "failed"),
  ).length;
  const skipped = report.numPendingTests + report.numTodoTests;
  if (skipped > 0) console.error(`${String(skipped)} tests were skipped; each counts as failed.`);
  return { passed: report.numPassedTests, failed: report.numFailedTests + unloaded + skipped };
}
