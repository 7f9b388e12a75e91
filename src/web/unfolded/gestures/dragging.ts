import type { Gesture, Input, Turn } from "./states.ts";

/** A thing follows the pointer. A second finger changes nothing; Escape puts the thing back. */
export function dragging(gesture: Extract<Gesture, { state: "dragging" }>, input: Input): Turn {
  if (input.kind === "cancel") return { next: { state: "idle" }, effects: [{ do: "abandon" }] };
  if (input.pointer !== gesture.pointer) return { next: gesture, effects: [] };
  if (input.kind === "up") return { next: { state: "idle" }, effects: [{ do: "finish" }] };
  if (input.kind === "down") return { next: gesture, effects: [] };
  const by = { x: input.at.x - gesture.from.x, y: input.at.y - gesture.from.y };
  return { next: gesture, effects: [{ do: "move", by, free: input.free }] };
}
