import type { ReactElement } from "react";
import { Button } from "react-aria-components";
import type { Screen } from "../../river/screen.ts";
import type { System } from "../../units/format.ts";
import { shownLength } from "../state/lengthText.ts";
import { useSession } from "../state/session.ts";
import { useSettings } from "../state/settings.ts";
import type { Selection } from "../state/selection.ts";
import { typedFile, type ItemDraft, type JobFileDraft, type OpeningDraft, type TypedFile } from "../state/typedFile.ts";
import { LengthField } from "./LengthField.tsx";
import { removalOf, takeAway, takeSize } from "./thingEdits.ts";
import { thingsOf, type Thing } from "./things.ts";
import { duplicateBeside } from "./useConductor.ts";

/** The picked thing's place and size as typed values, and what can be done with it. */
export function PickedBar({ screen }: { readonly screen: Screen }): ReactElement {
  const { file, selection, edit } = useSession();
  const system = useSettings((settings) => settings.system);
  const thing = thingsOf(file, screen).find(({ kind, id }) => kind === selection?.kind && id === selection.id);
  if (thing === undefined) return <p className="u-picked u-hint">{hintFor(selection, screen)}</p>;
  const surface = screen.build.surfaces.find(({ id }) => id === thing.surface);
  const fixed = sizeFromArticle(typedFile(file), thing, system);
  return (
    <div className="u-picked" role="group" aria-label={`${thing.id}, ${thing.what}`}>
      <p className="u-picked-name">
        <strong>{thing.id}</strong>{" "}
        <span className="u-picked-what" title={thing.what}>
          {thing.what}
        </span>
      </p>
      {fieldsOf(typedFile(file), thing).map(({ label, text, write }) => (
        <LengthField key={`${thing.id} ${label}`} label={label} text={text} onChange={(typed) => edit(`${label} of ${thing.id}`, (draft) => write(draft, typed))} />
      ))}
      {fixed === undefined ? null : <p className="u-picked-why">{fixed}</p>}
      <span className="u-picked-acts">
        {fixed === undefined ? null : (
          <Button className="button" onPress={() => edit(`Type a size for ${thing.id}`, (draft) => takeSize(draft, thing))}>
            Type a size
          </Button>
        )}
        {thing.kind !== "partition" && surface !== undefined && (
          <Button className="button" onPress={() => duplicateBeside(thing, surface)}>
            Duplicate
          </Button>
        )}
        <Button className="button" onPress={() => takeAway(thing)}>
          {removalOf(thing.kind, thing.id)}
        </Button>
      </span>
    </div>
  );
}

/** Why an opening has no grips: its article says the size. Undefined where the file does. */
function sizeFromArticle(file: TypedFile, { kind, id, rect }: Thing, system: System): string | undefined {
  const opening = kind === "opening" ? file.openings?.find((one) => one.id === id) : undefined;
  if (opening?.article === undefined || opening.size !== undefined) return undefined;
  const size = `${shownLength(rect.u1 - rect.u0, system)} by ${shownLength(rect.v1 - rect.v0, system)}`;
  return `The article says the size, ${size}: choose another article, or type a size.`;
}

function hintFor(selection: Selection | undefined, screen: Screen): string {
  if (selection?.kind === "part") {
    const part = screen.build.parts.find(({ id }) => id === selection.id);
    if (part !== undefined) return `${part.what} (${part.id})`;
  }
  if (selection?.kind === "face") {
    const name = screen.build.surfaces.find(({ id }) => id === selection.id)?.name;
    if (name !== undefined) return `${name.charAt(0).toUpperCase()}${name.slice(1)} is picked. Press it again to pick a part of it.`;
  }
  return "Press a thing to pick it; drag to move it. Ctrl lets go of the lines, Alt drags a copy.";
}

interface Field {
  readonly label: string;
  readonly text: string;
  readonly write: (draft: JobFileDraft, text: string) => void;
}

function fieldsOf(file: TypedFile, thing: Thing): readonly Field[] {
  switch (thing.kind) {
    case "opening":
      return openingFields(file, thing.id);
    case "item":
      return itemFields(file, thing.id);
    case "partition": {
      const at = file.partitions?.find(({ id }) => id === thing.id)?.at;
      if (at === undefined) return [];
      const write = (draft: JobFileDraft, text: string): void => {
        const partition = draft.partitions?.find(({ id }) => id === thing.id);
        if (partition !== undefined) partition.at = text;
      };
      return [{ label: "Along", text: at, write }];
    }
  }
}

function openingFields(file: TypedFile, id: string): readonly Field[] {
  const opening = file.openings?.find((one) => one.id === id);
  if (opening === undefined) return [];
  const { at, size, face } = opening;
  const field = (label: string, text: string, put: (one: OpeningDraft, text: string) => void): Field => ({
    label,
    text,
    write: (draft, typed) => {
      const one = draft.openings?.find((other) => other.id === id);
      if (one !== undefined) put(one, typed);
    },
  });
  const places = [
    field("Along", at.along, (one, text) => {
      one.at.along = text;
    }),
    field(face === "floor" || face === "roof" ? "Across" : "Up", at.up, (one, text) => {
      one.at.up = text;
    }),
  ];
  if (size === undefined) return places;
  return [
    ...places,
    field("Width", size.width, (one, text) => {
      if (one.size !== undefined) one.size.width = text;
    }),
    field("Height", size.height, (one, text) => {
      if (one.size !== undefined) one.size.height = text;
    }),
  ];
}

function itemFields(file: TypedFile, id: string): readonly Field[] {
  const item = file.items?.find((one) => one.id === id);
  if (item === undefined) return [];
  const write = (put: (one: ItemDraft, text: string) => void) => (draft: JobFileDraft, text: string): void => {
    const one = draft.items?.find((other) => other.id === id);
    if (one !== undefined) put(one, text);
  };
  const place = (label: string, key: "along" | "across" | "up", text: string): Field => ({
    label,
    text,
    write: write((one, typed) => {
      one.at[key] = typed;
    }),
  });
  const size = (label: string, key: "length" | "width" | "height"): Field => ({
    label,
    text: item.size[key],
    write: write((one, typed) => {
      one.size[key] = typed;
    }),
  });
  return [
    place("Along", "along", item.at.along),
    place("Across", "across", item.at.across),
    place("Up", "up", item.at.up ?? "0 mm"),
    size("Length", "length"),
    size("Width", "width"),
    size("Height", "height"),
  ];
}
