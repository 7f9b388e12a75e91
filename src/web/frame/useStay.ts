import { useEffect } from "react";
import { useSession } from "../state/session.ts";

/** Asks before a window with changes that are not saved is closed. */
export function useStay(): void {
  const changed = useSession(({ job, file, saved }) => job !== undefined && !Object.is(file, saved));
  useEffect(() => {
    if (!changed) return undefined;
    const ask = (event: BeforeUnloadEvent): void => event.preventDefault();
    addEventListener("beforeunload", ask);
    return () => removeEventListener("beforeunload", ask);
  }, [changed]);
}
