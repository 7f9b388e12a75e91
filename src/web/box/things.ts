import { isList, isObject, type JobFile, type JsonObject, type JsonValue } from "../../job/file.ts";
import { copyOf, type Draft, insertAt, listAt, putAt } from "./edits.ts";
import { idOf, indexOfId, nextId } from "./ids.ts";
import { itemStarter, OPENING_STARTERS } from "./starters.ts";

export type System = "metric" | "imperial";
export type ThingList = "openings" | "items" | "partitions";

/** Adds an opening of a kind to a face or partition and gives its id. */
export function addOpening(draft: Draft, kind: string, face: string, system: System): string {
  const starter = OPENING_STARTERS.find((one) => one.kind === kind);
  if (starter === undefined) throw new RangeError(`there is no kind of opening "${kind}"`);
  const id = nextId(draft, starter.id);
  insertAt(draft, ["openings"], { id, kind, face, ...starter.make(system) });
  return id;
}

/** Adds a fit-out item and gives its id. */
export function addItem(draft: Draft, system: System): string {
  const id = nextId(draft, "IT1");
  insertAt(draft, ["items"], { id, ...itemStarter(system) });
  return id;
}

/**
 * Adds a partition after the others, with the room behind it: rooms are one more than partitions. It takes a build-up
 * that a partition may have, which is made where the file has none.
 */
export function addPartition(draft: Draft, at: string): string {
  const buildUp = partitionBuildUp(draft) ?? addPartitionBuildUp(draft);
  const id = nextId(draft, "P1");
  insertAt(draft, ["partitions"], { id, at, buildUp });
  insertAt(draft, ["rooms"], { id: nextId(draft, "room"), what: "new room" });
  return id;
}

/** Copies a thing under a new id, right after it, and gives the id. */
export function duplicateThing(draft: Draft, list: Exclude<ThingList, "partitions">, id: string): string | undefined {
  const index = indexOfId(draft[list], id);
  const original = index === undefined ? undefined : listAt(draft, [list])?.[index];
  if (index === undefined || !isObject(original)) return undefined;
  const copy = nextId(draft, id);
  insertAt(draft, [list], { ...original, id: copy }, index + 1);
  return copy;
}

/** Takes a thing away; with a partition go the openings in it, its fire rating and the room on its door-end side. */
export function removeThing(draft: Draft, list: ThingList, id: string): void {
  const index = indexOfId(draft[list], id);
  if (index === undefined) return;
  putAt(draft, [list, index], undefined);
  if (list !== "partitions") return;
  putAt(draft, ["rooms", index + 1], undefined);
  for (const steps of [["openings"], ["fire", "rated"]]) {
    const members = listAt(draft, steps) ?? [];
    for (let at = members.length - 1; at >= 0; at -= 1) if (faceOf(members[at]) === id) putAt(draft, [...steps, at], undefined);
  }
}

/** What taking a thing away does, in words: for the button, and for the step that can be undone. */
export function removalWords(file: JobFile, list: ThingList, id: string): string {
  const inIt = list === "partitions" ? openingsIn(file, id) : [];
  return inIt.length === 0 ? `Remove ${id}` : `Remove ${id} with ${[inIt.slice(0, -1).join(", "), ...inIt.slice(-1)].filter((text) => text !== "").join(" and ")}`;
}

/** Openings that are cut in a partition and go with it. */
function openingsIn(file: JobFile, face: string): readonly string[] {
  const openings = file["openings"];
  if (!isList(openings)) return [];
  return openings.flatMap((one) => (faceOf(one) === face ? (idOf(one) ?? []) : []));
}

function faceOf(member: JsonValue | undefined): JsonValue | undefined {
  return isObject(member) ? member["face"] : undefined;
}

/** Adds a build-up under a free name, empty or as a copy of another, and gives the name. */
export function addBuildUp(draft: Draft, like?: string): string {
  const buildUps = buildUpsOf(draft);
  const original = like === undefined ? undefined : buildUps[like];
  const base = like ?? "new build-up";
  const name = freeName(Object.keys(buildUps), base);
  putAt(draft, ["buildUps", name], isObject(original) ? original : { what: "new build-up" });
  return name;
}

