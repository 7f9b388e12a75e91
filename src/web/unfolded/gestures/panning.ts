import type { Gesture, Input, Turn } from "./states.ts";

/** The paper follows the pointer; a second finger makes it a pinch. */
export function panning(gesture: Extract<Gesture, { state: "panning" }>, input: Input): Turn {
  switch (input.kind) {
    case "cancel":
      return { next: { state: "idle" }, effects: [] };
    case "down":
      return {
        next: { state: "pinching", first: { pointer: gesture.pointer, at: gesture.last }, second: { pointer: input.pointer, at: input.at } },
        effects: [],
      };
    case "up":
      return { next: input.pointer === gesture.pointer ? { state: "idle" } : gesture, effects: [] };
    case "move": {
      if (input.pointer !== gesture.pointer) return { next: gesture, effects: [] };
      const by = { x: input.at.x - gesture.last.x, y: input.at.y - gesture.last.y };
      return { next: { ...gesture, last: input.at }, effects: [{ do: "pan", by }] };
    }
  }
}
