import type { ReactElement } from "react";
import { Button } from "react-aria-components";
import { TitledDialog } from "../controls/TitledDialog.tsx";
import { useLeaving } from "../state/leaving.ts";
import { useSession } from "../state/session.ts";

interface Shown {
  readonly onStay: () => void;
  readonly onLeft: () => void;
}

/** Asks before changes that are not saved give way to another job. */
export function LeavingDialog({ onStay, onLeft }: Shown): ReactElement {
  const { wanted, stay, leave } = useLeaving();
  const title = useSession(({ job }) => job?.title ?? "");
  const back = (): void => {
    stay();
    onStay();
  };
  return (
    <TitledDialog title="Changes that are not saved" isOpen={wanted !== undefined} onClose={stay} stays>
      <p>{title} has changes that no revision holds yet. Go back and save them, or leave them behind.</p>
      <div className="actions">
        <Button className="button is-main" autoFocus onPress={back}>
          Back to the job
        </Button>
        <Button
          className="button"
          onPress={() => {
            leave();
            onLeft();
          }}
        >
          Leave them behind
        </Button>
      </div>
    </TitledDialog>
  );
}
