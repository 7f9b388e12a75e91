import { isList, isObject, valueAt, type JsonValue } from "../../job/file.ts";
import { useSession } from "../state/session.ts";
import type { Draft, Steps } from "./edits.ts";
import { putAt } from "./edits.ts";
import { type FieldWords, wordsFor } from "./fieldWords.ts";
import { idOf } from "./ids.ts";
import { type Field, jobFields, nodeAt, patternOf } from "./jobFields.ts";

/** The fields of a job file, read from the schema once. */
export const JOB_FIELDS = jobFields();

export interface FieldAt extends Field {
  readonly pattern: string;
  readonly words: FieldWords;
  readonly value: JsonValue | undefined;
  readonly put: (value: JsonValue | undefined) => void;
}

/** True for the same place: a field is drawn again when its own value changes, not whenever the file does. */
export function samePlace(a: { readonly steps: Steps }, b: { readonly steps: Steps }): boolean {
  return a.steps.length === b.steps.length && a.steps.every((step, at) => step === b.steps[at]);
}

/** A field of the open job: what the schema and the words say of it, what stands there, and how to change it. */
export function useField(steps: Steps): FieldAt {
  const value = useSession((session) => valueAt(session.file, steps));
  const edit = useEdit();
  const pattern = patternOf(JOB_FIELDS, steps);
  const words = wordsFor(pattern);
  const found = fieldAt(steps);
  return {
    ...found,
    pattern,
    words,
    value,
    put: (put) => edit(`Change ${words.name.toLowerCase()}${ofWhat(useSession.getState().file, steps)}`, (draft) => putAt(draft, steps, put)),
  };
}

/** Changes the open job as one step that can be undone; the label says what was done. */
export function useEdit(): (label: string, recipe: (draft: Draft) => void) => void {
  const edit = useSession((session) => session.edit);
  return (label, recipe) => edit(label, (draft) => recipe(draft as unknown as Draft));
}

/** A field as its group's schema describes it; a member of a list has to be there. */
function fieldAt(steps: Steps): Field {
  const holder = nodeAt(JOB_FIELDS, steps.slice(0, -1));
  const last = steps.at(-1);
  const own = holder?.kind === "group" ? holder.fields.find(({ name }) => name === last) : undefined;
  if (own !== undefined) return own;
  const node = nodeAt(JOB_FIELDS, steps);
  if (node === undefined || last === undefined) throw new RangeError(`the job file has no field ${steps.join(".")}`);
  return { name: String(last), node, required: true, preset: undefined };
}

/** " of D1", " of wall": the thing that a field belongs to, for the name of the step. */
function ofWhat(file: JsonValue, steps: Steps): string {
  const [list, member] = steps;
  if (list === "buildUps" && typeof member === "string") return ` of ${member}`;
  if (list === "faces" && typeof member === "string") return ` of ${wordsFor(`faces.${member}`).name.toLowerCase()}`;
  const members = isObject(file) && list !== undefined ? file[String(list)] : undefined;
  const id = isList(members) && typeof member === "number" ? idOf(members[member]) : undefined;
  return id === undefined ? "" : ` of ${id}`;
}
