import type { WorkItem } from "./shopPlan.ts";

/** An item before it is dated. `resource` is who is kept busy by it, one item at a time. */
export interface DraftItem {
  readonly item: WorkItem;
  readonly resource: string | undefined;
}
