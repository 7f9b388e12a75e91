import type { Quantity } from "../working/quantity.ts";

/** One priced line; `amount` is whole cents and equals rounded count times rate. */
export interface QuoteLine {
  readonly id: string;
  readonly group: "box" | "material" | "labour" | "article" | "delivery";
  readonly what: string;
  readonly count: Quantity;
  /** What one is, in words: "sheet", "hour", "piece". */
  readonly per: string;
  readonly rate: Quantity<"cents">;
  readonly amount: Quantity<"cents">;
}

/** What the price book does not know; the quote says so and is not complete. */
export interface MissingPrice {
  readonly id: string;
  readonly what: string;
  readonly wanted: string;
}

/** Price of a job. Every total equals the sum of its lines to the cent. */
export interface Quote {
  readonly currency: string;
  readonly book: string;
  readonly lines: readonly QuoteLine[];
  readonly missing: readonly MissingPrice[];
  /** What no line counts, so that whoever signs the offer knows. */
  readonly leavesOut: string;
  readonly labourHours: Quantity<"h">;
  readonly direct: Quantity<"cents">;
  readonly overhead: Quantity<"cents">;
  readonly contingency: Quantity<"cents">;
  readonly cost: Quantity<"cents">;
  /** Margin is a share of the price, not of the cost. */
  readonly margin: Quantity<"cents">;
  readonly price: Quantity<"cents">;
  readonly tax: Quantity<"cents">;
  readonly total: Quantity<"cents">;
}
