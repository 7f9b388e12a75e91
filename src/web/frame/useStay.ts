import { useEffect } from "react";
import { useSession } from "../state/session.ts";
import { hasChanges } from "../state/sessionData.ts";

/** Asks before a window with changes that are not saved is closed. */
export function useStay(): void {
  const changed = useSession(hasChanges);
  useEffect(() => {
    if (!changed) return undefined;
    const ask = (event: BeforeUnloadEvent): void => event.preventDefault();
    addEventListener("beforeunload", ask);
    return () => removeEventListener("beforeunload", ask);
  }, [changed]);
}
