// Writes the headline numbers of every demo job, which test/examples.test.ts holds the code to. Read the difference before
// you keep it: a number that changes here is a number that changes on a shop's papers, and belongs in the change log.
import { writeFileSync } from "node:fs";
import { runRiver } from "../src/river/river.ts";
import { DEMO_JOBS } from "../test/demoJobs.ts";
import { headlineNumbers } from "../test/headlineNumbers.ts";

for (const { name, job, book } of DEMO_JOBS) {
  const path = `examples/${name}.headline.json`;
  writeFileSync(path, `${JSON.stringify(headlineNumbers(runRiver(job, book)), undefined, 2)}\n`);
  console.log(path);
}
