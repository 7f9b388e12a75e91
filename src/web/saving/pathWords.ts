import { stepsOf } from "../../job/path.ts";
import { wordsFor, FIELD_WORDS } from "../box/fieldWords.ts";

/**
 * A path of a change in words: "Openings › D1 › Place › Up". Rows that the path names by id and fields that the words do
 * not know stand as they are.
 */
export function pathWords(path: string): string {
  if (path === "") return "The whole file";
  const steps = stepsOf(path) ?? [path];
  const words: string[] = [];
  let pattern = "";
  for (const step of steps) {
    const field = pattern === "" ? String(step) : `${pattern}.${step}`;
    const member = FIELD_WORDS[`${pattern}[]`] !== undefined || hasInside(`${pattern}[]`) ? `${pattern}[]` : hasInside(`${pattern}{}`) ? `${pattern}{}` : undefined;
    if (typeof step === "string" && FIELD_WORDS[field] !== undefined) {
      words.push(wordsFor(field).name);
      pattern = field;
    } else {
      words.push(typeof step === "number" ? String(step + 1) : step);
      pattern = member ?? field;
    }
  }
  return words.join(" › ");
}

function hasInside(pattern: string): boolean {
  return PATTERNS.some((one) => one.startsWith(pattern));
}

const PATTERNS = Object.keys(FIELD_WORDS);
