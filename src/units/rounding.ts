/**
 * The whole number nearest to `x`, halves away from zero. A value that lies within a few last places of a half counts as
 * a half, so that 1.005 × 100, which a computer holds as 100.49999999999999, rounds to 101 as it does on paper.
 * Throws RangeError where `x` is not finite.
 */
export function roundHalfAway(x: number): number {
  if (!Number.isFinite(x)) throw new RangeError(`roundHalfAway: x must be finite, got ${x}`);
  const slack = Math.min(4 * Number.EPSILON * Math.abs(x), 1e-6);
  const size = Number.isInteger(x) ? Math.abs(x) : Math.floor(Math.abs(x) + slack + 0.5);
  return x < 0 && size !== 0 ? -size : size;
}

/**
 * Rounds a chain of dimensions to whole steps so that rounding never accumulates: each part is the difference of two
 * rounded running totals. The parts add up to the rounded overall, and none is off by a step or more.
 * `step` in the unit of the values, above zero; throws RangeError otherwise.
 */
export function roundChain(values: readonly number[], step: number): number[] {
  if (!(step > 0 && Number.isFinite(step))) throw new RangeError(`roundChain: step must be above zero, got ${step}`);
  let total = 0;
  let marked = 0;
  return values.map((value) => {
    total += value;
    const mark = roundHalfAway(total / step);
    const part = (mark - marked) * step;
    marked = mark;
    return part;
  });
}
