import type { Vec2 } from "../../../river/screen.ts";
import type { Input, Pointing, Turn } from "./states.ts";

/** Pixels that a hand trembles before a press is a drag. */
const SLACK = 4;

/** Pressed but not yet moved: a release picks; a move drags a thing, pulls a handle, or moves the paper. */
export function pointing(gesture: Pointing, input: Input): Turn {
  switch (input.kind) {
    case "down":
      return input.pointer === gesture.pointer
        ? { next: gesture, effects: [] }
        : {
            next: { state: "pinching", first: { pointer: gesture.pointer, at: gesture.from }, second: { pointer: input.pointer, at: input.at } },
            effects: [],
          };
    case "move":
      return input.pointer !== gesture.pointer || within(gesture.from, input.at) ? { next: gesture, effects: [] } : begun(gesture, input.at, input.free);
    case "up":
      return input.pointer === gesture.pointer
        ? { next: { state: "idle" }, effects: [{ do: "pick", hit: gesture.hit, at: gesture.from }] }
        : { next: gesture, effects: [] };
    case "cancel":
      return { next: { state: "idle" }, effects: [] };
  }
}

function begun({ pointer, from, hit, copy, reading }: Pointing, at: Vec2, free: boolean): Turn {
  const by = { x: at.x - from.x, y: at.y - from.y };
  if (hit.on === "thing" && !reading) {
    return {
      next: { state: "dragging", pointer, from },
      effects: [{ do: "begin move", id: hit.id, key: hit.key, copy }, { do: "move", by, free }],
    };
  }
  if (hit.on === "handle" && !reading) {
    return {
      next: { state: "resizing", pointer, from },
      effects: [{ do: "begin resize", id: hit.id, key: hit.key, handle: hit.handle }, { do: "resize", by, free }],
    };
  }
  return { next: { state: "panning", pointer, last: at }, effects: [{ do: "pan", by }] };
}

function within(from: Vec2, at: Vec2): boolean {
  return Math.hypot(at.x - from.x, at.y - from.y) < SLACK;
}
