import { type ReactElement, useState } from "react";
import { Button } from "react-aria-components";
import { useSession } from "../state/session.ts";
import { SaveDialog } from "./SaveDialog.tsx";

/** Says that someone else saved the job while there are changes here. */
export function SavedElsewhere(): ReactElement | null {
  const newer = useSession((session) => session.newer);
  const [isSaving, setIsSaving] = useState(false);
  if (newer === undefined) return null;
  return (
    <div className="saved-elsewhere" role="status">
      <p>
        {newer.who} saved revision {newer.number} meanwhile. Your changes are still here; saving shows what differs and lets you keep both.
      </p>
      <Button className="button" onPress={() => setIsSaving(true)}>
        Save and compare
      </Button>
      <SaveDialog isOpen={isSaving} onClose={() => setIsSaving(false)} />
    </div>
  );
}
