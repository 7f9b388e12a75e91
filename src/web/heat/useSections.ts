import { useEffect, useState } from "react";
import type { HeatTables, SectionRow } from "../../river/sections.ts";
import { sectionsOfRun } from "../state/river.ts";
import { useSession } from "../state/session.ts";

export type AskedSections =
  | { readonly kind: "waiting" }
  | { readonly kind: "failed"; readonly message: string }
  | { readonly kind: "sections"; readonly sections: readonly SectionRow[]; readonly heat: HeatTables };

/** The sections of the open job, asked for again after each run of the slow checks; those before stay until the next have come. */
export function useSections(): AskedSections {
  const slow = useSession((session) => session.slow);
  const [asked, setAsked] = useState<AskedSections>({ kind: "waiting" });
  useEffect(() => {
    if (slow === undefined) return undefined;
    let wanted = true;
    sectionsOfRun().then(
      ({ sections, heat }) => {
        if (wanted && heat !== undefined) setAsked({ kind: "sections", sections, heat });
      },
      (error: unknown) => {
        if (wanted) setAsked({ kind: "failed", message: error instanceof Error ? error.message : String(error) });
      },
    );
    return () => {
      wanted = false;
    };
  }, [slow]);
  return asked;
}
