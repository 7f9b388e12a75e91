import { type Check, CHECKS, type Finding, type Verdict } from "../../checks/checks.ts";
import type { JsonValue } from "../../job/file.ts";
import { sourceText } from "../../working/source.ts";
import type { Paper } from "../paper.ts";
import type { Results } from "../results.ts";
import { workingTable } from "../workingRows.ts";

/** Every finding with its working, worst first; then what each check asks, leaves out, and who decides. */
export const findings: Paper = {
  id: "findings",
  title: "Findings",
  make: (results) => ({ section: { template: TEMPLATE, data: dataOf(results) } }),
};

const GROUPS: readonly { readonly verdict: Verdict; readonly title: string }[] = [
  { verdict: "stop", title: "Stops" },
  { verdict: "watch", title: "Watches" },
  { verdict: "note", title: "Notes" },
  { verdict: "pass", title: "Passes" },
];

function dataOf(results: Results): JsonValue {
  return {
    checks: CHECKS.map((check) => checkData(check, results.findings)),
    groups: GROUPS.map(({ verdict, title }) => ({
      verdict,
      title,
      findings: CHECKS.flatMap(({ id }) => results.findings.filter((one) => one.check === id && one.verdict === verdict))
        .map((finding) => findingData(finding, results)),
    })),
  };
}

function checkData(check: Check, all: readonly Finding[]): JsonValue {
  const mine = all.filter((finding) => finding.check === check.id);
  const counts = GROUPS.map(({ verdict }) => String(mine.filter((finding) => finding.verdict === verdict).length));
  return { id: check.id, asks: check.asks, leavesOut: check.leavesOut, decides: check.decides, counts };
}

function findingData(finding: Finding, { job }: Results): JsonValue {
  const { rows, compared } = workingTable(finding.working, finding.comparison, { system: job.units });
  return {
    id: finding.id,
    says: finding.says,
    about: finding.about.length <= MOST_ABOUT ? finding.about.join(", ") : `${finding.about.length} parts`,
    rows: rows.map((row) => ({ ...row })),
    compared,
    sources: finding.sources.map(sourceText),
  };
}

/** Longer lists stand in the JSON of the pack. */
const MOST_ABOUT = 8;

const TEMPLATE = String.raw`
#import "style.typ": *

#let working-rows(row) = {
  let rule = table.hline(stroke: 0.3pt + hair)
  if row.formula == "" { return (mono(row.symbol), row.means, small(row.source), row.value, rule) }
  // One unbreakable cell over both rows keeps a formula on the page of its meaning.
  (
    table.cell(rowspan: 2, breakable: false, mono(row.symbol)), row.means, small(row.source), row.value,
    table.cell(colspan: 3, inset: (top: 0pt, bottom: 3pt), {
      mono("= " + row.formula)
      if row.inputs.len() > 0 { linebreak(); small({ [with ]; mono(row.inputs.join("; ")) }) }
    }),
    rule,
  )
}

#let working(rows) = {
  set text(size: 7.8pt, hyphenate: false)
  set par(leading: 0.42em)
  table(
    columns: (13%, 1fr, 33%, 20%), align: (left, left, left, right), column-gutter: 3mm, inset: (x: 0pt, top: 3pt, bottom: 2.4pt),
    table.hline(stroke: 0.3pt + hair),
    ..rows.map(working-rows).flatten(),
  )
}

#let finding(verdict, f) = {
  block(above: 11pt, below: 4pt, sticky: true, grid(columns: (13mm, 1fr), verdict-mark(verdict), {
    f.says
    linebreak()
    small[#f.id #if f.about != "" [· about #f.about]]
  }))
  if f.rows.len() > 0 { pad(left: 13mm, working(f.rows)) }
  if f.compared != "" { pad(left: 13mm, block(above: 3pt, below: 3pt, mono(f.compared))) }
  if f.sources.len() > 0 { pad(left: 13mm, block(above: 3pt, small[Sources: #f.sources.join("; ").])) }
}

#let body(data) = {
  [A _stop_ must be mended or decided by a licensed person before work goes on. A _watch_ needs someone's eye. A _note_ could
  not be checked, and says what is missing. A _pass_ holds for what was computed and for nothing else.]
  listing((auto, 1fr, auto, auto, auto, auto), (left, left, right, right, right, right),
    ("Check", "Asks", "Stops", "Watches", "Notes", "Passes"),
    data.checks.map(c => (c.id, c.asks, ..c.counts)))
  for c in data.checks {
    block(breakable: false, above: 9pt, framed({
      text(weight: 600, c.id); linebreak()
      [Leaves out: #c.leavesOut]; linebreak()
      [Decides: #c.decides]
    }))
  }
  for g in data.groups {
    if g.findings.len() > 0 {
      heading(level: 2, [#g.title (#g.findings.len())])
      for f in g.findings { finding(g.verdict, f) }
    }
  }
}
`;
