import type { PackState } from "../../job/api.ts";

/** Whether a pack is still being waited for. */
export function isUnderWay({ state }: Pick<PackState, "state">): boolean {
  return state === "waiting" || state === "working";
}

/** How a pack stands, in a sentence. */
export function packWords({ state, step, number, progress }: PackState): string {
  switch (state) {
    case "waiting":
      return `The pack of revision ${number} waits for its turn.`;
    case "working":
      return `Making the pack of revision ${number}: ${step}, ${Math.round(progress * 100)} %.`;
    case "done":
      return `The pack of revision ${number} is ready.`;
    case "cancelled":
      return `The pack of revision ${number} was cancelled.`;
    case "failed":
      return `The pack of revision ${number} could not be made: ${step}.`;
  }
}
