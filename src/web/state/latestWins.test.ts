import { describe, expect, it } from "vitest";
import { latestWins } from "./latestWins.ts";

describe("latest wins", () => {
  it("runs the first and the last of a burst, and answers undefined for those between", async () => {
    const started: number[] = [];
    const gates: (() => void)[] = [];
    const run = latestWins(async (n: number) => {
      started.push(n);
      await new Promise<void>((open) => gates.push(open));
      return n * 10;
    });
    const answers = [run(1), run(2), run(3), run(4)];
    expect(started).toEqual([1]);
    gates.shift()?.();
    expect(await answers[0]).toBe(10);
    expect(await answers[1]).toBeUndefined();
    expect(await answers[2]).toBeUndefined();
    expect(started).toEqual([1, 4]);
    gates.shift()?.();
    expect(await answers[3]).toBe(40);
  });

  it("goes on after a call that failed", async () => {
    const run = latestWins((n: number) => (n === 1 ? Promise.reject(new Error("no")) : Promise.resolve(n)));
    const first = run(1);
    const second = run(2);
    await expect(first).rejects.toThrow("no");
    expect(await second).toBe(2);
  });
});
