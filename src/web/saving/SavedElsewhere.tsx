import { type ReactElement, useState } from "react";
import { Button } from "react-aria-components";
import { useSession } from "../state/session.ts";
import { hasChanges } from "../state/sessionData.ts";
import { problemWords } from "../jobs/tell.ts";
import { SaveDialog } from "./SaveDialog.tsx";

/** Says that someone else saved the job while there are changes here. */
export function SavedElsewhere(): ReactElement | null {
  const newer = useSession((session) => session.newer);
  const job = useSession((session) => session.job?.id);
  const changed = useSession(hasChanges);
  const heardSave = useSession((session) => session.heardSave);
  const [isSaving, setIsSaving] = useState(false);
  const [problem, setProblem] = useState("");
  if (newer === undefined || job === undefined) return null;
  const { number, who } = newer;
  if (!changed) {
    const take = (): void => void heardSave(job, number, who).catch((error: unknown) => setProblem(problemWords(error)));
    return (
      <div className="saved-elsewhere" role="status">
        <p>
          {who} saved revision {number} meanwhile. {problem}
        </p>
        <Button className="button" onPress={take}>
          Show revision {number}
        </Button>
      </div>
    );
  }
  return (
    <div className="saved-elsewhere" role="status">
      <p>
        {who} saved revision {number} meanwhile. Your changes are still here; saving shows what differs and lets you keep both.
      </p>
      <Button className="button" onPress={() => setIsSaving(true)}>
        Save and compare
      </Button>
      <SaveDialog isOpen={isSaving} onClose={() => setIsSaving(false)} />
    </div>
  );
}
