import type { Hono } from "hono";
import { streamSSE } from "hono/streaming";
import { ROUTES } from "../../job/api.ts";
import type { LiveEvent } from "../../job/api.ts";
import type { ServerContext } from "../context.ts";
import { Problem } from "../problem.ts";

/** Most windows that listen at once. */
const MOST = 500;
/** How often a silent line says that it is still there, so that nothing between cuts it. */
const BEAT_MS = 20_000;

/** Tells open windows of every save, as server-sent events. */
export function liveRoutes(app: Hono, { store, stopped }: ServerContext): void {
  const open = new Set<object>();
  app.get(ROUTES.live, (context) => {
    if (open.size >= MOST) throw new Problem("busy");
    return streamSSE(context, async (stream) => {
      const ended = new AbortController();
      const end = (): void => ended.abort();
      stream.onAbort(end);
      stopped.addEventListener("abort", end);
      open.add(stream);
      const send = (event: LiveEvent): void => void stream.writeSSE({ data: JSON.stringify(event) }).catch(end);
      const stop = store.onEvent(send);
      const beat = setInterval(() => void stream.write(": still here\n\n").catch(end), BEAT_MS);
      await stream.write(": listening\n\n");
      await new Promise<void>((resolve) => {
        if (ended.signal.aborted) resolve();
        ended.signal.addEventListener("abort", () => resolve());
      });
      clearInterval(beat);
      stop();
      open.delete(stream);
      stopped.removeEventListener("abort", end);
    });
  });
}
