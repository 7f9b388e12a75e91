import { useEffect, useState, type ReactElement } from "react";
import { Button, ToggleButton, ToggleButtonGroup } from "react-aria-components";
import { InTheBox } from "../box/InTheBox.tsx";
import { Findings } from "../findings/Findings.tsx";
import { Unread } from "../jobs/Unread.tsx";
import { FourNumbers } from "../numbers/FourNumbers.tsx";
import { ConflictDialog } from "../saving/ConflictDialog.tsx";
import { SaveDialog } from "../saving/SaveDialog.tsx";
import { SavedElsewhere } from "../saving/SavedElsewhere.tsx";
import { useSession } from "../state/session.ts";
import { hasChanges } from "../state/sessionData.ts";
import { Told } from "./Told.tsx";
import { TopBar } from "./TopBar.tsx";
import { useFrame, type Side } from "./useFrame.ts";
import { useMedia } from "./useMedia.ts";
import { usePrinting } from "./usePrinting.ts";
import { Views } from "./Views.tsx";

interface Shown {
  readonly onList: () => void;
}

/** The open job, or its text where that is no job file. */
export function JobWindow({ onList }: Shown): ReactElement {
  const job = useSession((session) => session.job?.id);
  const unread = useSession((session) => session.unread);
  if (job === undefined || unread === undefined) return <ReadJob onList={onList} />;
  return (
    <>
      <TopBar onList={onList} />
      <main className="f-page">
        <Unread job={job} unread={unread} />
      </main>
    </>
  );
}

/** What is in the box, the views of it, what was found, and the numbers that decide. */
function ReadJob({ onList }: Shown): ReactElement {
  const wide = useMedia("(width >= 1200px)");
  const narrow = useMedia("(width < 700px)");
  const printed = usePrinting();
  const changed = useSession(hasChanges);
  const { side, turnTo, show } = useFrame();
  const [isSaving, setIsSaving] = useState(false);
  useEffect(() => () => show("unfolded"), [show]);
  return (
    <>
      <TopBar onList={onList}>
        <Button className={`button${changed ? " is-main" : ""}`} onPress={() => setIsSaving(true)}>
          Save
        </Button>
        {!wide && !narrow && <SideSwitch side={side} onSide={turnTo} />}
      </TopBar>
      <SavedElsewhere />
      <Told />
      <div className={`f-middle${wide ? "" : narrow ? " is-narrow" : " is-drawn"}`}>
        {(wide || side === "box") && (
          <aside className="f-side is-left" aria-label="In the box">
            <InTheBox />
          </aside>
        )}
        {!(narrow && side !== undefined && !printed) && (
          <main className="f-views">
            <Views />
          </main>
        )}
        {(wide || printed || side === "findings") && (
          <aside className="f-side is-right" aria-label="Findings">
            <Findings />
          </aside>
        )}
      </div>
      <footer className="f-foot">
        <FourNumbers />
      </footer>
      {narrow && <Places side={side} onSide={turnTo} />}
      <SaveDialog isOpen={isSaving} onClose={() => setIsSaving(false)} />
      <ConflictDialog />
    </>
  );
}

interface Sides {
  readonly side: Side | undefined;
  readonly onSide: (side: Side | undefined) => void;
}

/** Drawers over the views on a tablet, one at a time. */
function SideSwitch({ side, onSide }: Sides): ReactElement {
  return (
    <>
      <ToggleButton className="button" isSelected={side === "box"} onChange={(open) => onSide(open ? "box" : undefined)}>
        In the box
      </ToggleButton>
      <ToggleButton className="button" isSelected={side === "findings"} onChange={(open) => onSide(open ? "findings" : undefined)}>
        Findings
      </ToggleButton>
    </>
  );
}

const PLACES: readonly { readonly id: Side | "views"; readonly name: string }[] = [
  { id: "views", name: "Views" },
  { id: "box", name: "In the box" },
  { id: "findings", name: "Findings" },
];

/** On a phone: one place at a time, told along the bottom. */
function Places({ side, onSide }: Sides): ReactElement {
  return (
    <nav aria-label="Places">
      <ToggleButtonGroup
        className="f-places"
        aria-label="Place shown"
        disallowEmptySelection
        selectedKeys={[side ?? "views"]}
        onSelectionChange={(keys) => onSide(keys.has("box") ? "box" : keys.has("findings") ? "findings" : undefined)}
      >
        {PLACES.map(({ id, name }) => (
          <ToggleButton key={id} className="button" id={id}>
            {name}
          </ToggleButton>
        ))}
      </ToggleButtonGroup>
    </nav>
  );
}
