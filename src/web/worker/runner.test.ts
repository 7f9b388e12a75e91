import { describe, expect, it } from "vitest";
import { DEMO_JOBS } from "../../../test/demoJobs.ts";
import type { JsonValue } from "../../job/file.ts";
import type { Screen, ScreenFinding } from "../../river/screen.ts";
import type { System } from "../../units/format.ts";
import type { GivenBook } from "./answers.ts";
import { makeRunner } from "./runner.ts";

const [demo] = DEMO_JOBS;
if (demo === undefined) throw new Error("there is no demo job");
const book: GivenBook = { kind: "book", book: JSON.parse(demo.bookText) as JsonValue };
const noBook: GivenBook = { kind: "none", unpriced: "There is none.", mend: "Choose one." };

/** What a finding says without the names in it: boards and dampers are called by inches in any units. */
function worded({ says, facts }: ScreenFinding): string {
  return Object.values(facts).reduce<string>((words, fact) => (typeof fact === "string" && fact !== "" ? words.replaceAll(fact, "…") : words), says);
}

describe("the worker's runner", () => {
  it("gives a screen that can be posted between threads, and the working of its findings", () => {
    const runner = makeRunner();
    const answer = runner.run(demo.file, book, "metric");
    if (answer.kind !== "screen") throw new Error(answer.kind);
    expect(structuredClone(answer)).toEqual(answer);
    for (const { id } of answer.screen.findings) expect(runner.working({ kind: "finding", id })).toBeDefined();
    expect(runner.working({ kind: "finding", id: "no such finding" })).toBeUndefined();
  });

  it("gives the slow checks apart, with sections and pictures that can be posted too", () => {
    const runner = makeRunner();
    expect(runner.sections()).toEqual([]);
    const answer = runner.slow(demo.file, "metric");
    if (answer.kind !== "slow") throw new Error(answer.kind);
    const [section] = runner.sections();
    const picture = runner.picture(section!.id, "design", "metric");
    const given = { answer, sections: runner.sections(), heat: runner.heat(), picture };
    expect(picture).toBeDefined();
    expect(structuredClone(given)).toEqual(given);
    expect(runner.working({ kind: "heat loss" })).toBeDefined();
    expect(runner.picture("no such section", "design", "metric")).toBeUndefined();
    expect(runner.slow({ ...demo.file, units: "furlongs" }, "metric").kind).toBe("issues");
  });

  it("gives the issues of a file and goes on afterwards", () => {
    const runner = makeRunner();
    expect(runner.run({ ...demo.file, units: "furlongs" }, book, "metric").kind).toBe("issues");
    expect(runner.run(demo.file, book, "metric").kind).toBe("screen");
  });

  it.each(["run", "quick"] as const)("leaves out price and days where the book is missing or cannot be read, says why, and shows all the rest: %s", (pace) => {
    const runner = makeRunner();
    const screenWith = (given: GivenBook): Screen => {
      const answer = runner[pace](demo.file, given, "metric");
      if (answer.kind !== "screen") throw new Error(answer.kind);
      return answer.screen;
    };
    const priced = screenWith(book);
    for (const given of [noBook, { kind: "book", book: null }] as const) {
      const { build, findings, headline, quote, plan } = screenWith(given);
      expect({ build, findings }).toEqual({ build: priced.build, findings: priced.findings });
      expect([quote, plan]).toEqual([[], []]);
      const { stops, watches, mass } = priced.headline;
      expect(headline).toMatchObject({ stops, watches, mass });
      expect(headline).toHaveProperty("unpriced", given.kind === "none" ? "There is none." : "The price book cannot be read.");
      expect(runner.working({ kind: "mass of part", id: build.parts[0]!.id })).toBeDefined();
      for (const kind of ["price", "delivery day"] as const) expect(runner.working({ kind })).toBeUndefined();
      expect(runner.working({ kind: "quote line", id: priced.quote[0]!.id })).toBeUndefined();
    }
  });

  it("words every finding in the units shown, with the same verdicts and numbers", () => {
    const runner = makeRunner();
    const findings = (system: System): readonly ScreenFinding[] => {
      const answer = runner.run(demo.file, book, system);
      if (answer.kind !== "screen") throw new Error(answer.kind);
      return answer.screen.findings;
    };
    const [metric, imperial] = [findings("metric"), findings("imperial")];
    expect(metric.map(({ id, verdict, facts }) => ({ id, verdict, facts }))).toEqual(imperial.map(({ id, verdict, facts }) => ({ id, verdict, facts })));
    expect(metric.map(worded).filter((words) => /\d (in|ft|lb)\b|\d"/.test(words))).toEqual([]);
    expect(imperial.map(worded).filter((words) => /\d (mm|kg)\b/.test(words))).toEqual([]);
    expect(metric.filter(({ says }, at) => says !== imperial[at]!.says).length).toBeGreaterThan(10);
    const [slow, quick] = [runner.slow(demo.file, "imperial"), runner.quick(demo.file, book, "imperial")];
    if (slow.kind !== "slow" || quick.kind !== "screen") throw new Error(`${slow.kind}, ${quick.kind}`);
    const apart = [...quick.screen.findings, ...slow.slow.findings];
    expect(new Map(apart.map(({ id, says }) => [id, says]))).toEqual(new Map(imperial.map(({ id, says }) => [id, says])));
    expect(slow.slow.findings.filter(({ id, says }) => says !== metric.find((one) => one.id === id)?.says).length).toBeGreaterThan(0);
  });
});
