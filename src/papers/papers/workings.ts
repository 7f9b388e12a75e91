import type { JsonValue } from "../../job/file.ts";
import { sourceText } from "../../working/source.ts";
import { workingOf } from "../../working/steps.ts";
import { type WorkingRow, workingView } from "../../working/workingView.ts";
import { type NumberedFinding, numberedFindings } from "../numberedFindings.ts";
import type { Paper } from "../paper.ts";
import type { Results } from "../results.ts";

/** The complete working of every finding, set small in two columns, with each source named once. */
export const workings: Paper = {
  id: "workings",
  title: "Workings",
  make: (results) => ({ section: { template: TEMPLATE, data: dataOf(results) } }),
};

function dataOf(results: Results): JsonValue {
  const sources = new Map<string, number>();
  const numberOf = (text: string): string => {
    const known = sources.get(text) ?? sources.size + 1;
    sources.set(text, known);
    return String(known);
  };
  const entries = numberedFindings(results.findings).flatMap((one) => (one.number === undefined ? [] : [entryOf(one, results, numberOf)]));
  return { entries, sources: [...sources.keys()] };
}

function entryOf({ finding, number }: NumberedFinding, { job }: Results, numberOf: (source: string) => string): JsonValue {
  const working = workingOf(finding.working, finding.comparison === undefined ? [] : [finding.comparison]);
  const { given, worked, compared } = workingView(working, { system: job.units });
  const rows = [...given, ...worked];
  const further = finding.sources.map(sourceText).filter((text) => !rows.some(({ source }) => source.includes(text)));
  return {
    number: number ?? "",
    says: finding.says,
    id: finding.id,
    rows: rows.map((row) => ({ ...rowOf(row), source: PLACE.test(row.source) ? row.source : numberOf(row.source) })),
    compared: compared.map(({ text }) => text).join("; "),
    further: further.map(numberOf),
  };
}

/** Where in the job or the build a given stands: written out, as it is no work to look up. */
const PLACE = /^(job|part)\b/;

function rowOf({ symbol, means, formula, numbers, lists, value }: WorkingRow): { readonly [key: string]: JsonValue } {
  return { symbol, means, formula, numbers, lists: lists.join(", "), value };
}

const TEMPLATE = String.raw`
#import "style.typ": *

#let row(r) = {
  grid(columns: (1fr, auto), column-gutter: 2mm, {
    mono(text(weight: 600, r.symbol))
    h(1.2mm)
    [#r.means ]
    text(fill: soft)[[#r.source]]
  }, align(right, box(r.value)))
  if r.formula != "" {
    pad(left: 3mm, {
      mono("= " + r.formula)
      if r.lists != "" { text(fill: soft)[ with #mono(r.lists)] }
      if r.numbers != r.formula { linebreak(); text(fill: soft, mono("= " + r.numbers)) }
    })
  }
}

#let entry(e) = {
  block(above: 9pt, below: 3.5pt, sticky: true, stroke: (top: 0.6pt + ink), inset: (top: 3pt), width: 100%)[
    #text(weight: 600, e.number) #e.says #text(fill: soft, e.id)
    #metadata(none) #label("working-" + e.number)
  ]
  for r in e.rows { block(above: 3pt, below: 3pt, row(r)) }
  if e.compared != "" { block(above: 3.5pt, below: 3pt, text(weight: 600, mono(e.compared))) }
  if e.further.len() > 0 { block(above: 3pt, text(fill: soft)[Also #e.further.map(n => "[" + n + "]").join(", ")]) }
}

#let body(data) = {
  [How each number of the findings comes about: first what is given, then each step with its formula, last the comparison. Of many alike, the
  first stands with its numbers. The number in brackets names the source, listed at the end of this part. Rounded for reading; _pack.json_ holds
  every digit and every step.]
  v(4pt)
  set text(size: 6.9pt, hyphenate: false)
  set par(leading: 0.4em, spacing: 0.5em)
  columns(2, gutter: 7mm, {
    for e in data.entries { entry(e) }
    block(above: 12pt, below: 4pt, sticky: true, text(size: 10pt, weight: 600)[Sources])
    for (at, source) in data.sources.enumerate() {
      block(above: 2.5pt, below: 2.5pt, grid(columns: (6mm, 1fr), [[#(at + 1)]], source))
    }
  })
}
`;
