/** The stages of the river, by the words that messages call them. */
export type StageName = "build" | "findings" | "heat" | "takeoff" | "price" | "plan" | "drawings" | "headline" | "papers";

/** A stage met a bug or left its domain: nothing was computed there, and nothing stands in for it. */
export class StageError extends Error {
  readonly stage: StageName;

  constructor(stage: StageName, cause: unknown) {
    super(`could not compute the ${stage}: ${cause instanceof Error ? cause.message : String(cause)}`, { cause });
    this.name = "StageError";
    this.stage = stage;
  }
}

/** Runs a stage; what it throws comes out as a StageError. */
export function inStage<T>(stage: StageName, run: () => T): T {
  try {
    return run();
  } catch (cause) {
    throw new StageError(stage, cause);
  }
}
