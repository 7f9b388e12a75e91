import type { JsonObject } from "../file.ts";
import type { JobIssue } from "../issue.ts";
import { buildUpIssues } from "./buildUps.ts";
import { contradictions } from "./contradictions.ts";
import { draftOf } from "./draft.ts";
import type { CrossCheck } from "./draft.ts";
import { idIssues } from "./ids.ts";
import { nameIssues } from "./names.ts";
import { openingIssues } from "./openings.ts";
import { partitionIssues } from "./partitions.ts";
import { spaceIssues } from "./space.ts";

const CROSS_CHECKS: readonly CrossCheck[] = [
  nameIssues, idIssues, buildUpIssues, partitionIssues, openingIssues, spaceIssues, contradictions,
];

/** What is wrong between the fields of a file, found though single fields may still be wrong. */
export function crossIssues(raw: JsonObject): readonly JobIssue[] {
  const draft = draftOf(raw);
  return CROSS_CHECKS.flatMap((check) => check(draft));
}
