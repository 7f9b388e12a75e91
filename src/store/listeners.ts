import { liveEvent } from "../job/api.ts";
import type { LiveEvent } from "../job/api.ts";

/** Those in this process who want to know of saves. */
export interface Listeners {
  readonly add: (listener: (event: LiveEvent) => void) => () => void;
  readonly tell: (event: LiveEvent) => void;
  /** Tells what another server sent as text. */
  readonly tellText: (text: string) => void;
}

/** The channel on which servers on one PostgreSQL database tell each other of saves. */
export const CHANNEL = "cornerpost_saved";

export function makeListeners(): Listeners {
  const all = new Set<(event: LiveEvent) => void>();
  const tell = (event: LiveEvent): void => {
    for (const listener of all) listener(event);
  };
  return {
    add: (listener) => {
      all.add(listener);
      return () => void all.delete(listener);
    },
    tell,
    tellText: (text) => {
      const event = liveEvent.safeParse(jsonOf(text));
      tell(event.success ? event.data : { kind: "refresh" });
    },
  };
}

function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