/** Takes a build-up away. */
export function removeBuildUp(draft: Draft, name: string): void {
  putAt(draft, ["buildUps", name], undefined);
}

/** Gives a build-up another name, in its place, and everywhere where it is used. Refuses a name that is taken or will not do. */
export function renameBuildUp(draft: Draft, from: string, to: string): boolean {
  const buildUps = buildUpsOf(draft);
  if (!NAME.test(to) || Object.hasOwn(buildUps, to) || !Object.hasOwn(buildUps, from)) return false;
  const uses = usesOf(draft, from);
  const renamed = Object.entries(buildUps).map(([name, value]) => [name === from ? to : name, copyOf(value)] as const);
  draft["buildUps"] = Object.fromEntries(renamed);
  for (const { steps } of uses) putAt(draft, steps, to);
  return true;
}

const NAME = /^[A-Za-z][A-Za-z0-9 -]{0,39}$/;

/** A place that names a build-up. */
export interface Use {
  readonly steps: readonly (string | number)[];
  /** In words: "left", "leaves", "partition P1". */
  readonly where: string;
}

const FACE_FIELDS: readonly (readonly [string, string, string])[] = [
  ["left", "buildUp", "left wall"],
  ["right", "buildUp", "right wall"],
  ["blindEnd", "buildUp", "blind end"],
  ["doorEnd", "buildUp", "wall inside the cargo doors"],
  ["doorEnd", "leafLining", "cargo door leaves"],
  ["roof", "buildUp", "roof"],
];

/** Where a build-up is used. */
export function usesOf(file: JobFile, name: string): readonly Use[] {
  const faces = file["faces"];
  const onFaces = FACE_FIELDS.flatMap(([face, field, where]) => {
    const at = isObject(faces) ? faces[face] : undefined;
    return isObject(at) && at[field] === name ? [{ steps: ["faces", face, field], where }] : [];
  });
  const partitions = file["partitions"];
  const onPartitions = (isList(partitions) ? partitions : []).flatMap((one, index) =>
    ["buildUp", "blindSide"].flatMap((field) =>
      isObject(one) && one[field] === name ? [{ steps: ["partitions", index, field], where: `partition ${idOf(one) ?? index + 1}` }] : [],
    ),
  );
  return [...onFaces, ...onPartitions];
}

/** The build-ups of a file, by name. */
export function buildUpsOf(file: JobFile): JsonObject {
  const found = file["buildUps"];
  return isObject(found) ? found : {};
}

/** A build-up of studs and boards alone. */
function partitionBuildUp(file: JobFile): string | undefined {
  const entries: readonly (readonly [string, JsonValue])[] = Object.entries(buildUpsOf(file));
  const fit = ([, one]: readonly [string, JsonValue]): boolean =>
    isObject(one) && one["studs"] !== undefined && one["foam"] === undefined && one["furring"] === undefined;
  return entries.find(fit)?.[0];
}

function addPartitionBuildUp(draft: Draft): string {
  const name = freeName(Object.keys(buildUpsOf(draft)), "partition");
  const studs = { row: "stud-2-1-2-18mil", track: "track-2-1-2-18mil", pitch: "16 in" };
  putAt(draft, ["buildUps", name], { what: "partition between rooms", studs, boards: [{ row: "gypsum-1-2" }] });
  return name;
}

function freeName(taken: readonly string[], base: string): string {
  if (!taken.includes(base)) return base;
  for (let number = 2; ; number += 1) {
    const name = `${base.slice(0, 36)} ${number}`;
    if (!taken.includes(name)) return name;
  }
}

/** Gives a thing another id; openings and fire ratings follow their partition. */
export function renameThing(draft: Draft, list: ThingList | "rooms", from: string, to: string): void {
  const index = indexOfId(draft[list], from);
  if (index === undefined) return;
  putAt(draft, [list, index, "id"], to);
  if (list !== "partitions") return;
  for (const steps of [["openings"], ["fire", "rated"]]) {
    for (const [at, one] of (listAt(draft, steps) ?? []).entries()) {
      if (faceOf(one) === from) putAt(draft, [...steps, at, "face"], to);
    }
  }
}
