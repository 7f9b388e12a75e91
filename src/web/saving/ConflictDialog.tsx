import { type ReactElement, useState } from "react";
import { Button, Label, RadioButton, RadioField, RadioGroup } from "react-aria-components";
import type { Choices, Conflict } from "../../job/merge.ts";
import { TitledDialog } from "../controls/TitledDialog.tsx";
import { whenText } from "../jobs/newJob.ts";
import { useSession } from "../state/session.ts";
import type { SaveConflict } from "../state/sessionData.ts";
import { ChangeTable } from "./ChangeTable.tsx";
import { choose, chooseAll, openConflicts, openWords } from "./choices.ts";
import { pathWords } from "./pathWords.ts";
import { WholeSwitch } from "./ShownValue.tsx";
import { cutWords, isLong, valueWords } from "./valueWords.ts";

/** Shows itself when someone saved first: what they changed, and three ways to go on. Nothing is lost whichever is taken. */
export function ConflictDialog(): ReactElement | null {
  const conflict = useSession((session) => session.conflict);
  return conflict === undefined ? null : <Conflicting key={conflict.latest.number} conflict={conflict} />;
}

function Conflicting({ conflict }: { readonly conflict: SaveConflict }): ReactElement {
  const resolve = useSession((session) => session.resolve);
  const setAside = (): void => useSession.setState({ conflict: undefined, newer: { number: conflict.latest.number, who: conflict.latest.who } });
  const saving = useSession((session) => session.saving);
  const problem = useSession((session) => session.saveProblem);
  const [choices, setChoices] = useState<Choices>({});
  const { latest, changes, conflicts } = conflict;
  const open = openConflicts(conflicts, choices).length;
  return (
    <TitledDialog title={`${latest.who} saved first`} isOpen onClose={setAside} stays wide>
      <p>
        Revision {latest.number} was saved by {latest.who} at <span className="figures">{whenText(latest.when)}</span>
        {latest.why === "" ? "" : `: ${latest.why}`}. Yours is not saved yet, and nothing of it is lost.
      </p>
      <ChangeTable title={`What ${latest.who} changed: ${changes.length}`} changes={changes} />
      {conflicts.length === 0 ? (
        <p>No field was changed by both, so both can be kept.</p>
      ) : (
        <section className="dialog-form" aria-label="Changed by both">
          <h3>Changed by both: {conflicts.length}</h3>
          <div className="actions">
            <Button className="button" onPress={() => setChoices(chooseAll(conflicts, "mine"))}>
              Mine everywhere
            </Button>
            <Button className="button" onPress={() => setChoices(chooseAll(conflicts, "theirs"))}>
              Theirs everywhere
            </Button>
          </div>
          {conflicts.map((one) => (
            <OneConflict key={one.path} conflict={one} side={choices[one.path]} onChoose={(side) => setChoices(choose(choices, one.path, side))} />
          ))}
          <p role="status">{openWords(open)}</p>
        </section>
      )}
      {problem === undefined ? null : (
        <p className="alert" role="alert">
          {problem}
        </p>
      )}
      <div className="actions">
        <Button className="button is-main" isDisabled={saving || open > 0} onPress={() => void resolve({ how: "merge", choices })}>
          Keep both and save
        </Button>
        <Button className="button" isDisabled={saving} onPress={() => void resolve({ how: "keep" })}>
          Save mine over theirs
        </Button>
        <Button className="button" isDisabled={saving} onPress={() => void resolve({ how: "take" })}>
          Take theirs, drop mine
        </Button>
        <Button className="button" onPress={setAside}>
          Go on editing
        </Button>
      </div>
      <p className="quiet">Every revision stays, and can be brought back from Compare. What you drop comes back by Undo.</p>
    </TitledDialog>
  );
}

interface One {
  readonly conflict: Conflict;
  readonly side: "mine" | "theirs" | undefined;
  readonly onChoose: (side: "mine" | "theirs") => void;
}

function OneConflict({ conflict, side, onChoose }: One): ReactElement {
  const [whole, setWhole] = useState(false);
  const { path } = conflict;
  const all = { base: valueWords(conflict.base), mine: valueWords(conflict.mine), theirs: valueWords(conflict.theirs) };
  const { base, mine, theirs } = whole ? all : { base: cutWords(all.base), mine: cutWords(all.mine), theirs: cutWords(all.theirs) };
  return (
    <RadioGroup className="conflict" value={side ?? null} onChange={(value) => onChoose(value === "theirs" ? "theirs" : "mine")}>
      <Label className="field-name">{pathWords(path)}</Label>
      <span className="change-value quiet">
        before: <bdi>{base}</bdi>
      </span>
      <RadioField value="mine">
        <RadioButton className="radio">
          <span className="radio-mark" aria-hidden="true" />
          <span className="change-value">
            Mine: <strong>
              <bdi>{mine}</bdi>
            </strong>
          </span>
        </RadioButton>
      </RadioField>
      <RadioField value="theirs">
        <RadioButton className="radio">
          <span className="radio-mark" aria-hidden="true" />
          <span className="change-value">
            Theirs: <strong>
              <bdi>{theirs}</bdi>
            </strong>
          </span>
        </RadioButton>
      </RadioField>
      {Object.values(all).some(isLong) ? <WholeSwitch of={pathWords(path)} whole={whole} onChange={setWhole} /> : null}
    </RadioGroup>
  );
}
