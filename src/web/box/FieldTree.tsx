import { memo, type ReactElement, useRef } from "react";
import { Button, CheckboxButton, CheckboxField, CheckboxGroup, Label, Text } from "react-aria-components";
import { isList, isObject, type JsonObject } from "../../job/file.ts";
import { CheckMark } from "../controls/Check.tsx";
import { useSession } from "../state/session.ts";
import { insertAt, moveAt, putAt, type Steps } from "./edits.ts";
import { issueWords } from "./fieldText.ts";
import { idOf, nextId } from "./ids.ts";
import { JOB_FIELDS, samePlace, useEdit, useField } from "./useField.ts";
import { nodeAt } from "./jobFields.ts";
import { LeafField } from "./LeafField.tsx";
import { PRICE_BOOK, PriceBookField } from "./PriceBookField.tsx";
import { groupStarter, memberStarter } from "./starters.ts";

/** Editors for all fields below a place, made from the schema; `without` leaves fields out that have an editor of their own. */
export const FieldTree = memo(function FieldTree({ steps, without = [] }: Fields): ReactElement | null {
  const node = nodeAt(JOB_FIELDS, steps);
  if (node?.kind !== "group") return null;
  return (
    <div className="fields">
      {node.fields
        .filter(({ name }) => !without.includes(name))
        .map(({ name }) => (
          <FieldOf key={name} steps={[...steps, name]} />
        ))}
    </div>
  );
}, sameFields);

interface Fields {
  readonly steps: Steps;
  readonly without?: readonly string[];
}

function sameFields(a: Fields, b: Fields): boolean {
  return samePlace(a, b) && a.without?.join(" ") === b.without?.join(" ");
}

/** An editor for a field of any kind. */
export const FieldOf = memo(function FieldOf({ steps }: { readonly steps: Steps }): ReactElement | null {
  const node = nodeAt(JOB_FIELDS, steps);
  if (node === undefined || node.kind === "named") return null;
  if (steps.join(".") === PRICE_BOOK) return <PriceBookField />;
  if (node.kind === "group") return <GroupField steps={steps} />;
  if (node.kind !== "list") return <LeafField steps={steps} />;
  return node.of.kind === "choice" ? <DaysField steps={steps} options={node.of.options} /> : <ListField steps={steps} most={node.most} />;
}, samePlace);

/** A group: its fields under its name; one that may be left out is added and taken away here. */
function GroupField({ steps }: { readonly steps: Steps }): ReactElement {
  const { words, value, required, pattern, put } = useField(steps);
  const problem = useSession((session) => issueWords(session.issues, steps));
  const starter = groupStarter(pattern, useUnits());
  const canGo = !required && starter !== undefined;
  return (
    <fieldset className="field-group">
      <legend>{words.name}</legend>
      <p className="field-says">
        {words.says}
        {value === undefined && words.why !== undefined ? ` · Left out, so: ${words.why}` : ""}
      </p>
      {problem === "" ? null : <p className="field-problem">{problem}</p>}
      {value !== undefined || !canGo ? <FieldTree steps={steps} /> : null}
      {!canGo ? null : value === undefined ? (
        <Button className="button" onPress={() => put(starter)}>{`Add ${words.name.toLowerCase()}`}</Button>
      ) : (
        <Button className="button" onPress={() => put(undefined)}>{`Remove ${words.name.toLowerCase()}`}</Button>
      )}
    </fieldset>
  );
}

/** A list: its members with buttons to move and remove them, and one to add. */
function ListField({ steps, most }: { readonly steps: Steps; readonly most: number | undefined }): ReactElement {
  const { words, value, pattern } = useField(steps);
  const edit = useEdit();
  const problem = useSession((session) => issueWords(session.issues, steps));
  const add = useRef<HTMLButtonElement>(null);
  const members = isList(value) ? value : [];
  const starter = memberStarter(pattern);
  const name = words.name.toLowerCase();
  return (
    <fieldset className="field-group">
      <legend>{words.name}</legend>
      <p className="field-says">
        {words.says}
        {members.length === 0 && words.why !== undefined ? ` · Left out, so: ${words.why}` : ""}
      </p>
      {problem === "" ? null : <p className="field-problem">{problem}</p>}
      <ol className="plain-list">
        {members.map((member, index) => {
          const one = `${idOf(member) ?? `${index + 1}`} of ${name}`;
          return (
            <li key={index} className="list-member">
              {isObject(member) ? <FieldTree steps={[...steps, index]} /> : <LeafField steps={[...steps, index]} name={`${words.name} ${index + 1}`} />}
              <div className="actions">
                <Button className="button" isDisabled={index === 0} aria-label={`Move ${one} up`} onPress={() => edit(`Move ${one} up`, (draft) => moveAt(draft, steps, index, index - 1))}>
                  Up
                </Button>
                <Button className="button" isDisabled={index === members.length - 1} aria-label={`Move ${one} down`} onPress={() => edit(`Move ${one} down`, (draft) => moveAt(draft, steps, index, index + 1))}>
                  Down
                </Button>
                <Button
                  className="button"
                  aria-label={`Remove ${one}`}
                  onPress={() => {
                    edit(`Remove ${one}`, (draft) => putAt(draft, [...steps, index], undefined));
                    add.current?.focus();
                  }}
                >
                  Remove
                </Button>
              </div>
            </li>
          );
        })}
      </ol>
      {starter === undefined ? null : (
        <Button
          ref={add}
          className="button"
          isDisabled={most !== undefined && members.length >= most}
          onPress={() => edit(`Add to ${name}`, (draft) => insertAt(draft, steps, isObject(starter) ? withFreeId(useSession.getState().file, starter) : starter))}
        >
          {`Add to ${name}`}
        </Button>
      )}
    </fieldset>
  );
}

function withFreeId(file: JsonObject, starter: JsonObject): JsonObject {
  const id = starter["id"];
  return typeof id === "string" ? { ...starter, id: nextId(file, id) } : starter;
}

/** Days of the week to tick. */
function DaysField({ steps, options }: { readonly steps: Steps; readonly options: readonly string[] }): ReactElement {
  const { words, value, put } = useField(steps);
  const chosen = isList(value) ? value.map(String) : WORK_DAYS;
  return (
    <CheckboxGroup className="field" value={[...chosen]} onChange={(days) => put(options.filter((day) => days.includes(day)))}>
      <Label className="field-name">{words.name}</Label>
      <div className="actions">
        {options.map((day) => (
          <CheckboxField key={day} value={day}>
            <CheckboxButton className="check">
              {({ isSelected }) => (
                <>
                  <CheckMark isOn={isSelected} />
                  <span>{day}</span>
                </>
              )}
            </CheckboxButton>
          </CheckboxField>
        ))}
      </div>
      <Text slot="description" className="field-says">
        {words.says}
        {words.why === undefined ? "" : ` · If left out: ${words.why}`}
      </Text>
    </CheckboxGroup>
  );
}

/** Worked where the file says nothing, as the schema has it. */
const WORK_DAYS = ["Mon", "Tue", "Wed", "Thu", "Fri"];

/** The units that new things of the open job are written in. */
export function useUnits(): "metric" | "imperial" {
  return useSession((session) => (session.file["units"] === "imperial" ? "imperial" : "metric"));
}
