// Times the river on the largest demo job in a warm process, stage by stage, without the papers, the solver of sections, and all
// sections of that job: `npm run bench`.
import { readFileSync, readdirSync } from "node:fs";
import { assemble } from "../src/build/assemble.ts";
import { runChecks } from "../src/checks/checks.ts";
import { draw } from "../src/drawings/draw.ts";
import { readJob } from "../src/job/read.ts";
import { readPriceBook } from "../src/job/readPriceBook.ts";
import { packFiles } from "../src/papers/pack.ts";
import { planJob } from "../src/plan/planJob.ts";
import { priceJob } from "../src/price/priceJob.ts";
import { runRiver } from "../src/river/river.ts";
import { takeOffBuild } from "../src/takeoff/takeOffBuild.ts";
import { conductionTimes } from "./conduction.ts";
import { sectionTimes } from "./sections.ts";

/** Runs and time for each measurement, at most; at least a few runs however long they take. */
const WARM_UP = { runs: 15, ms: 1000 };
const RUNS = { runs: 41, ms: 2500, least: 3 };

const demos = readdirSync("examples").filter((file) => file.endsWith(".job.json")).map(load);
const largest = demos.reduce((most, demo) => (demo.river.build.parts.length > most.river.build.parts.length ? demo : most));
const { name, text, file, job, book, river } = largest;
const { build, takeoff } = river;

const stages: Readonly<Record<string, () => unknown>> = {
  "read the job file": () => readJob(text),
  build: () => assemble(job),
  findings: () => runChecks(build),
  takeoff: () => takeOffBuild(build),
  price: () => priceJob(build, takeoff, book),
  plan: () => planJob(build, takeoff, book),
  drawings: () => draw(build),
};

const times = Object.entries(stages).map(([stage, run]) => ({ stage, ms: median(run) }));
const sum = times.reduce((total, { ms }) => total + ms, 0);
const whole = median(() => {
  const read = readJob(text);
  if (!read.ok) throw new Error("the job file has issues");
  return runRiver(read.job, book);
});
const record = packFiles(river, { text, file }).find(({ path }) => path === "pack.json");
if (record === undefined || !("text" in record)) throw new Error("the pack has no pack.json");
const recordText = record.text;
const reference = median(() => JSON.stringify(JSON.parse(recordText)));

console.log(`${name}: ${build.parts.length} parts; median of up to ${RUNS.runs} runs after ${WARM_UP.runs} to warm up, fewer of what is slow\n`);
for (const { stage, ms } of [...times].sort((a, b) => b.ms - a.ms)) {
  console.log(`${stage.padEnd(20)}${ms.toFixed(2).padStart(9)} ms ${((100 * ms) / sum).toFixed(0).padStart(4)} %`);
}
console.log(`\n${"river, from text".padEnd(20)}${whole.toFixed(2).padStart(9)} ms`);
console.log(`${"reference".padEnd(20)}${reference.toFixed(2).padStart(9)} ms  parse and write again the pack's JSON of ${(recordText.length / 1e6).toFixed(1)} MB`);
console.log(`${"ratio".padEnd(20)}${(whole / reference).toFixed(2).padStart(9)}     of the river to the reference; compare this one between machines`);

console.log(`\n${conductionTimes(median).join("\n")}`);
console.log(`\n${sectionTimes(job, median).join("\n")}`);

function load(file: string) {
  const text = readFileSync(`examples/${file}`, "utf8");
  const read = readJob(text);
  if (!read.ok) throw new Error(`examples/${file} has issues`);
  const book = readPriceBook(readFileSync(`examples/price-books/${read.job.prices.book}.price-book.json`, "utf8"));
  if (!book.ok) throw new Error(`the price book of examples/${file} has issues`);
  return { name: file, text, file: read.file, job: read.job, book: book.book, river: runRiver(read.job, book.book) };
}

/** Middle of the times of many runs, ms. */
function median(run: () => unknown): number {
  const timed = (): number => {
    const start = performance.now();
    run();
    return performance.now() - start;
  };
  for (let at = 0, spent = 0; at < WARM_UP.runs && spent < WARM_UP.ms; at += 1) spent += timed();
  const taken: number[] = [];
  for (let spent = 0; taken.length < RUNS.least || (taken.length < RUNS.runs && spent < RUNS.ms); ) {
    const ms = timed();
    spent += ms;
    taken.push(ms);
  }
  taken.sort((a, b) => a - b);
  return taken[Math.floor(taken.length / 2)] ?? Number.NaN;
}
