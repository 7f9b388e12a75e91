import type { Screen, Surface } from "../../river/screen.ts";
import type { Rect } from "../../river/screen.ts";
import type { System } from "../../units/format.ts";
import { duplicateThing, removalWords, removeThing } from "../box/things.ts";
import type { Draft } from "../box/edits.ts";
import { lengthText } from "../state/lengthText.ts";
import { useSession } from "../state/session.ts";
import { typedFile, type JobFileDraft } from "../state/typedFile.ts";
import type { JobFile } from "../../job/file.ts";
import { lengthAt, type Thing, type ThingKind } from "./things.ts";

const LISTS = { opening: "openings", item: "items", partition: "partitions" } as const;

/** The units that lengths of a job file are written in. */
export function unitsOf(file: JobFile): System {
  return typedFile(file).units === "imperial" ? "imperial" : "metric";
}

/**
 * Writes a thing's place and size into a draft so that it fills `rect` on the face that `thing` is seen on; `thing` is as it
 * was before, so that the steps of one drag do not add up. Fields that do not change keep the user's own text.
 */
export function placeThing(draft: JobFileDraft, thing: Thing, rect: Rect, surface: Surface): void {
  const by = { u0: rect.u0 - thing.rect.u0, u1: rect.u1 - thing.rect.u1, v0: rect.v0 - thing.rect.v0, v1: rect.v1 - thing.rect.v1 };
  const write = writer(draft.units);
  switch (thing.kind) {
    case "opening": {
      const opening = draft.openings?.find(({ id }) => id === thing.id);
      if (opening === undefined) return;
      opening.at.along = write(opening.at.along, rect.u0);
      opening.at.up = write(opening.at.up, rect.v0);
      if (opening.size === undefined) return;
      opening.size.width = write(opening.size.width, rect.u1 - rect.u0);
      opening.size.height = write(opening.size.height, rect.v1 - rect.v0);
      return;
    }
    case "item":
      placeItem(draft, thing, by, surface);
      return;
    case "partition": {
      const partition = draft.partitions?.find(({ id }) => id === thing.id);
      if (partition !== undefined) partition.at = write(partition.at, thing.middle + by.u0);
    }
  }
}

/** Writes a length where it differs from what the text says. */
function writer(units: System): (text: string | undefined, metres: number) => string {
  return (text, metres) => {
    const was = lengthAt(text);
    return text !== undefined && was !== undefined && same(was, metres) ? text : lengthText(metres, units);
  };
}

const SAME = 1e-6;

function same(a: number, b: number): boolean {
  return Math.abs(a - b) < SAME;
}

/** An item moves in the world: along, across and up follow from the axes of the face on which it is pulled. */
function placeItem(draft: JobFileDraft, { id, block }: Thing, by: Rect, { along, up }: Surface): void {
  const item = draft.items?.find((one) => one.id === id);
  if (item === undefined || block === undefined) return;
  const write = writer(draft.units);
  for (const axis of ["x", "y", "z"] as const) {
    const on = along[axis] !== 0 ? { way: along[axis], low: by.u0, high: by.u1 } : up[axis] !== 0 ? { way: up[axis], low: by.v0, high: by.v1 } : undefined;
    if (on === undefined) continue;
    const from = on.way > 0 ? on.low : -on.high;
    const to = on.way > 0 ? on.high : -on.low;
    const { place, size } = FIELDS[axis];
    const at = block[place] + from;
    // A field that is left out stands for zero; it stays out as long as it does.
    if (item.at[place] !== undefined || !same(at, 0)) item.at[place] = write(item.at[place], at);
    item.size[size] = write(item.size[size], block[size] + to - from);
  }
}

const FIELDS = {
  x: { place: "along", size: "length" },
  y: { place: "across", size: "width" },
  z: { place: "up", size: "height" },
} as const;

/** Gives an opening whose article says the size that size as its own, to be changed from there. */
export function takeSize(draft: JobFileDraft, { id, rect }: Thing): void {
  const opening = draft.openings?.find((one) => one.id === id);
  if (opening === undefined) return;
  opening.size = { width: lengthText(rect.u1 - rect.u0, draft.units), height: lengthText(rect.v1 - rect.v0, draft.units) };
}

/** Takes a thing away with all that goes with it, as one step that says so. The focus goes to the face that it was on. */
export function takeAway({ kind, id, surface }: Pick<Thing, "kind" | "id" | "surface">): void {
  const { edit, select, screen } = useSession.getState();
  edit(removalOf(kind, id), (draft) => removeThing(draft as unknown as Draft, LISTS[kind], id));
  // The faces of a partition are shown only while it, or what is in it, is picked.
  const isPartition = screen?.build.surfaces.some((one) => one.id === surface && one.kind === "partition") === true;
  select(isPartition ? { kind: "partition", id: surface } : undefined);
  const faces = [...document.querySelectorAll<SVGElement>('[data-hit="face"]')];
  faces.find(({ dataset: { key } }) => key === surface || key?.startsWith(`${surface} `) === true)?.focus();
}

/** What taking a thing of the open job away does, in words. */
export function removalOf(kind: ThingKind, id: string): string {
  return removalWords(useSession.getState().file, LISTS[kind], id);
}

/** Copies an opening or item under a new id and gives the id; partitions are added where rooms are named. */
export function copyThing(draft: JobFileDraft, kind: ThingKind, id: string): string | undefined {
  return kind === "partition" ? undefined : duplicateThing(draft as unknown as Draft, LISTS[kind], id);
}

/** Where a copy stands: a hand's breadth beside the first, on the side that has room. */
export function besideRect(rect: Rect, surface: Surface): Rect {
  const { lined } = surface;
  const width = rect.u1 - rect.u0;
  const by = rect.u1 + BESIDE + width <= lined.u1 ? width + BESIDE : -(width + BESIDE);
  return { ...rect, u0: rect.u0 + by, u1: rect.u1 + by };
}

const BESIDE = 0.1;

/** The surface that a thing is seen on; undefined where the build has none yet. */
export function surfaceOfThing(screen: Screen, thing: Thing): Surface | undefined {
  return screen.build.surfaces.find(({ id }) => id === thing.surface);
}
