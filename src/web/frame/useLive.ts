import { useEffect } from "react";
import type { LiveEvent } from "../../job/api.ts";
import { forgetBooks } from "../state/answer.ts";
import { followLive, hearLive } from "../state/live.ts";
import { server } from "../state/server.ts";
import { useSession } from "../state/session.ts";

/** Follows what others save while this window is shown. */
export function useLive(): void {
  useEffect(() => {
    const stops = [hearLive((event) => void hear(event)), followLive()];
    return () => {
      for (const stop of stops) stop();
    };
  }, []);
}

async function hear(event: LiveEvent): Promise<void> {
  const { job, heardSave, rerun } = useSession.getState();
  if (event.kind !== "saved") {
    forgetBooks();
    rerun();
  }
  try {
    if (event.kind === "saved") await heardSave(event.job, event.revision, event.who);
    if (event.kind !== "refresh" || job === undefined) return;
    const { number, who } = await server.job(job.id);
    await heardSave(job.id, number, who);
  } catch {
    // The server is away again; the next connection asks again.
  }
}
