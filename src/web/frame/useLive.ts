import { useEffect } from "react";
import { listen, server } from "../state/server.ts";
import { useSession } from "../state/session.ts";
import type { LiveEvent } from "../../job/api.ts";

/** Follows what others save while this window is open. */
export function useLive(): void {
  useEffect(() => listen((event) => void hear(event)), []);
}

async function hear(event: LiveEvent): Promise<void> {
  const { job, heardSave, rerun } = useSession.getState();
  switch (event.kind) {
    case "saved":
      return heardSave(event.job, event.revision, event.who);
    case "price book":
      rerun();
      return;
    case "refresh": {
      if (job === undefined) return;
      try {
        const { number, who } = await server.job(job.id);
        await heardSave(job.id, number, who);
      } catch {
        // The server is away again; the next connection asks again.
      }
    }
  }
}
