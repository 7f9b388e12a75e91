import { create } from "zustand";
import { useSession } from "./session.ts";
import { hasChanges } from "./sessionData.ts";

/** Where to go from the open job: another job, or none. */
export type Destination = { readonly job: string } | "no job";

interface Leaving {
  /** Asked for while the open job has changes that are not saved. */
  readonly wanted: Destination | undefined;
  /** Goes there, or asks first where changes would be lost; true where nothing had to be asked. */
  readonly go: (to: Destination) => boolean;
  readonly stay: () => void;
  readonly leave: () => void;
}

/** The way from one job to another. What is not saved is never dropped without a word. */
export const useLeaving = create<Leaving>((set, get) => ({
  wanted: undefined,
  go(to) {
    const session = useSession.getState();
    if (to !== "no job" && to.job === session.job?.id) return true;
    if (hasChanges(session)) {
      set({ wanted: to });
      return false;
    }
    goNow(to);
    return true;
  },
  stay() {
    set({ wanted: undefined });
  },
  leave() {
    const { wanted } = get();
    set({ wanted: undefined });
    if (wanted !== undefined) goNow(wanted);
  },
}));

function goNow(to: Destination): void {
  const session = useSession.getState();
  if (to === "no job") session.close();
  else void session.open(to.job);
}
