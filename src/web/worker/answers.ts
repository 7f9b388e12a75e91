import type { JsonValue } from "../../job/file.ts";
import type { JobIssue } from "../../job/issue.ts";
import type { NoBook, Screen, SlowScreen } from "../../river/screen.ts";

/** The text of a price book as JSON, or why there is none. */
export type GivenBook = { readonly kind: "book"; readonly book: JsonValue } | ({ readonly kind: "none" } & NoBook);

/** What came of running a job file. A price book that is not there or cannot be read leaves the price out, and no more. */
export type RunAnswer =
  | { readonly kind: "screen"; readonly screen: Screen }
  /** The file cannot be read. */
  | { readonly kind: "issues"; readonly issues: readonly JobIssue[] }
  /** A stage could not compute. */
  | { readonly kind: "failed"; readonly message: string };

/** What came of the slow checks of a job file. */
export type SlowAnswer =
  | { readonly kind: "slow"; readonly slow: SlowScreen }
  | { readonly kind: "issues"; readonly issues: readonly JobIssue[] }
  | { readonly kind: "failed"; readonly message: string };
