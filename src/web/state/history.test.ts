import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { changed, gestureBegun, gestureCancelled, gestureEnded, redone, startHistory, undone, type History } from "./history.ts";

describe("history of a value", () => {
  it("takes steps back and does them again", () => {
    const two = changed(changed(startHistory("a"), "to b", "b"), "to c", "c");
    const back = undone(two);
    expect(back.now).toBe("b");
    expect(back.future.at(-1)?.label).toBe("to c");
    expect(undone(undone(back)).now).toBe("a");
    expect(redone(back)).toEqual(two);
  });

  it("makes one step of a gesture however many changes it has", () => {
    const dragged = ["b", "c", "d"].reduce((at, now) => changed(at, "ignored", now), gestureBegun(startHistory("a"), "Move D1"));
    const done = gestureEnded(dragged);
    expect(done.past).toEqual([{ label: "Move D1", before: "a" }]);
    expect(undone(done).now).toBe("a");
  });

  it("leaves nothing of a cancelled gesture, and no step of one that changed nothing", () => {
    const start = changed(startHistory("a"), "to b", "b");
    expect(gestureCancelled(changed(gestureBegun(start, "Move"), "", "c"))).toEqual(start);
    expect(gestureEnded(gestureBegun(start, "Move"))).toEqual(start);
  });

  it("forgets what was undone once something else is done", () => {
    const back = undone(changed(startHistory("a"), "to b", "b"));
    expect(changed(back, "to c", "c").future).toEqual([]);
  });

  it("comes back to where it was after as many redos as undos, from any state", () => {
    const act = fc.oneof(
      fc.integer().map((to) => (at: History<number>) => changed(at, "set", to)),
      fc.constant(undone<number>),
      fc.constant(redone<number>),
    );
    fc.assert(
      fc.property(fc.array(act, { maxLength: 40 }), fc.nat(10), (acts, times) => {
        const at = acts.reduce((history, next) => next(history), startHistory(0));
        const steps = Math.min(times, at.past.length);
        const repeat = (history: History<number>, next: typeof undone<number>) =>
          Array.from({ length: steps }).reduce<History<number>>((one) => next(one), history);
        expect(repeat(repeat(at, undone), redone)).toEqual(at);
      }),
      { seed: 3 },
    );
  });
});
