import { create } from "zustand";
import { liveEvent, ROUTES, type LiveEvent } from "../../job/api.ts";

/** The window's connection to the server: down from when it breaks until the next one stands. */
export const useLine = create<{ readonly isDown: boolean }>(() => ({ isDown: false }));

const HEARERS = new Set<(event: LiveEvent) => void>();

/**
 * Hears of saves by others, as long as the window follows them. After a `refresh` something may have been missed. Returns
 * what stops it.
 */
export function hearLive(hear: (event: LiveEvent) => void): () => void {
  HEARERS.add(hear);
  return () => void HEARERS.delete(hear);
}

/**
 * Keeps the window's one connection while the window is shown: a browser allows few to one server, and a hidden window
 * needs none. Tells `refresh` after every connection but a first one that nothing came before. Returns what stops it.
 */
export function followLive(): () => void {
  const state: { source: EventSource | undefined; missed: boolean; again: ReturnType<typeof setTimeout> | undefined } = { source: undefined, missed: false, again: undefined };
  const leave = (): void => {
    clearTimeout(state.again);
    state.source?.close();
    state.source = undefined;
  };
  const follow = (): void => {
    if (document.hidden) {
      state.missed = true;
      leave();
      return;
    }
    if (state.source !== undefined && state.source.readyState !== EventSource.CLOSED) return;
    const source = new EventSource(ROUTES.live);
    source.onopen = () => {
      useLine.setState({ isDown: false });
      if (state.missed) tell({ kind: "refresh" });
      state.missed = true;
    };
    source.onmessage = ({ data }: MessageEvent<string>) => {
      const event = liveEvent.safeParse(JSON.parse(data));
      if (event.success) tell(event.data);
    };
    source.onerror = () => {
      state.missed = true;
      useLine.setState({ isDown: true });
      // The browser itself tries again after a break, but not after an answer that was a refusal.
      if (source.readyState === EventSource.CLOSED && state.source === source) state.again = setTimeout(follow, AGAIN_MS);
    };
    state.source = source;
  };
  follow();
  document.addEventListener("visibilitychange", follow);
  return () => {
    document.removeEventListener("visibilitychange", follow);
    leave();
  };
}

/** How long after a refusal the server is asked once more, ms. */
const AGAIN_MS = 5000;

function tell(event: LiveEvent): void {
  for (const hear of HEARERS) hear(event);
}
