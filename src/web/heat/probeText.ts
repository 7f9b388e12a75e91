import type { Vec2 } from "../../river/screen.ts";
import { formatLength, type System } from "../../units/format.ts";
import type { GridPoint } from "./gridPoint.ts";
import { degrees, fluxText } from "./words.ts";

/** What the probe reads, in words. */
export interface Reading {
  readonly value: string;
  readonly what: string;
  /** From the lower left of the picture. */
  readonly place: string;
}

/** `x` and `y` from the lower left of the picture, m. */
export function probeText({ x, y }: Vec2, found: GridPoint | undefined, system: System): Reading {
  const place = `${formatLength(x, system)} across, ${formatLength(y, system)} up`;
  if (found === undefined) return { value: "air", what: "", place };
  const { temperature, what, flux } = found;
  return { value: degrees(temperature, system), what: flux === undefined ? what : `${what}, ${fluxText(flux, system)}`, place };
}
