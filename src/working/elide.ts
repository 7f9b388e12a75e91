import { type ValueStyle, valueText } from "./valueText.ts";

/** Lists up to this long are printed whole. */
export const LONGEST_LIST = 8;

/** What one printed row stands for: a single thing, or many alike. */
export interface Group<T> {
  readonly first: T;
  readonly all: readonly T[];
}

/**
 * Brings together things of the same key where there are more than LONGEST_LIST of them, at the place of the first; the
 * others stay alone. Order is kept.
 */
export function elided<T>(things: readonly T[], keyOf: (thing: T) => string): readonly Group<T>[] {
  const byKey = new Map<string, T[]>();
  for (const thing of things) {
    const alike = byKey.get(keyOf(thing));
    if (alike === undefined) byKey.set(keyOf(thing), [thing]);
    else alike.push(thing);
  }
  return things.flatMap((first) => {
    const all = byKey.get(keyOf(first)) ?? [first];
    if (all.length <= LONGEST_LIST) return [{ first, all: [first] }];
    return all[0] === first ? [{ first, all }] : [];
  });
}

/** Words with commas between them; of a long list the first two and the last. */
export function wordsText(words: readonly string[]): string {
  if (words.length <= LONGEST_LIST) return words.join(", ");
  return `${words.slice(0, 2).join(", ")}, … ${words.at(-1) ?? ""}`;
}

/** How many values, from the least to the greatest. */
export function rangeText(values: readonly number[], unit: string, style: ValueStyle): string {
  const least = values.reduce((a, b) => Math.min(a, b));
  const greatest = values.reduce((a, b) => Math.max(a, b));
  const range = `${valueText(least, unit, style)} to ${valueText(greatest, unit, style)}`;
  return `${values.length} values, ${least === greatest ? `each ${valueText(least, unit, style)}` : range}`;
}
