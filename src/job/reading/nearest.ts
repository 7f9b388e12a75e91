/** The candidate that reads most like the text, capitals aside; undefined where there is none. */
export function nearest(text: string, candidates: readonly string[]): string | undefined {
  const wanted = text.slice(0, LONGEST).toLowerCase();
  let best: { readonly candidate: string; readonly apart: number } | undefined;
  for (const candidate of candidates) {
    const apart = distance(wanted, candidate.toLowerCase());
    if (best === undefined || apart < best.apart) best = { candidate, apart };
  }
  return best?.candidate;
}

const LONGEST = 60;

/** Letters to put in, take out or change to make one text of the other (Levenshtein 1966). */
function distance(a: string, b: string): number {
  let above = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (const [row, letter] of [...a].entries()) {
    let left = row + 1;
    above = above.map((over, column) => {
      if (column > 0) {
        const corner = above[column - 1] ?? over;
        left = Math.min(left + 1, over + 1, corner + (letter === b[column - 1] ? 0 : 1));
      }
      return left;
    });
  }
  return above[b.length] ?? a.length;
}
