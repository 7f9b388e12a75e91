import { issueText, type JobIssue } from "../job/issue.ts";

/** Every issue of a file, one a line, under a heading; nothing where there are none. */
export function issueLines(path: string, issues: readonly JobIssue[]): readonly string[] {
  if (issues.length === 0) return [];
  const heading = issues.length === 1 ? `${path} has one issue:` : `${path} has ${issues.length} issues:`;
  return [heading, ...issues.map((issue) => `  ${issueText(issue)}`)];
}
