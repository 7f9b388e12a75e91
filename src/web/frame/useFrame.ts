import { create } from "zustand";

/** Views of the build, one shown at a time. */
export type View = "unfolded" | "solid" | "heat" | "papers" | "compare";

/** What stands beside the views, or in their place on a phone. */
export type Side = "box" | "findings";

/** What the window shows; kept while it is open, no part of any job. */
export interface FrameState {
  readonly view: View;
  /** The side that is open where not all stand beside each other. */
  readonly side: Side | undefined;
  readonly show: (view: View) => void;
  readonly turnTo: (side: Side | undefined) => void;
}

export const useFrame = create<FrameState>()((set) => ({
  view: "unfolded",
  side: undefined,
  show: (view) => set({ view, side: undefined }),
  turnTo: (side) => set({ side }),
}));
