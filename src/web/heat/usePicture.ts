import { useEffect, useState } from "react";
import type { Hour, SectionPicture } from "../../river/sections.ts";
import type { System } from "../../units/format.ts";
import { pictureOf } from "../state/river.ts";
import { useSession } from "../state/session.ts";

export type AskedPicture =
  | { readonly kind: "waiting" | "gone" }
  | { readonly kind: "failed"; readonly message: string }
  | { readonly kind: "picture"; readonly picture: SectionPicture };

/** The picture of a section at an hour, asked for again after each run; the one before stays until the next has come. */
export function usePicture(section: string, hour: Hour, system: System): AskedPicture {
  const slow = useSession((session) => session.slow);
  const [asked, setAsked] = useState<AskedPicture>({ kind: "waiting" });
  useEffect(() => {
    let wanted = true;
    pictureOf(section, hour, system).then(
      (picture) => {
        if (wanted) setAsked(picture === undefined ? { kind: "gone" } : { kind: "picture", picture });
      },
      (error: unknown) => {
        if (wanted) setAsked({ kind: "failed", message: error instanceof Error ? error.message : String(error) });
      },
    );
    return () => {
      wanted = false;
    };
  }, [section, hour, system, slow]);
  return asked;
}
