import type { Quantity } from "../working/quantity.ts";

/** A moment as calendar day and minutes after midnight; no time zone, the shop's own clock. */
export interface Moment {
  readonly day: string;
  readonly minute: number;
}

export interface WorkItem {
  readonly id: string;
  readonly what: string;
  /** `work` takes crew hours on working days; `wait` is cure or drying around the clock; `lead` is calendar days of a supplier. */
  readonly kind: "work" | "wait" | "lead" | "hold point";
  /** The shop's crew; undefined for waits, leads and hold points, and for work that no crew of the shop has the trade for. */
  readonly crew: string | undefined;
  readonly hours: Quantity<"h">;
  readonly after: readonly string[];
  /** For a hold point: who signs, and for what. */
  readonly signs?: string;
  /** What a reader has to know of how it is planned. */
  readonly note?: string;
}

export interface DatedItem extends WorkItem {
  readonly start: Moment;
  readonly finish: Moment;
  /** The last to end of the items that it follows, by precedence or in its crew; undefined where it starts the plan. */
  readonly waitsFor: string | undefined;
  /** Working time that it can slip without moving delivery, hours. */
  readonly slackHours: number;
  readonly critical: boolean;
}

/** Something to be bought whose lead time the price book does not know: the plan takes it to be there. */
export interface UnknownLead {
  readonly id: string;
  readonly what: string;
  readonly wanted: string;
}

/** Who does what, when. */
export interface ShopPlan {
  readonly items: readonly DatedItem[];
  readonly critical: readonly string[];
  readonly unknownLeads: readonly UnknownLead[];
  readonly start: Moment;
  readonly finish: Moment;
  /** Calendar days between delivery and the due day; negative when late; undefined where no due day is set. */
  readonly daysToSpare: number | undefined;
}
