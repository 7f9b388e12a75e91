import { type Check, CHECKS, type Finding } from "../../checks/checks.ts";
import type { JsonValue } from "../../job/file.ts";
import { renderComparison } from "../../working/render.ts";
import { type NumberedFinding, numberedFindings, VERDICTS } from "../numberedFindings.ts";
import type { Paper } from "../paper.ts";
import type { Results } from "../results.ts";

/** Every finding, worst first, with what was compared and the number of its working; what each check asks, leaves out, and who decides. */
export const findings: Paper = {
  id: "findings",
  title: "Findings",
  make: (results) => ({ section: { template: TEMPLATE, data: dataOf(results) } }),
};

function dataOf(results: Results): JsonValue {
  const all = numberedFindings(results.findings);
  return {
    checks: CHECKS.map((check) => checkData(check, results.findings)),
    groups: VERDICTS.map(({ verdict, title }) => ({
      verdict,
      title,
      findings: all.filter(({ finding }) => finding.verdict === verdict).map((one) => findingData(one, results)),
    })),
  };
}

function checkData(check: Check, all: readonly Finding[]): JsonValue {
  const mine = all.filter((finding) => finding.check === check.id);
  const counts = VERDICTS.map(({ verdict }) => String(mine.filter((finding) => finding.verdict === verdict).length));
  return { id: check.id, asks: check.asks, leavesOut: check.leavesOut, decides: check.decides, counts };
}

function findingData({ finding, number }: NumberedFinding, { job }: Results): JsonValue {
  const { id, says, about, comparison } = finding;
  return {
    id,
    says,
    about: about.length <= MOST_ABOUT ? about.join(", ") : `${about.length} parts`,
    compared: comparison === undefined ? "" : renderComparison(comparison, { system: job.units }),
    number: number ?? "",
  };
}

/** Longer lists stand in the JSON of the pack. */
const MOST_ABOUT = 8;

const TEMPLATE = String.raw`
#import "style.typ": *

#let finding(verdict, f) = {
  // A finding is never parted by the end of a page.
  let whole(body) = table.cell(breakable: false, body)
  let number = if f.number == "" { [] } else { link(label("working-" + f.number), text(size: 8pt, f.number)) }
  (verdict-mark(verdict), whole({
    f.says
    if f.compared != "" { linebreak(); text(size: 0.86em, mono(f.compared)) }
    linebreak()
    small[#f.id #if f.about != "" [· about #f.about]]
  }), number)
}

#let body(data) = {
  [A _stop_ must be mended or decided by a licensed person before work goes on. A _watch_ needs someone's eye. A _note_ tells
  what was computed without a limit to hold it to, or what could not be checked and why. A _pass_ holds for what was computed and for nothing else. The number at
  the right leads to the complete working in the part _Workings_.]
  listing((auto, 1fr, auto, auto, auto, auto), (left, left, right, right, right, right),
    ("Check", "Asks, leaves out, who decides", "Stops", "Watches", "Notes", "Passes"),
    data.checks.map(c => (text(weight: 600, c.id), {
      c.asks
      linebreak()
      small[Leaves out: #c.leavesOut.]
      linebreak()
      small[Decides: #c.decides.]
    }, ..c.counts)))
  for g in data.groups {
    if g.findings.len() > 0 {
      heading(level: 2, [#g.title (#g.findings.len())])
      set par(leading: 0.5em)
      let rule = table.hline(stroke: 0.3pt + hair)
      table(columns: (13mm, 1fr, auto), align: (left, left, right), column-gutter: 2mm, inset: (x: 0pt, top: 4pt, bottom: 4pt),
        ..g.findings.map(f => (..finding(g.verdict, f), rule)).flatten())
    }
  }
}
`;
