import { create } from "zustand";
import type { CutPlane } from "./geometry/section.ts";
import type { SolidLayer } from "./layers.ts";
import type { Pose } from "./pose.ts";

/** How the build is looked at; kept while the window is open, no part of any job. */
export interface SolidView {
  /** The job that is looked at. */
  readonly job: string | undefined;
  /** Undefined until the build was first seen. */
  readonly pose: Pose | undefined;
  readonly hidden: readonly SolidLayer[];
  readonly plane: CutPlane | undefined;
  /** Starts anew where it is another job than before. */
  readonly begin: (job: string) => void;
  readonly look: (pose: Pose) => void;
  readonly show: (layer: SolidLayer, shown: boolean) => void;
  readonly cut: (plane: CutPlane | undefined) => void;
}

export const useSolid = create<SolidView>()((set, get) => ({
  job: undefined,
  pose: undefined,
  hidden: [],
  plane: undefined,
  begin: (job) => {
    if (job !== get().job) set({ job, pose: undefined, hidden: [], plane: undefined });
  },
  look: (pose) => set({ pose }),
  show: (layer, shown) => {
    const others = get().hidden.filter((one) => one !== layer);
    set({ hidden: shown ? others : [...others, layer] });
  },
  cut: (plane) => set({ plane }),
}));
