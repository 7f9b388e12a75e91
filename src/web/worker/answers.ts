import type { JobIssue } from "../../job/issue.ts";
import type { Screen } from "../../river/screen.ts";

/** What came of running a job file. */
export type RunAnswer =
  | { readonly kind: "screen"; readonly screen: Screen }
  /** The file cannot be read. */
  | { readonly kind: "issues"; readonly issues: readonly JobIssue[] }
  /** The price book cannot be read. */
  | { readonly kind: "book issues"; readonly issues: readonly JobIssue[] }
  /** A stage could not compute. */
  | { readonly kind: "failed"; readonly message: string };
