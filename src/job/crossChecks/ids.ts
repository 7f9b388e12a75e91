import { FACES } from "../job.ts";
import type { JobIssue } from "../issue.ts";
import { issueAt, listAt, textAt } from "./draft.ts";
import type { CrossCheck } from "./draft.ts";

const LISTS = [["openings"], ["partitions"], ["items"], ["rooms"], ["shop", "crews"]];

/** Ids used twice in the job, or taken by a face. Capitals do not tell two ids apart: ids stand in file names and in speech. */
export const idIssues: CrossCheck = (draft) => {
  const taken = new Map<string, string>(FACES.map((face) => [face.toLowerCase(), "a face of the box"]));
  const issues: JobIssue[] = [];
  for (const list of LISTS) {
    for (const index of listAt(draft.raw, list).keys()) {
      const steps = [...list, index, "id"];
      const id = textAt(draft.raw, steps);
      if (id === undefined) continue;
      const holder = taken.get(id.toLowerCase());
      if (holder === undefined) taken.set(id.toLowerCase(), `an entry of ${list.join(".")}`);
      else issues.push(issueAt(draft, steps, "duplicate", `an id of its own; this one is ${holder}`, freeId(id, taken)));
    }
  }
  return issues;
};

function freeId(id: string, taken: ReadonlyMap<string, string>): string {
  const stem = id.slice(0, 36);
  let number = 2;
  while (taken.has(`${stem}-${number}`.toLowerCase())) number += 1;
  return `${stem}-${number}`;
}
