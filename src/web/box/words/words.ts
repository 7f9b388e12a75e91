/** How the screen speaks of a field: its name, what it says, and why its default is what it is. */
export interface FieldWords {
  readonly name: string;
  readonly says: string;
  /** Why the default is a good one, or what is taken where an optional field is left out. */
  readonly why?: string;
}

/** Words by pattern, as `patternOf` writes it. */
export type WordsTable = Readonly<Record<string, FieldWords>>;

/** A table's words under another place. */
export function under(pattern: string, words: WordsTable): WordsTable {
  return Object.fromEntries(Object.entries(words).map(([key, value]) => [`${pattern}${key}`, value]));
}
