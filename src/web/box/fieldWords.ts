import { LAYER_WORDS } from "./words/layers.ts";
import { SITE_WORDS } from "./words/site.ts";
import { THING_WORDS } from "./words/things.ts";
import type { FieldWords, WordsTable } from "./words/words.ts";

export type { FieldWords } from "./words/words.ts";

/** Words for every field that a person edits, by pattern. */
export const FIELD_WORDS: WordsTable = { ...SITE_WORDS, ...LAYER_WORDS, ...THING_WORDS };

/** The words for a field. Throws RangeError for a pattern without words: a test holds the table to the schema. */
export function wordsFor(pattern: string): FieldWords {
  const words = FIELD_WORDS[pattern];
  if (words === undefined) throw new RangeError(`there are no words for ${pattern}`);
  return words;
}
