import { foot } from "../imperial.ts";

/** A stock size named by its feet across and along, m. */
export function feet(across: number, along: number): { readonly width: number; readonly length: number } {
  return { width: across * foot, length: along * foot };
}

/** Boards of the trade four feet wide. */
export const eightAndTen = [feet(4, 8), feet(4, 10)] as const;
export const eightToTwelve = [feet(4, 8), feet(4, 9), feet(4, 10), feet(4, 12)] as const;
export const plates = [feet(4, 8), feet(4, 10), feet(5, 10)] as const;
