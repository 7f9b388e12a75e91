import { isList, type JobFile } from "../../job/file.ts";
import { stepsOf } from "../../job/path.ts";
import { idOf } from "./ids.ts";
import type { Place } from "./outline.ts";
import { isPlainField } from "./place.ts";

const THINGS = { openings: "opening", items: "item", partitions: "partition", rooms: "room" } as const;

/** The form in which an issue can be mended; undefined for the file as a whole and for fields without a form. */
export function placeOfIssue(file: JobFile, path: string): Place | undefined {
  const [first, second] = stepsOf(path) ?? [];
  if (isPlainField(first)) return { kind: "fields", field: first };
  if (first === "ceilingFirst" || (first === "faces" && second === undefined)) return { kind: "face", id: "roof" };
  if (first === "faces" && typeof second === "string") return { kind: "face", id: second };
  if (first === "buildUps" && typeof second === "string") return { kind: "build-up", id: second };
  if (typeof first !== "string" || typeof second !== "number" || !Object.hasOwn(THINGS, first)) return undefined;
  const list = file[first];
  const id = isList(list) ? (idOf(list[second]) ?? `${second + 1}`) : undefined;
  return id === undefined ? undefined : { kind: THINGS[first as keyof typeof THINGS], id };
}
