import { type ReactElement, type SyntheticEvent, useState } from "react";
import { Button, Form, Input, Label, Text, TextArea, TextField } from "react-aria-components";
import { changesBetween } from "../../job/merge.ts";
import { TitledDialog } from "../controls/TitledDialog.tsx";
import { useSession } from "../state/session.ts";
import { useSettings } from "../state/settings.ts";
import { ChangeTable } from "./ChangeTable.tsx";

interface Shown {
  readonly isOpen: boolean;
  readonly onClose: () => void;
}

/** Saves the open job as a new revision: who, why, and what changed since the last one. */
export function SaveDialog({ isOpen, onClose }: Shown): ReactElement | null {
  return isOpen ? (
    <TitledDialog title="Save a revision" isOpen onClose={onClose} stays>
      <SaveForm onClose={onClose} />
    </TitledDialog>
  ) : null;
}

function SaveForm({ onClose }: Pick<Shown, "onClose">): ReactElement {
  const who = useSettings((settings) => settings.who);
  const setWho = useSettings((settings) => settings.setWho);
  const file = useSession((session) => session.file);
  const saved = useSession((session) => session.saved);
  const base = useSession((session) => session.base);
  const issues = useSession((session) => session.issues);
  const saving = useSession((session) => session.saving);
  const problem = useSession((session) => session.saveProblem);
  const save = useSession((session) => session.save);
  const [why, setWhy] = useState("");
  const changes = changesBetween(saved, file);
  const submit = (event: SyntheticEvent): void => {
    event.preventDefault();
    if (changes.length === 0) return;
    void save(why.trim()).then(() => {
      if (useSession.getState().saveProblem === undefined) onClose();
    });
  };
  return (
    <Form className="dialog-form" onSubmit={submit}>
      <TextField className="field" value={who} onChange={setWho} maxLength={80} isRequired autoFocus={who === ""}>
        <Label className="field-name">Who saves</Label>
        <Input className="field-input" autoComplete="name" />
      </TextField>
      <TextField className="field" value={why} onChange={(text) => setWhy(text.replace(/\s*\n\s*/g, " "))} maxLength={500} autoFocus={who !== ""}>
        <Label className="field-name">Why</Label>
        <TextArea className="field-input" rows={2} />
        <Text slot="description" className="field-says">
          One line that others will understand, such as: customer wants the door at the blind end.
        </Text>
      </TextField>
      {issues.length === 0 ? null : <p className="quiet">The file has {issues.length === 1 ? "an issue" : `${issues.length} issues`}; it is saved as a draft all the same.</p>}
      {changes.length === 0 ? (
        <p>Nothing is changed since revision {base}: there is nothing to save.</p>
      ) : (
        <ChangeTable title={`Changed since revision ${base}: ${changes.length}`} changes={changes} />
      )}
      {problem === undefined ? null : (
        <p className="alert" role="alert">
          {problem}
        </p>
      )}
      <div className="actions">
        <Button className="button is-main" type="submit" isDisabled={saving || changes.length === 0}>
          {saving ? "Saving" : "Save"}
        </Button>
        <Button className="button" onPress={onClose}>
          Do not save
        </Button>
      </div>
    </Form>
  );
}
