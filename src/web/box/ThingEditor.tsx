import type { ReactElement } from "react";
import { Button } from "react-aria-components";
import { TypedText } from "../controls/TypedText.tsx";
import { useSession } from "../state/session.ts";
import type { Steps } from "./edits.ts";
import { FieldTree } from "./FieldTree.tsx";
import { idsOf } from "./ids.ts";
import type { Place } from "./outline.ts";
import { duplicateThing, removalWords, removeThing, renameThing } from "./things.ts";
import { useEdit } from "./useField.ts";

interface Edited {
  readonly kind: "opening" | "item" | "partition" | "room";
  readonly id: string;
  readonly steps: Steps;
  readonly onGo: (place: Place | undefined) => void;
}

/** The form of an opening, item, partition or room, with what can be done to it as a whole. */
export function ThingEditor({ kind, id, steps, onGo }: Edited): ReactElement {
  const edit = useEdit();
  const removal = useSession((session) => (kind === "room" ? "" : removalWords(session.file, `${kind}s`, id)));
  const rename = (to: string): void => {
    edit(`Rename ${id} to ${to}`, (draft) => renameThing(draft, `${kind}s`, id, to));
    onGo({ kind, id: to });
  };
  const duplicate = (list: "openings" | "items"): void =>
    edit(`Duplicate ${id}`, (draft) => {
      const copy = duplicateThing(draft, list, id);
      if (copy !== undefined) onGo({ kind, id: copy });
    });
  return (
    <>
      <div className="actions">
        {kind === "opening" || kind === "item" ? (
          <Button className="button" onPress={() => duplicate(`${kind}s`)}>{`Duplicate ${id}`}</Button>
        ) : null}
        {kind === "room" ? null : (
          <Button
            className="button"
            onPress={() => {
              edit(removal, (draft) => removeThing(draft, `${kind}s`, id));
              onGo(undefined);
            }}
          >
            {removal}
          </Button>
        )}
      </div>
      {kind === "room" ? <p className="quiet">Rooms come and go with partitions.</p> : null}
      <TypedText
        label="Id"
        text={id}
        says="short name on drawings and labels; no two things share one"
        problemOf={(typing) => (typing === id ? "" : problemOfId(typing))}
        strict
        onTyped={rename}
      />
      <FieldTree steps={steps} without={["id"]} />
    </>
  );
}

function problemOfId(id: string): string {
  if (!/^[A-Za-z][A-Za-z0-9-]{0,39}$/.test(id)) return "letters, digits and hyphens, starting with a letter, 40 at most";
  return idsOf(useSession.getState().file).has(id.toLowerCase()) ? `${id} is taken` : "";
}
