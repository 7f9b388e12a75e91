import { describe, expect, it } from "vitest";
import type { JsonValue } from "../src/job/file.ts";
import { issueText } from "../src/job/issue.ts";
import { readJob } from "../src/job/read.ts";
import { packFiles } from "../src/papers/pack.ts";
import { compilePdf } from "../src/papers/pdf.ts";
import { makeRiver } from "../src/river/river.ts";
import { brokenNumbers } from "./brokenNumbers.ts";
import { DEMO_JOBS } from "./demoJobs.ts";
import { type Mutation, mutate, pathsOf, seeded, valueAt } from "./mutate.ts";

const MUTATIONS = 2000;
/** Text papers are written for every so many packs, and PDFs for fewer: they take the most time. */
const PAPERS_EVERY = 4;
const PDF_EVERY = 60;
const SEED = 20270201;

/** A mutated job file, numbered, with the demo job that it was made from. */
interface Case {
  readonly number: number;
  readonly demo: (typeof DEMO_JOBS)[number];
  readonly mutation: Mutation;
}

const cases = makeCases();

describe.each(DEMO_JOBS)("mutated job files of $name", ({ name }) => {
  it("give a list of issues or a whole river, never a crash and never a broken number", { timeout: 300_000 }, () => {
    const mine = cases.filter(({ demo }) => demo.name === name);
    const run = makeRiver();
    const outcomes = mine.map((one, at) => outcomeOf(run, one, at));
    expect(outcomes.filter((outcome) => outcome.startsWith("broken"))).toEqual([]);
    // Mutations that were all refused, or all taken, would test only half of what they are for.
    expect(outcomes.filter((outcome) => outcome === "river").length).toBeGreaterThan(mine.length / 10);
    expect(outcomes.filter((outcome) => outcome === "issues").length).toBeGreaterThan(mine.length / 10);
  });
});

function outcomeOf(run: ReturnType<typeof makeRiver>, one: Case, at: number): string {
  try {
    const text = JSON.stringify(one.mutation.file);
    const read = readJob(text);
    if (!read.ok) {
      const silent = read.issues.length === 0 || read.issues.some((issue) => issueText(issue).length < 10 || issue.wants === "");
      return silent ? said(one, "an issue that says nothing") : "issues";
    }
    const river = run(read.job, one.demo.book);
    const broken = brokenNumbers(river);
    if (broken.length > 0) return said(one, broken.join(", "));
    if (at % PAPERS_EVERY === 0) {
      for (const file of packFiles(river, { text, file: read.file })) {
        if ("typst" in file && at % PDF_EVERY === 0) compilePdf(file.typst);
      }
    }
    return "river";
  } catch (error) {
    return said(one, error instanceof Error ? String(error.stack) : String(error));
  }
}

function said({ number, demo, mutation }: Case, trouble: string): string {
  return `broken: number ${number}, ${demo.name}, ${mutation.said}: ${trouble}`;
}

function makeCases(): readonly Case[] {
  const random = seeded(SEED);
  const others: readonly JsonValue[] = DEMO_JOBS.flatMap(({ file }) => pathsOf(file).map((path) => valueAt(file, path)));
  return Array.from({ length: MUTATIONS }, (_, number) => {
    const demo = DEMO_JOBS[number % DEMO_JOBS.length]!;
    return { number, demo, mutation: mutate(demo.file, others, random) };
  });
}
