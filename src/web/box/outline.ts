import { isList, isObject, type JobFile, type JsonValue } from "../../job/file.ts";
import type { JobIssue } from "../../job/issue.ts";
import type { ScreenFinding, Verdict } from "../../river/screen.ts";
import type { Steps } from "./edits.ts";
import { issuesBelow } from "./fieldText.ts";
import { wordsFor } from "./fieldWords.ts";
import { idOf } from "./ids.ts";
import { buildUpsOf, usesOf } from "./things.ts";

/** What the outline can lead to: a part of the file with a form of its own. */
export type Place =
  | { readonly kind: "fields"; readonly field: PlainField }
  | { readonly kind: "face"; readonly id: string }
  | { readonly kind: "build-up"; readonly id: string }
  | { readonly kind: "opening" | "item" | "partition" | "room"; readonly id: string };

/** Fields of the file that the outline shows whole. */
export const PLAIN_FIELDS = ["job", "box", "floor", "coatings", "fire", "site", "codes", "shop", "prices", "supplied", "notes"] as const;
export type PlainField = (typeof PLAIN_FIELDS)[number];

export interface OutlineEntry {
  readonly place: Place;
  readonly name: string;
  readonly more: string;
  readonly issues: number;
  /** The gravest finding about it, where it is a stop or a watch. */
  readonly verdict: Verdict | undefined;
}

export interface OutlineSection {
  readonly name: string;
  readonly entries: readonly OutlineEntry[];
  /** What can be added to the section. */
  readonly adds: "opening" | "item" | "partition" | "build-up" | "air" | undefined;
}

/** The outline of a job file as typed, with its issues and findings at their places. */
export function outlineOf(file: JobFile, issues: readonly JobIssue[], findings: readonly ScreenFinding[]): readonly OutlineSection[] {
  const verdictOf = gravest(findings);
  const plain = (field: PlainField, more = ""): OutlineEntry => ({
    place: { kind: "fields", field },
    name: wordsFor(field).name,
    more: more === "" ? wordsFor(field).says : more,
    issues: issuesBelow(issues, [field]),
    verdict: undefined,
  });
  const members = (list: "openings" | "items" | "partitions" | "rooms", kind: "opening" | "item" | "partition" | "room"): readonly OutlineEntry[] =>
    listOf(file[list]).map((one, index) => {
      const id = idOf(one) ?? `${index + 1}`;
      return { place: { kind, id }, name: id, more: moreOf(one), issues: issuesBelow(issues, [list, index]), verdict: verdictOf(id) };
    });
  const openings = members("openings", "opening");
  return [
    { name: "Job", adds: undefined, entries: [plain("job"), plain("box", textOf(file["box"], "row")), plain("site", textOf(file["site"], "place")), plain("codes", textOf(file["codes"], "use"))] },
    { name: "Faces", adds: undefined, entries: [...faceEntries(file, issues, verdictOf), { ...plain("floor"), verdict: verdictOf("floor") }] },
    { name: "Build-ups", adds: "build-up", entries: buildUpEntries(file, issues) },
    { name: "Openings", adds: "opening", entries: openings },
    { name: "Items", adds: "item", entries: [...members("items", "item"), plain("supplied")] },
    { name: "Partitions and rooms", adds: "partition", entries: [...members("partitions", "partition"), ...members("rooms", "room")] },
    { name: "Air", adds: "air", entries: airEntries(file, openings) },
    { name: "Coatings and fire", adds: undefined, entries: [plain("coatings"), plain("fire")] },
    { name: "Shop and prices", adds: undefined, entries: [plain("shop"), plain("prices", textOf(file["prices"], "book")), plain("notes")] },
  ];
}

/** Where a place's fields stand in the file; undefined where nothing of that id is there. */
export function stepsOfPlace(file: JobFile, place: Place): Steps | undefined {
  switch (place.kind) {
    case "fields":
      return [place.field];
    case "face":
      return ["faces", place.id];
    case "build-up":
      return Object.hasOwn(buildUpsOf(file), place.id) ? ["buildUps", place.id] : undefined;
    case "opening":
    case "item":
    case "partition":
    case "room": {
      const list = `${place.kind}s`;
      const index = listOf(file[list]).findIndex((one, at) => (idOf(one) ?? `${at + 1}`) === place.id);
      return index === -1 ? undefined : [list, index];
    }
  }
}

const FACE_IDS = ["left", "right", "blindEnd", "doorEnd", "roof"] as const;

function faceEntries(file: JobFile, issues: readonly JobIssue[], verdictOf: (id: string) => Verdict | undefined): readonly OutlineEntry[] {
  return FACE_IDS.map((id) => {
    const face = isObject(file["faces"]) ? file["faces"][id] : undefined;
    const buildUp = textOf(face, "buildUp");
    const more = buildUp === "" ? textOf(face, "leafLining") : buildUp;
    return {
      place: { kind: "face", id },
      name: wordsFor(`faces.${id}`).name,
      more: more === "" ? "nothing built on it" : more,
      issues: issuesBelow(issues, ["faces", id]),
      verdict: verdictOf(id),
    };
  });
}

function buildUpEntries(file: JobFile, issues: readonly JobIssue[]): readonly OutlineEntry[] {
  return Object.keys(buildUpsOf(file)).map((id) => {
    const uses = usesOf(file, id).map(({ where }) => where);
    const more = uses.length === 0 ? "not used" : uses.join(", ");
    return { place: { kind: "build-up", id }, name: id, more, issues: issuesBelow(issues, ["buildUps", id]), verdict: undefined };
  });
}

/** Kinds of opening that air goes through. */
const AIR_KINDS = ["fan", "intake", "split-unit lines"];

/** Fans, intakes and other openings whose fittings are for air, and the rooms that ask for air. */
function airEntries(file: JobFile, openings: readonly OutlineEntry[]): readonly OutlineEntry[] {
  const passes = listOf(file["openings"]).map((one) => isObject(one) && (AIR_KINDS.includes(textOf(one, "kind")) || listOf(one["fittings"]).length > 0));
  const rooms = listOf(file["rooms"]).flatMap((room, index): readonly OutlineEntry[] => {
    const asked = textOf(room, "airFlow");
    if (asked === "") return [];
    const id = idOf(room) ?? `${index + 1}`;
    return [{ place: { kind: "room", id }, name: id, more: `asks for ${asked} of outdoor air`, issues: 0, verdict: undefined }];
  });
  return [...openings.filter((_, index) => passes[index] === true), ...rooms];
}

const GRAVITY: readonly Verdict[] = ["stop", "watch"];

function gravest(findings: readonly ScreenFinding[]): (id: string) => Verdict | undefined {
  const byId = new Map<string, Verdict>();
  for (const verdict of GRAVITY.toReversed()) {
    for (const found of findings) if (found.verdict === verdict) found.about.forEach((id) => byId.set(id, verdict));
  }
  return (id) => byId.get(id);
}

function moreOf(member: JsonValue): string {
  return [textOf(member, "what") || textOf(member, "kind"), faceName(textOf(member, "face"))].filter((text) => text !== "").join(", ");
}

function faceName(id: string): string {
  if (id === "") return "";
  return [...FACE_IDS, "floor"].includes(id) ? (id === "floor" ? "floor" : wordsFor(`faces.${id}`).name.toLowerCase()) : `partition ${id}`;
}

function textOf(holder: JsonValue | undefined, field: string): string {
  const value = isObject(holder) ? holder[field] : undefined;
  return typeof value === "string" ? value : "";
}

function listOf(value: JsonValue | undefined): readonly JsonValue[] {
  return isList(value) ? value : [];
}
