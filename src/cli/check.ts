import { readJob } from "../job/read.ts";
import { checkJob } from "../river/river.ts";
import { renderWorking } from "../working/render.ts";
import { issueLines } from "./issues.ts";
import { readText } from "./readText.ts";
import type { Terminal } from "./terminal.ts";

/** Worst first. */
const VERDICTS = ["stop", "watch", "note", "pass"] as const;

/** `cornerpost check`: prints the findings; 2 where one of them stops the build. */
export function check(jobPath: string, withWorking: boolean, { out, error }: Terminal): number {
  const reading = readJob(readText(jobPath, "job file"));
  if (!reading.ok) {
    issueLines(jobPath, reading.issues).forEach(error);
    return 1;
  }
  const { findings } = checkJob(reading.job);
  for (const verdict of VERDICTS) {
    for (const { id, says, working, comparison } of findings.filter((finding) => finding.verdict === verdict)) {
      out(`${verdict.padEnd(5)} ${id}: ${says}`);
      if (!withWorking) continue;
      const lines = renderWorking(working, comparison === undefined ? [] : [comparison], { system: reading.job.units });
      lines.forEach((line) => out(`      ${line}`));
    }
  }
  const count = (verdict: string): number => findings.filter((finding) => finding.verdict === verdict).length;
  out(`stops ${count("stop")}, watches ${count("watch")}, notes ${count("note")}, passes ${count("pass")}; licensed people and local authorities decide`);
  return count("stop") > 0 ? 2 : 0;
}
