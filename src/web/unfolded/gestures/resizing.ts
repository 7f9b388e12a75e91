import type { Gesture, Input, Turn } from "./states.ts";

/** An edge or a corner follows the pointer. Escape puts it back. */
export function resizing(gesture: Extract<Gesture, { state: "resizing" }>, input: Input): Turn {
  if (input.kind === "cancel") return { next: { state: "idle" }, effects: [{ do: "abandon" }] };
  if (input.pointer !== gesture.pointer) return { next: gesture, effects: [] };
  if (input.kind === "up") return { next: { state: "idle" }, effects: [{ do: "finish" }] };
  if (input.kind === "down") return { next: gesture, effects: [] };
  const by = { x: input.at.x - gesture.from.x, y: input.at.y - gesture.from.y };
  return { next: gesture, effects: [{ do: "resize", by, free: input.free }] };
}
