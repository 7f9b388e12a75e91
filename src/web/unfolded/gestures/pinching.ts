import type { Vec2 } from "../../../river/screen.ts";
import type { Input, Pinching, Turn } from "./states.ts";

/** Fingers closer than this say nothing about size. */
const CLOSEST = 8;

/** Two fingers zoom about their middle and move the paper with it; lifting one goes on as a pan with the other. */
export function pinching(gesture: Pinching, input: Input): Turn {
  if (input.kind === "cancel") return { next: { state: "idle" }, effects: [] };
  const { first, second } = gesture;
  if (input.kind === "down" || (input.pointer !== first.pointer && input.pointer !== second.pointer)) return { next: gesture, effects: [] };
  const isFirst = input.pointer === first.pointer;
  const other = isFirst ? second : first;
  if (input.kind === "up") return { next: { state: "panning", pointer: other.pointer, last: other.at }, effects: [] };
  const moved = { pointer: input.pointer, at: input.at };
  const before = isFirst ? first.at : second.at;
  const next: Pinching = isFirst ? { ...gesture, first: moved } : { ...gesture, second: moved };
  const was = middle(before, other.at);
  const is = middle(input.at, other.at);
  const times = Math.max(CLOSEST, apart(input.at, other.at)) / Math.max(CLOSEST, apart(before, other.at));
  return { next, effects: [{ do: "pan", by: { x: is.x - was.x, y: is.y - was.y } }, { do: "zoom", about: is, times }] };
}

function middle(a: Vec2, b: Vec2): Vec2 {
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
}

function apart(a: Vec2, b: Vec2): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}
