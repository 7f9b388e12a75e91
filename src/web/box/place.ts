import type { Selection } from "../state/session.ts";
import { PLAIN_FIELDS, type Place, type PlainField } from "./outline.ts";
import { wordsFor } from "./fieldWords.ts";

/** Where a selection's form is; undefined for what has none here. The floor is edited as plain fields. */
export function placeOf(selection: Selection | undefined): Place | undefined {
  if (selection === undefined) return undefined;
  switch (selection.kind) {
    case "part":
    case "finding":
      return undefined;
    case "face":
      return selection.id === "floor" ? { kind: "fields", field: "floor" } : { kind: "face", id: selection.id };
    case "opening":
    case "item":
    case "partition":
    case "build-up":
      return { kind: selection.kind, id: selection.id };
  }
}

/** What going to a place selects on the drawings; undefined for places that no drawing shows. */
export function selectionAt(place: Place): Selection | undefined {
  switch (place.kind) {
    case "room":
      return undefined;
    case "fields":
      return place.field === "floor" ? { kind: "face", id: "floor" } : undefined;
    case "opening":
    case "item":
    case "partition":
    case "face":
    case "build-up":
      return { kind: place.kind, id: place.id };
  }
}

/** The place as the title of its form. */
export function titleOf(place: Place): string {
  switch (place.kind) {
    case "fields":
      return wordsFor(place.field).name;
    case "face":
      return wordsFor(`faces.${place.id}`).name;
    case "build-up":
      return `Build-up ${place.id}`;
    case "opening":
    case "item":
    case "partition":
    case "room":
      return `${KINDS[place.kind]} ${place.id}`;
  }
}

const KINDS = { opening: "Opening", item: "Item", partition: "Partition", room: "Room" } as const;

/** The form that holds the field at a path's first step. */
export function isPlainField(step: string | number | undefined): step is PlainField {
  return PLAIN_FIELDS.some((one) => one === step);
}
