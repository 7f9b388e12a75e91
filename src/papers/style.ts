/** Text face of the papers; drawings have their own, with letters of equal width. */
const TEXT_FAMILY = "Source Sans 3";

/** Shared look of the printed pack, as Typst source: page, headings, tables, marks of verdicts. */
export const STYLE_TYP = String.raw`
#let ink = luma(15%)
#let soft = luma(38%)
#let hair = luma(72%)
#let mono(body) = text(font: "DejaVu Sans Mono", size: 0.82em, body)
#let small(body) = text(size: 0.86em, fill: soft, body)

#let caution = "Computed. Check on site. Licensed people and local authorities decide."

// Title block of the printed pack, then its parts.
#let pack-style(head, body) = {
  set document(title: head.title, date: datetime(year: head.year, month: head.month, day: head.day))
  set text(font: ("${TEXT_FAMILY}", "Libertinus Serif", "New Computer Modern Math", "DejaVu Sans Mono"), size: 9.5pt, fill: ink, number-width: "tabular", lang: "en", region: "US")
  set par(leading: 0.55em, spacing: 0.8em)
  set page(
    paper: head.paper,
    margin: (left: 22mm, right: 18mm, top: 20mm, bottom: 24mm),
    footer-descent: 6mm,
    footer: context {
      set text(size: 7.6pt, fill: soft)
      line(length: 100%, stroke: 0.4pt + hair)
      v(-0.5em)
      grid(columns: (1fr, auto), column-gutter: 8mm, row-gutter: 0.5em,
        [#head.title · #head.id · revision #head.revision · #head.date],
        [page #counter(page).display() of #counter(page).final().first()],
        [#caution], [])
    },
  )
  set table(stroke: none, inset: (x: 0pt, top: 3.4pt, bottom: 2.8pt))
  set heading(numbering: none)
  show heading.where(level: 1): it => block(above: 0pt, below: 12pt, sticky: true, text(size: 17pt, weight: 600, it.body))
  show heading.where(level: 2): it => block(above: 16pt, below: 7pt, sticky: true, text(size: 12pt, weight: 600, it.body))
  show heading.where(level: 3): it => block(above: 11pt, below: 5pt, sticky: true, text(size: 10pt, weight: 600, it.body))
  // A word that no line could hold may break anywhere.
  show regex("\\S{48,}"): it => it.text.clusters().join(sym.zws)
  block(below: 14pt, {
    text(size: 8pt, fill: soft, tracking: 0.06em, upper[Pack for the shop])
    v(-3pt)
    text(size: 24pt, weight: 600, hyphenate: false, head.title)
    v(-6pt)
    text(size: 11pt, fill: soft, [#head.customer · #head.place])
  })
  grid(columns: (1fr, 1fr, 1fr, 1.4fr), column-gutter: 5mm, row-gutter: 3pt,
    ..head.facts.map(((label, value)) => block(width: 100%, stroke: (top: 0.6pt + hair), inset: (top: 4pt, bottom: 2pt), {
      small(label); linebreak(); value
    })))
  body
}

// A part of the pack under its own heading, on a new page but for the first.
#let part(title, first, body) = {
  if not first { pagebreak(weak: true) } else { v(22pt) }
  heading(level: 1, title)
  body
}

// A table with a repeated header and hairlines. cells: an array of rows.
#let listing(columns, align, header, rows, size: 8.6pt) = {
  set text(size: size)
  set par(leading: 0.45em)
  table(
    columns: columns, align: align, column-gutter: 4mm,
    table.header(..header.map(cell => text(size: 0.9em, fill: soft, cell))),
    table.hline(stroke: 0.6pt + ink),
    ..rows.map(row => (..row, table.hline(stroke: 0.3pt + hair))).flatten(),
  )
}

// One table with a heading for each group, so that columns keep their widths. groups: titles with rows and, where they have one, their sum.
#let grouped-listing(columns, align, header, groups, size: 8.6pt) = {
  set text(size: size)
  set par(leading: 0.45em)
  let rule = table.hline(stroke: 0.3pt + hair)
  table(
    columns: columns, align: align, column-gutter: 4mm,
    table.header(..header.map(cell => text(size: 0.9em, fill: soft, cell)), table.hline(stroke: 0.6pt + ink)),
    ..groups.map(group => (
      table.header(level: 2,
        table.cell(colspan: header.len() - 1, align: left, inset: (top: 8pt, bottom: 3pt), text(size: 10pt, weight: 600, group.title)),
        table.cell(inset: (top: 8pt, bottom: 3pt), text(size: 10pt, weight: 600, group.at("sum", default: ""))), rule),
      ..group.rows.map(row => (..row.map(cell => table.cell(breakable: false, cell)), rule)),
    )).flatten(),
  )
}

// Reads in black and white: by its word, and by how much ink it has.
#let verdict-mark(verdict) = {
  let look = (
    stop: (fill: ink, stroke: 0.8pt + ink, text: white),
    watch: (fill: luma(82%), stroke: 0.8pt + ink, text: ink),
    note: (fill: white, stroke: 0.5pt + soft, text: ink),
    pass: (fill: white, stroke: 0.3pt + hair, text: soft),
  ).at(verdict)
  box(fill: look.fill, stroke: look.stroke, radius: 1pt, inset: (x: 3.5pt, y: 1.6pt), baseline: 1.6pt,
    text(size: 7pt, weight: 600, tracking: 0.05em, fill: look.text, upper(verdict)))
}

#let framed(body) = block(width: 100%, stroke: 0.6pt + soft, inset: 7pt, radius: 1pt, body)
`;
