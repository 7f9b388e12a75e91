import { coldFormedSections } from "./sections/coldFormed.ts";
import { hotRolledSections } from "./sections/hotRolled.ts";
import type { SectionRow } from "./rows.ts";

/** Bars sold by length. */
export const sectionRows: readonly SectionRow[] = [...coldFormedSections, ...hotRolledSections];
