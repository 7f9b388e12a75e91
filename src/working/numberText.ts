/**
 * A bare number to put into a formula's text: `digits` significant digits, those before the point kept, no commas between
 * thousands (a comma parts arguments there), a negative number in brackets. Throws RangeError where it is not finite.
 */
export function numberText(value: number, digits: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`${value} cannot be put into a formula's text`);
  const whole = value === 0 ? 1 : Math.floor(Math.log10(Math.abs(value))) + 1;
  const rounded = Number(value.toPrecision(Math.min(17, Math.max(digits, whole))));
  return rounded < 0 ? `(${rounded})` : String(Math.abs(rounded));
}
