import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { runFile, runSlow } from "./river.ts";

class Silent extends EventTarget {
  ended = false;
  postMessage(): void {
    // It was never loaded: nothing is heard there.
  }
  terminate(): void {
    this.ended = true;
  }
}

describe("a worker that cannot be loaded", () => {
  const made: Silent[] = [];
  beforeEach(() => {
    made.length = 0;
    vi.stubGlobal("Worker", class extends Silent {
      constructor() {
        super();
        made.push(this);
      }
    });
  });
  afterEach(() => vi.unstubAllGlobals());

  it.each([
    ["quick", (): Promise<unknown> => runFile({}, { kind: "none", unpriced: "", mend: "" }, "metric")],
    ["slow", (): Promise<unknown> => runSlow({}, "metric")],
  ])("fails what is asked of it, and gives way to a new one: %s checks", async (_, ask) => {
    const first = ask();
    const waiting = ask();
    made[0]?.dispatchEvent(new Event("error"));
    await expect(first).rejects.toThrow("could not be started");
    await vi.waitFor(() => expect(made).toHaveLength(2));
    made[1]?.dispatchEvent(new Event("error"));
    await expect(waiting).rejects.toThrow("could not be started");
    expect(made.map(({ ended }) => ended)).toEqual([true, true]);
  });
});
