import { type ReactElement, useState } from "react";
import { Button } from "react-aria-components";
import { problemWords } from "../jobs/tell.ts";
import { useSession } from "../state/session.ts";
import { hasChanges } from "../state/sessionData.ts";

/** Goes back to an earlier revision of the open job: its file in place of this one, as a step, until it is saved as the next. */
export function BringBack({ number }: { readonly number: number }): ReactElement {
  const bringBack = useSession((session) => session.bringBack);
  const changed = useSession(hasChanges);
  const [isBack, setIsBack] = useState(false);
  const [problem, setProblem] = useState("");
  const back = async (): Promise<void> => {
    setProblem("");
    try {
      await bringBack(number);
      setIsBack(true);
    } catch (error) {
      setProblem(problemWords(error));
    }
  };
  return (
    <div className="actions">
      <Button className="button" onPress={() => void back()}>
        Go back to revision {number}
      </Button>
      <p role="status">
        {isBack && changed ? `The job stands as it was in revision ${number}. Save it as the next revision, or take it back by Undo.` : problem}
      </p>
    </div>
  );
}
