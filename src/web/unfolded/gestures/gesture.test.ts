import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { IDLE, turn } from "./gesture.ts";
import type { Effect, Gesture, Hit, Input } from "./states.ts";

const THING: Hit = { on: "thing", id: "D1", key: "right" };
const down = (hit: Hit, more: Partial<Extract<Input, { kind: "down" }>> = {}): Input => ({
  kind: "down", pointer: 1, at: { x: 100, y: 100 }, hit, copy: false, reading: false, ...more,
});
const move = (x: number, y: number, pointer = 1): Input => ({ kind: "move", pointer, at: { x, y }, free: false });
const up = (pointer = 1): Input => ({ kind: "up", pointer, at: { x: 100, y: 100 } });

function play(inputs: readonly Input[]): { readonly end: Gesture; readonly effects: readonly Effect[] } {
  return inputs.reduce<{ end: Gesture; effects: readonly Effect[] }>(
    ({ end, effects }, input) => {
      const { next, effects: more } = turn(end, input);
      return { end: next, effects: [...effects, ...more] };
    },
    { end: IDLE, effects: [] },
  );
}

describe("gestures on the sheet", () => {
  it("pick what lies under a press that does not move", () => {
    expect(play([down(THING), move(102, 101), up()]).effects).toEqual([{ do: "pick", hit: THING, at: { x: 100, y: 100 } }]);
  });

  it("drag a thing by the whole way from the press", () => {
    expect(play([down(THING), move(110, 100), move(130, 90), up()])).toEqual({
      end: IDLE,
      effects: [
        { do: "begin move", id: "D1", key: "right", copy: false },
        { do: "move", by: { x: 10, y: 0 }, free: false },
        { do: "move", by: { x: 30, y: -10 }, free: false },
        { do: "finish" },
      ],
    });
  });

  it("pull a handle", () => {
    const handle: Hit = { on: "handle", id: "D1", key: "right", handle: { u: 1, v: 0 } };
    expect(play([down(handle), move(120, 100), up()]).effects.map((effect) => effect.do)).toEqual(["begin resize", "resize", "finish"]);
  });

  it("put a thing back when they are cancelled", () => {
    const { end, effects } = play([down(THING), move(120, 100), { kind: "cancel" }, move(140, 100), up()]);
    expect(effects.map((effect) => effect.do)).toEqual(["begin move", "move", "abandon"]);
    expect(end).toEqual(IDLE);
  });

  it("move the paper where nothing lies, and everywhere while reading", () => {
    for (const press of [down({ on: "nothing" }), down({ on: "face", key: "left" }), down(THING, { reading: true })]) {
      expect(play([press, move(110, 105), move(115, 105)]).effects).toEqual([
        { do: "pan", by: { x: 10, y: 5 } },
        { do: "pan", by: { x: 5, y: 0 } },
      ]);
    }
  });

  it("zoom with two fingers by how their distance grows, about their middle", () => {
    const { effects } = play([down(THING), down(THING, { pointer: 2, at: { x: 200, y: 100 } }), move(300, 100, 2)]);
    expect(effects).toEqual([
      { do: "pan", by: { x: 50, y: 0 } },
      { do: "zoom", about: { x: 200, y: 100 }, times: 2 },
    ]);
  });

  it("go on with one finger when the other lifts", () => {
    const { effects } = play([down(THING), down(THING, { pointer: 2, at: { x: 200, y: 100 } }), up(1), move(210, 100, 2)]);
    expect(effects).toEqual([{ do: "pan", by: { x: 10, y: 0 } }]);
  });

  it("always end what they begin, whatever the hands do", () => {
    const at = fc.record({ x: fc.integer({ min: 0, max: 400 }), y: fc.integer({ min: 0, max: 400 }) });
    const pointer = fc.integer({ min: 1, max: 3 });
    const input: fc.Arbitrary<Input> = fc.oneof(
      fc.record({ kind: fc.constant("down" as const), pointer, at, hit: fc.constantFrom<Hit>(THING, { on: "nothing" }), copy: fc.boolean(), reading: fc.boolean() }),
      fc.record({ kind: fc.constant("move" as const), pointer, at, free: fc.boolean() }),
      fc.record({ kind: fc.constant("up" as const), pointer, at }),
      fc.constant({ kind: "cancel" as const }),
    );
    fc.assert(
      fc.property(fc.array(input, { maxLength: 40 }), (inputs) => {
        const { effects } = play([...inputs, { kind: "cancel" }]);
        let open = false;
        for (const effect of effects) {
          if (effect.do === "begin move" || effect.do === "begin resize") {
            expect(open).toBe(false);
            open = true;
          } else if (effect.do === "finish" || effect.do === "abandon") {
            expect(open).toBe(true);
            open = false;
          } else if (effect.do === "move" || effect.do === "resize") expect(open).toBe(true);
          else expect(open).toBe(false);
        }
        expect(open).toBe(false);
      }),
      { seed: 5 },
    );
  });
});
