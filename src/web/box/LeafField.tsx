import { memo, type ReactElement } from "react";
import { isList, isObject, type JsonValue, valueAt } from "../../job/file.ts";
import { Check } from "../controls/Check.tsx";
import { Choose, type OptionGroup } from "../controls/Choose.tsx";
import { TypedText } from "../controls/TypedText.tsx";
import { useSession } from "../state/session.ts";
import { useSettings } from "../state/settings.ts";
import type { Steps } from "./edits.ts";
import { defaultWords, issueWords, problemOfQuantity, readBack, takes, textAt, valueOfText } from "./fieldText.ts";
import { idOf } from "./ids.ts";
import type { LeafNode } from "./jobFields.ts";
import { rowGroups } from "./rowChoices.ts";
import { type FieldAt, samePlace, useField } from "./useField.ts";

/** An editor for one field: a text, a choice, or a tick, with what it is, its default and why, and what is wrong with it. */
export const LeafField = memo(function LeafField({ steps, name }: Leaf): ReactElement | null {
  const field = useField(steps);
  const { node } = field;
  const label = name ?? field.words.name;
  switch (node.kind) {
    case "group":
    case "list":
    case "named":
    case "fixed":
      return null;
    case "yes or no":
      return <YesOrNo field={field} label={label} />;
    case "row":
    case "choice":
    case "build-up name":
    case "surface":
      return <ChoiceField steps={steps} field={field} node={node} label={label} />;
    case "quantity":
    case "own id":
    case "day":
    case "text":
    case "whole":
      return <TextField steps={steps} field={field} node={node} label={label} />;
  }
}, (a: Leaf, b: Leaf) => samePlace(a, b) && a.name === b.name);

interface Leaf {
  readonly steps: Steps;
  readonly name?: string;
}

interface Shown {
  readonly field: FieldAt;
  readonly label: string;
}

function YesOrNo({ field, label }: Shown): ReactElement {
  const { value, preset, words, put } = field;
  const isOn = typeof value === "boolean" ? value : preset === true;
  return (
    <div className="field">
      <Check isOn={isOn} onChange={put}>
        <span className="field-name">{label}</span>
      </Check>
      <span className="field-says">
        {words.says}
        <DefaultLine field={field} />
      </span>
    </div>
  );
}

function TextField({ steps, field, node, label }: Shown & { readonly steps: Steps; readonly node: LeafNode }): ReactElement {
  const text = useSession((session) => textAt(session.file, steps));
  const told = useSession((session) => issueWords(session.issues, steps));
  const system = useSettings((settings) => settings.system);
  const quantity = node.kind === "quantity" ? node.of : undefined;
  return (
    <TypedText
      label={label}
      text={text}
      lines={node.kind === "text" && node.most !== undefined && node.most >= MANY_LETTERS}
      takes={takes(node, system)}
      onTyped={(typed) => field.put(valueOfText(node, field.required, typed))}
      problemOf={(typing) => {
        const own = quantity === undefined ? "" : problemOfQuantity(quantity, typing);
        return typing !== text || told === "" ? own : told;
      }}
      besideOf={(typing) => (quantity === undefined ? "" : readBack(quantity, typing, system))}
      says={
        <>
          {field.words.says}
          <DefaultLine field={field} />
        </>
      }
    />
  );
}

const MANY_LETTERS = 1000;
/** Takes an optional field away. */
const NONE = "(none)";

function ChoiceField({ steps, field, node, label }: Shown & { readonly steps: Steps; readonly node: LeafNode }): ReactElement {
  const problem = useSession((session) => issueWords(session.issues, steps));
  const value = typeof field.value === "string" ? field.value : undefined;
  const groups = useChoices(steps, field, node, value);
  const known = value === undefined || groups.some(({ options }) => options.some(({ id }) => id === value));
  const shown = value ?? (field.preset === undefined ? undefined : String(field.preset));
  const none: readonly OptionGroup[] = field.required || field.preset !== undefined ? [] : [{ name: "", options: [{ id: NONE, name: "None" }] }];
  const strange: readonly OptionGroup[] = known ? [] : [{ name: "As typed", options: [{ id: value, name: value }] }];
  const says = [field.words.says, defaultText(field, field.value === undefined || field.value === null)].filter((text) => text !== "").join(". ");
  return (
    <Choose
      label={label}
      groups={[...none, ...strange, ...groups]}
      chosen={shown}
      empty="None"
      says={says}
      problem={problem}
      onChoose={(id) => field.put(id === NONE ? undefined : id)}
    />
  );
}

/** What may be chosen at a place of the open job. */
function useChoices(steps: Steps, field: FieldAt, node: LeafNode, chosen: string | undefined): readonly OptionGroup[] {
  const kind = useSession((session) => textAt(session.file, [...steps.slice(0, 2), "kind"]));
  const buildUps = useSession((session) => valueAt(session.file, ["buildUps"]));
  const partitions = useSession((session) => partitionIds(session.file["partitions"]));
  switch (node.kind) {
    case "row":
      return rowGroups(node.table, field.pattern, kind === "" ? undefined : kind, chosen);
    case "build-up name":
      return [{ name: "", options: Object.entries(isObject(buildUps) ? buildUps : {}).map(([id, one]) => ({ id, name: id, more: wordsOf(one) })) }];
    case "surface":
      return [{ name: "", options: [...FACES, ...partitions.split(" ").filter((id) => id !== "").map((id) => ({ id, name: `Partition ${id}` }))] }];
    case "choice":
      return [{ name: "", options: node.options.map((id) => ({ id, name: FACES.find((face) => face.id === id)?.name ?? id })) }];
    case "quantity":
    case "own id":
    case "day":
    case "text":
    case "whole":
    case "yes or no":
    case "fixed":
      return [];
  }
}

/** One text, so that a partition that moves changes nothing here; ids hold no spaces. */
function partitionIds(partitions: JsonValue | undefined): string {
  return (isList(partitions) ? partitions : []).flatMap((one) => idOf(one) ?? []).join(" ");
}

function wordsOf(buildUp: JsonValue): string | undefined {
  const what = isObject(buildUp) ? buildUp["what"] : undefined;
  return typeof what === "string" ? what : undefined;
}

/** The faces as they are chosen. */
const FACES = [
  { id: "left", name: "Left wall" },
  { id: "right", name: "Right wall" },
  { id: "blindEnd", name: "Blind end" },
  { id: "doorEnd", name: "Door end" },
  { id: "roof", name: "Roof" },
  { id: "floor", name: "Floor" },
] as const;

function DefaultLine({ field }: { readonly field: FieldAt }): ReactElement | null {
  const text = defaultText(field, field.value === undefined);
  return text === "" ? null : <span className="field-default"> {text}</span>;
}

function defaultText(field: FieldAt, isLeftOut: boolean): string {
  const words = defaultWords(field, field.words.why);
  if (words === "") return "";
  return isLeftOut ? `Left out, so: ${words}` : `If left out: ${words}`;
}
