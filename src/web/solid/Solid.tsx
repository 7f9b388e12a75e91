import { useCallback, useState, type ReactElement } from "react";
import { Button } from "react-aria-components";
import "../controls/controls.css";
import { useSession } from "../state/session.ts";
import { hasWebgl } from "./hasWebgl.ts";
import { SolidView } from "./SolidView.tsx";

interface Shown {
  /** Leads to the unfolded view, which needs no WebGL. */
  readonly onUnfolded: () => void;
}

/** The build in three dimensions; the unfolded view is offered where the browser cannot draw it. */
export function Solid({ onUnfolded }: Shown): ReactElement {
  const screen = useSession((session) => session.screen);
  const job = useSession((session) => session.job?.id);
  const [can, setCan] = useState(hasWebgl);
  const onLost = useCallback(() => setCan(false), []);
  if (!can) {
    return (
      <div className="s-without" role="status">
        <p>This browser cannot draw in three dimensions (it offers no WebGL), so the build is not shown here. The unfolded view shows the same build.</p>
        <Button className="button is-main" onPress={onUnfolded}>
          Go to the unfolded view
        </Button>
        <Button className="button" onPress={() => setCan(hasWebgl())}>
          Try again
        </Button>
      </div>
    );
  }
  if (screen === undefined || job === undefined) return <p className="s-wait quiet">No build yet.</p>;
  return <SolidView key={job} job={job} screen={screen} onLost={onLost} />;
}
