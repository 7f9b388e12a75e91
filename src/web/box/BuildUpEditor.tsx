import { type ReactElement, useState } from "react";
import { Button } from "react-aria-components";
import { valueAt } from "../../job/file.ts";
import { formatLength } from "../../units/format.ts";
import { TypedText } from "../controls/TypedText.tsx";
import { WorkingButton } from "../findings/WorkingPanel.tsx";
import { useSession } from "../state/session.ts";
import { useSettings } from "../state/settings.ts";
import { clearSizeOf, clearSizeText } from "./clearSize.ts";
import { copyOf, insertAt, putAt } from "./edits.ts";
import { issuesBelow } from "./fieldText.ts";
import { FieldTree, useUnits } from "./FieldTree.tsx";
import { LayerList } from "./LayerList.tsx";
import { type Layer, layerStackOf } from "./layerStack.ts";
import { LeafField } from "./LeafField.tsx";
import type { Place } from "./outline.ts";
import { StackDrawing } from "./StackDrawing.tsx";
import type { SheetProfile } from "./stackShapes.ts";
import { groupStarter, memberStarter } from "./starters.ts";
import { addBuildUp, buildUpsOf, removeBuildUp, renameBuildUp, usesOf } from "./things.ts";
import { useEdit } from "./useField.ts";

interface Edited {
  readonly name: string;
  readonly onGo: (place: Place | undefined) => void;
}

/** A build-up as a drawn stack of layers, with the fields of the layer chosen. */
export function BuildUpEditor({ name, onGo }: Edited): ReactElement {
  const file = useSession((session) => session.file);
  const issues = useSession((session) => session.issues);
  const build = useSession((session) => session.screen?.build);
  const stale = useSession((session) => session.stale);
  const system = useSettings((settings) => settings.system);
  const units = useUnits();
  const edit = useEdit();
  const [chosenAt, setChosenAt] = useState<string>();
  const steps = ["buildUps", name];
  const stack = layerStackOf(valueAt(file, steps));
  const keyed = (layer: Layer): string => layer.steps.join(".");
  const chosen = stack.layers.find((layer) => keyed(layer) === chosenAt);
  const uses = usesOf(file, name);
  const clear = build === undefined ? undefined : clearSizeOf(build);
  const total = stack.total === undefined ? "a thickness cannot be read" : formatLength(stack.total, system);
  const add = (kind: Layer["kind"]): void => {
    const [field, isList] = FIELDS[kind];
    const pattern = `buildUps{}.${field}`;
    const starter = isList ? memberStarter(pattern) : groupStarter(pattern, units);
    if (starter === undefined) return;
    edit(`Add ${kind} to ${name}`, (draft) => (isList ? insertAt(draft, [...steps, field], starter) : putAt(draft, [...steps, field], copyOf(starter))));
    const after = stack.layers.filter((layer) => layer.kind === kind).length;
    setChosenAt(isList ? `${field}.${after}` : field);
  };
  return (
    <>
      <p className="quiet">{uses.length === 0 ? "Not used on any face." : `On ${uses.map(({ where }) => where).join(", ")}.`}</p>
      <StackDrawing
        stack={stack}
        profile={profileFor(build, uses.map(({ steps: at }) => String(at[1])))}
        name={`${name}, cut through: ${stack.layers.map(({ what }) => what).join("; ")}. Total ${total}.`}
        chosen={chosen}
        onChoose={(layer) => setChosenAt(keyed(layer))}
      />
      <dl className="stack-sizes">
        <dt>Total, from the inside plane</dt>
        <dd className="figures">{total}</dd>
        {clear === undefined ? null : (
          <>
            <dt>Clear size left in the box</dt>
            <dd className={stale ? "is-stale" : ""}>
              <WorkingButton of={{ kind: "clear size" }} title="the clear size">
                {clearSizeText(clear, system)}
              </WorkingButton>
            </dd>
          </>
        )}
      </dl>
      <LayerList name={name} stack={stack} chosen={chosen} onChoose={(layer) => setChosenAt(layer === undefined ? undefined : keyed(layer))} onAdd={add} />
      {chosen === undefined ? null : (
        <section className="field-group" aria-label={`Fields of ${chosen.what}`}>
          <h3>{chosen.what}</h3>
          <FieldTree steps={[...steps, ...chosen.steps]} />
        </section>
      )}
      <TypedText
        label="Name"
        text={name}
        says="letters, digits, spaces and hyphens; faces and partitions follow"
        problemOf={(typing) => (typing === name || canBeNamed(typing, Object.keys(buildUpsOf(file))) ? "" : "taken, or not a name: letters first, 40 at most")}
        strict
        onTyped={(to) => {
          edit(`Rename ${name} to ${to}`, (draft) => {
            renameBuildUp(draft, name, to);
          });
          onGo({ kind: "build-up", id: to });
        }}
      />
      <LeafField steps={[...steps, "what"]} />
      {issuesBelow(issues, steps) === 0 ? null : <p className="field-problem">Some fields of this build-up cannot be read; each says what it wants.</p>}
      <div className="actions">
        <Button className="button" onPress={() => edit(`Duplicate ${name}`, (draft) => onGo({ kind: "build-up", id: addBuildUp(draft, name) }))}>{`Duplicate ${name}`}</Button>
        <Button
          className="button"
          isDisabled={uses.length > 0}
          onPress={() => {
            edit(`Remove ${name}`, (draft) => removeBuildUp(draft, name));
            onGo(undefined);
          }}
        >{`Remove ${name}`}</Button>
      </div>
    </>
  );
}

/** Where each kind of layer stands in a build-up, and whether it is a list. */
const FIELDS: Readonly<Record<Layer["kind"], readonly [field: string, isList: boolean]>> = {
  foam: ["foam", false],
  batts: ["batts", false],
  studs: ["studs", false],
  furring: ["furring", false],
  board: ["boards", true],
  paint: ["paint", true],
};

function canBeNamed(name: string, taken: readonly string[]): boolean {
  return /^[A-Za-z][A-Za-z0-9 -]{0,39}$/.test(name) && !taken.includes(name);
}

interface Profiled {
  readonly surfaces: readonly { readonly id: string; readonly profile: SheetProfile | undefined }[];
}

/** The sheet behind the first face that uses it; the left wall's where none does yet. */
function profileFor(build: Profiled | undefined, faces: readonly string[]): SheetProfile | undefined {
  const id = faces.length === 0 ? "left" : faces[0];
  return build?.surfaces.find((surface) => surface.id === id)?.profile;
}
