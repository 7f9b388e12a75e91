import { isList, isObject, type JsonValue } from "../../job/file.ts";

/** A value of a job file as people read it: text as typed, "nothing" where nothing stands, the rest in short. */
export function valueWords(value: JsonValue | undefined): string {
  if (value === undefined || value === null) return "nothing";
  if (value === true) return "yes";
  if (value === false) return "no";
  if (typeof value !== "object") return String(value);
  if (isList(value)) return value.length === 0 ? "an empty list" : value.map(memberWords).join("; ");
  return Object.entries(value).map(([key, one]) => `${key} ${memberWords(one)}`).join(", ");
}

function memberWords(value: JsonValue): string {
  if (!isObject(value)) return isList(value) ? value.map(String).join(", ") : valueWords(value);
  const named = value["id"] ?? value["row"] ?? value["what"];
  if (typeof named === "string") return named;
  return Object.entries(value).map(([key, one]) => `${key} ${valueWords(one)}`).join(" ");
}

/** Words that fit into a table or beside a choice: what is longer ends in dots. */
export function cutWords(words: string): string {
  return isLong(words) ? `${[...words].slice(0, LONGEST - 1).join("")}…` : words;
}

export function isLong(words: string): boolean {
  return words.length > LONGEST;
}

const LONGEST = 160;
