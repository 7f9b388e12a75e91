import { source } from "../../working/source.ts";

/** The standing of every article here. */
export const demo = source("generic article made up for the demo jobs", "invented");

/** A hole larger than the article by this all round, m. */
export function roughAround(width: number, height: number, gap: number): { readonly width: number; readonly height: number } {
  return { width: width + 2 * gap, height: height + 2 * gap };
}
