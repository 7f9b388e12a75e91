import { create } from "zustand";
import type { Hour } from "../../river/sections.ts";

/** What is to be seen: a section, the section of a finding, or what the whole box loses. */
export type Wanted = { readonly kind: "section" | "finding"; readonly id: string } | { readonly kind: "whole box" };

/** What the Heat view shows; kept while the window is open, no part of any job. */
export interface HeatView {
  /** Undefined for the section that decides. */
  readonly wanted: Wanted | undefined;
  readonly hour: Hour;
  readonly want: (wanted: Wanted) => void;
  readonly turnTo: (hour: Hour) => void;
}

/** Stands in lists for the whole box, beside the ids of sections. */
export const WHOLE = "whole box";

export const useHeat = create<HeatView>()((set) => ({
  wanted: undefined,
  hour: "design",
  want: (wanted) => set({ wanted }),
  turnTo: (hour) => set({ hour }),
}));

/** What an entry of a list stands for. */
export function wantedOf(key: string): Wanted {
  return key === WHOLE ? { kind: "whole box" } : { kind: "section", id: key };
}
