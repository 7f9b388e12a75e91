import { describe, expect, it } from "vitest";
import { DEMO_JOBS } from "../../../test/demoJobs.ts";
import type { JsonValue } from "../../job/file.ts";
import { makeRunner } from "./runner.ts";

const [demo] = DEMO_JOBS;
if (demo === undefined) throw new Error("there is no demo job");
const book = JSON.parse(demo.bookText) as JsonValue;

describe("the worker's runner", () => {
  it("gives a screen that can be posted between threads, and the working of its findings", () => {
    const runner = makeRunner();
    const answer = runner.run(demo.file, book);
    if (answer.kind !== "screen") throw new Error(answer.kind);
    expect(structuredClone(answer)).toEqual(answer);
    for (const { id } of answer.screen.findings) expect(runner.working({ kind: "finding", id })).toBeDefined();
    expect(runner.working({ kind: "finding", id: "no such finding" })).toBeUndefined();
  });

  it("gives the issues of a file, or of a price book, and goes on afterwards", () => {
    const runner = makeRunner();
    expect(runner.run({ ...demo.file, units: "furlongs" }, book).kind).toBe("issues");
    expect(runner.run({ ...demo.file, units: "furlongs" }, null).kind).toBe("issues");
    expect(runner.run(demo.file, null).kind).toBe("book issues");
    expect(runner.run(demo.file, book).kind).toBe("screen");
  });
});
