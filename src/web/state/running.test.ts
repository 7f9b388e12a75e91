import { beforeEach, describe, expect, it, vi } from "vitest";
import { DEMO_JOBS } from "../../../test/demoJobs.ts";
import type { JobFile } from "../../job/file.ts";
import { makeScreenRiver } from "../../river/screen.ts";
import type { RunAnswer, SlowAnswer } from "../worker/answers.ts";
import { makeRunning } from "./running.ts";
import { NOTHING_WORKED, type Worked } from "./sessionData.ts";
import { useSettings } from "./settings.ts";

/** A question on its way. */
interface Asked<T> {
  readonly file: JobFile;
  readonly answer: (value: T | undefined) => void;
}

const asked = vi.hoisted(() => ({ quick: [] as Asked<RunAnswer>[], slow: [] as Asked<SlowAnswer>[] }));
vi.mock("./answer.ts", () => ({ answerFor: (file: JobFile) => new Promise((answer) => asked.quick.push({ file, answer })) }));
vi.mock("./river.ts", () => ({ runSlow: (file: JobFile) => new Promise((answer) => asked.slow.push({ file, answer })) }));

const [demo] = DEMO_JOBS;
if (demo === undefined) throw new Error("there is no demo job");
const river = makeScreenRiver();
const screen = river.quick(demo.job, demo.book);
const slow = river.slow(demo.job);
const stops = (of: { readonly findings: readonly { readonly verdict: string }[] }): number => of.findings.filter(({ verdict }) => verdict === "stop").length;

/** A window with a job open, as much of it as running needs. */
function openJob() {
  const first: JobFile = { one: 1 };
  const state: { job: { id: string; title: string } | undefined; file: JobFile; saved: JobFile } & Worked = { ...NOTHING_WORKED, job: { id: "J1", title: "" }, file: first, saved: first };
  const run = makeRunning(() => state, (worked) => Object.assign(state, worked), () => Promise.resolve());
  return { state, run };
}

async function answered<T>(question: Asked<T> | undefined, value: T | undefined): Promise<void> {
  question!.answer(value);
  await new Promise((resolve) => setTimeout(resolve));
}

describe("working out the open file", () => {
  beforeEach(() => {
    asked.quick.length = 0;
    asked.slow.length = 0;
  });

  it("shows the quick answer at once and the slow checks when they come", async () => {
    const { state, run } = openJob();
    run();
    expect(state).toMatchObject({ stale: true, slowStale: true });
    await answered(asked.quick[0], { kind: "screen", screen });
    expect(state).toMatchObject({ screen, stale: false, slow: undefined, slowStale: true, savedHeadline: undefined });
    await answered(asked.slow[0], { kind: "slow", slow });
    expect(state).toMatchObject({ slow, slowStale: false });
    expect(state.screen!.headline.stops).toBe(stops(screen) + stops(slow));
    expect(state.savedHeadline).toEqual(state.screen!.headline);
  });

  it("keeps the old findings of slow checks while newer ones are on their way, and marks them", async () => {
    const { state, run } = openJob();
    run();
    await answered(asked.quick[0], { kind: "screen", screen });
    await answered(asked.slow[0], { kind: "slow", slow });
    state.file = { two: 2 };
    run();
    await answered(asked.quick[1], { kind: "screen", screen: { ...screen, findings: [] } });
    expect(state.screen!.findings).toEqual(slow.findings);
    expect(state).toMatchObject({ stale: false, slowStale: true });
    await answered(asked.slow[1], { kind: "slow", slow: { ...slow, findings: [] } });
    expect(state.screen!.findings).toEqual([]);
    expect(state.slowStale).toBe(false);
  });

  it("takes no answer that comes late: of an older file, of another job, or displaced", async () => {
    const { state, run } = openJob();
    run();
    await answered(asked.quick[0], { kind: "screen", screen });
    state.file = { two: 2 };
    run();
    await answered(asked.quick[1], { kind: "screen", screen });
    await answered(asked.slow[1], { kind: "slow", slow });
    await answered(asked.slow[0], { kind: "slow", slow: { ...slow, findings: [] } });
    expect(state.slow).toBe(slow);
    state.file = { three: 3 };
    run();
    await answered(asked.quick[2], { kind: "screen", screen });
    await answered(asked.slow[2], undefined);
    state.job = { id: "J2", title: "" };
    run();
    state.job = undefined;
    await answered(asked.quick[3], { kind: "failed", message: "too late" });
    expect(state).toMatchObject({ slow, failed: undefined, slowFailed: undefined });
  });

  it("keeps the last good answers where the file cannot be read, and tells what the slow checks could not compute", async () => {
    const { state, run } = openJob();
    run();
    await answered(asked.quick[0], { kind: "screen", screen });
    await answered(asked.slow[0], { kind: "failed", message: "no mesh" });
    expect(state).toMatchObject({ screen, slow: undefined, slowFailed: "no mesh" });
    run();
    const issue = { code: "type", path: "units", found: "7", wants: "metric", example: '"metric"' } as const;
    await answered(asked.quick[1], { kind: "issues", issues: [issue] });
    expect(state).toMatchObject({ screen, issues: [issue], stale: false, slowStale: true });
  });

  it("asks the slow checks of the last good file where the one after it cannot be read", async () => {
    const { state, run } = openJob();
    const first = state.file;
    run();
    await answered(asked.quick[0], { kind: "screen", screen });
    await answered(asked.slow[0], { kind: "slow", slow });
    state.file = { two: 2 };
    run();
    asked.quick[1]!.answer({ kind: "screen", screen });
    state.file = { units: 7 };
    run();
    await answered(asked.quick[2], { kind: "issues", issues: [] });
    expect(asked.slow.map(({ file }) => file)).toEqual([first, { two: 2 }]);
    expect(state.slowStale).toBe(true);
    await answered(asked.slow[1], { kind: "slow", slow: { ...slow, findings: [] } });
    expect(state).toMatchObject({ slowStale: false, slow: { findings: [] } });
  });

  it("asks no slow checks of a file again, as after a change of the price book", async () => {
    const { state, run } = openJob();
    run();
    await answered(asked.quick[0], { kind: "screen", screen });
    await answered(asked.slow[0], { kind: "slow", slow });
    run();
    expect(state).toMatchObject({ stale: true, slowStale: true });
    await answered(asked.quick[1], { kind: "screen", screen });
    expect(state).toMatchObject({ stale: false, slowStale: false });
    expect(asked.slow).toHaveLength(1);
  });

  it("waits no longer for slow checks once those of the last file that could be read have answered", async () => {
    const { state, run } = openJob();
    run();
    await answered(asked.quick[0], { kind: "screen", screen });
    state.file = { two: 2 };
    run();
    await answered(asked.quick[1], { kind: "failed", message: "no build" });
    await answered(asked.slow[0], { kind: "slow", slow });
    expect(state).toMatchObject({ failed: "no build", slow, stale: false, slowStale: false });
  });

  it("asks the slow checks again where the same file is worded in other units", async () => {
    const { state, run } = openJob();
    useSettings.setState({ system: "metric" });
    run();
    await answered(asked.quick[0], { kind: "screen", screen });
    await answered(asked.slow[0], { kind: "slow", slow });
    useSettings.setState({ system: "imperial" });
    run();
    await answered(asked.quick[1], { kind: "screen", screen });
    expect(state).toMatchObject({ stale: false, slowStale: true });
    await answered(asked.slow[1], { kind: "slow", slow });
    expect(state).toMatchObject({ stale: false, slowStale: false });
  });
});
