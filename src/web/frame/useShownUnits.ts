import { useEffect } from "react";
import { useSession } from "../state/session.ts";
import { useSettings } from "../state/settings.ts";

/** Words the findings and workings of the open job anew when other units are chosen. */
export function useShownUnits(): void {
  useEffect(
    () =>
      useSettings.subscribe((now, before) => {
        if (now.system !== before.system) useSession.getState().rerun();
      }),
    [],
  );
}
