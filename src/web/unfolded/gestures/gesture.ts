import { dragging } from "./dragging.ts";
import { panning } from "./panning.ts";
import { pinching } from "./pinching.ts";
import { pointing } from "./pointing.ts";
import { resizing } from "./resizing.ts";
import type { Gesture, Input, Pointing, Turn } from "./states.ts";

export const IDLE: Gesture = { state: "idle" };

/** One step of a gesture: the state that follows and what has to be done. */
export function turn(gesture: Gesture, input: Input): Turn {
  switch (gesture.state) {
    case "idle":
      return input.kind === "down" ? { next: pressed(input), effects: [] } : { next: gesture, effects: [] };
    case "pointing":
      return pointing(gesture, input);
    case "dragging":
      return dragging(gesture, input);
    case "resizing":
      return resizing(gesture, input);
    case "panning":
      return panning(gesture, input);
    case "pinching":
      return pinching(gesture, input);
  }
}

function pressed({ pointer, at, hit, copy, reading }: Extract<Input, { kind: "down" }>): Pointing {
  return { state: "pointing", pointer, from: at, hit, copy, reading };
}
