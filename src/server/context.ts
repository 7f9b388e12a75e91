import type { Store } from "../store/store.ts";
import type { PackQueue } from "./packs/packQueue.ts";

/** What the routes work with, made once when the server starts. */
export interface ServerContext {
  readonly store: Store;
  readonly packs: PackQueue;
  /** A new id of letters and digits that nobody can guess. */
  readonly newId: () => string;
  /** Folder that backups are written into. */
  readonly backups: string;
  /** Ended when the server stops. */
  readonly stopped: AbortSignal;
  /** Tells the person who runs the server of a fault. */
  readonly log: (line: string) => void;
}
