/**
 * Puts words in the place of a formula's names. Names that `wordFor` has no word for stay, and so do numbers and
 * functions. Numbers are passed over whole, so that the e of 1e3 is no name.
 */
export function substitute(text: string, wordFor: (name: string) => string | undefined): string {
  return text.replace(/\d+(?:\.\d*)?(?:[eE][+-]?\d+)?|\.\d+(?:[eE][+-]?\d+)?|[\p{L}_][\p{L}\p{N}_]*/gu, (found) =>
    /^[\d.]/.test(found) ? found : (wordFor(found) ?? found),
  );
}
