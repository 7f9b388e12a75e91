import { SAME_LENGTH } from "./tolerance.ts";

/** A stretch of a line, from < to, metres. */
export interface Interval {
  readonly from: number;
  readonly to: number;
}

/** True where two stretches share more than a point. */
export function intervalsOverlap(a: Interval, b: Interval): boolean {
  return Math.min(a.to, b.to) - Math.max(a.from, b.from) > SAME_LENGTH;
}

/** What is left of a stretch when others are taken out of it, in order. */
export function subtractIntervals(whole: Interval, taken: readonly Interval[]): readonly Interval[] {
  const left: Interval[] = [];
  let from = whole.from;
  for (const cut of [...taken].sort((a, b) => a.from - b.from)) {
    if (cut.to <= from) continue;
    if (cut.from >= whole.to) break;
    if (cut.from - from > SAME_LENGTH) left.push({ from, to: cut.from });
    from = Math.max(from, cut.to);
  }
  if (whole.to - from > SAME_LENGTH) left.push({ from, to: whole.to });
  return left;
}
