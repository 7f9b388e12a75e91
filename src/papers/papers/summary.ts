import type { Finding } from "../../checks/checks.ts";
import { greatestGrossOf } from "../../build/build.ts";
import type { JsonValue } from "../../job/file.ts";
import type { Paper } from "../paper.ts";
import type { Headline, Results } from "../results.ts";
import { formatQuantity } from "../../units/format.ts";
import { counted, dayText, massText, moneyText, sizeText } from "../write.ts";

/** First page: the numbers that decide, what stops the job, what is built and where. */
export const summary: Paper = {
  id: "summary",
  title: "Summary",
  make: (results) => ({ section: { template: TEMPLATE, data: dataOf(results) } }),
};

function dataOf(results: Results): JsonValue {
  const { job, findings, quote } = results;
  return {
    tiles: tilesOf(results),
    stops: sentences(findings, "stop"),
    watches: sentences(findings, "watch"),
    missing: quote.missing.map(({ what, wanted }) => ({ what, wanted })),
    site: siteRows(results),
    rooms: roomRows(results),
    enquiry: job.job.enquiry ?? "",
    notes: [...job.notes],
  };
}

function sentences(findings: readonly Finding[], verdict: Finding["verdict"]): JsonValue {
  return findings.filter((finding) => finding.verdict === verdict).map(({ says, check }) => ({ says, check }));
}

interface Tile {
  readonly [key: string]: string;
  readonly label: string;
  readonly value: string;
  readonly beside: string;
}

function tilesOf({ job, build, headline }: Results): readonly Tile[] {
  const { stops, watches, passes, notes, mass, priceCents, currency, missingPrices, deliveryDay, daysToSpare } = headline;
  return [
    { label: "Stops", value: String(stops), beside: countsText({ watches, passes, notes }) },
    { label: "Mass, finished", value: massText(mass, job.units), beside: `of ${massText(greatestGrossOf(build), job.units)} greatest gross` },
    {
      label: "Price with tax",
      value: moneyText(priceCents, currency),
      beside: missingPrices === 0 ? "every line priced" : `not complete: ${counted(missingPrices, "price", "prices")} missing`,
    },
    { label: "Delivery", value: dayText(deliveryDay), beside: spareText(daysToSpare) },
  ];
}

function countsText({ watches, passes, notes }: Pick<Headline, "watches" | "passes" | "notes">): string {
  return [counted(watches, "watch", "watches"), counted(passes, "pass", "passes"), counted(notes, "note", "notes")].join(", ");
}

function spareText(days: number | undefined): string {
  if (days === undefined) return "no due day set";
  if (days === 0) return "on the due day";
  return days > 0 ? `${counted(days, "day", "days")} before it is due` : `${counted(-days, "day", "days")} late`;
}

function siteRows({ job }: Results): JsonValue {
  const { site, units } = job;
  const quantity = (kind: "temperature" | "pressure" | "speed", value: number | undefined, unit?: string): string =>
    value === undefined ? "not given" : formatQuantity(kind, value, units, unit === undefined ? {} : { unit });
  return [
    ["Place", site.place],
    ["Above sea", formatQuantity("length", site.elevation, units, { unit: units === "metric" ? "m" : "ft", digits: 4 })],
    ["Winter design", quantity("temperature", site.winterDesign)],
    ["Summer design", quantity("temperature", site.summerDesign.dryBulb)],
    ["Ground snow", quantity("pressure", site.groundSnow)],
    ["Wind", quantity("speed", site.wind, units === "metric" ? "m/s" : "mph")],
    ["Surroundings", site.surroundings],
  ];
}

/** Clear sizes between finished faces. */
function roomRows({ build, job }: Results): JsonValue {
  return build.rooms.map(({ room, name, x, y, z }) => [
    name,
    room?.what ?? "",
    [x, y, z].map(({ from, to }) => sizeText(to - from, job.units)).join(" × "),
  ]);
}

const TEMPLATE = String.raw`
#import "style.typ": *

#let tile(t) = block(width: 100%, stroke: (top: 1.4pt + ink), inset: (top: 5pt, bottom: 4pt), {
  small(t.label)
  v(-4pt)
  text(size: 15pt, weight: 600, t.value)
  v(-5pt)
  small(t.beside)
})

#let sentences(title, verdict, items) = if items.len() > 0 {
  heading(level: 2, outlined: false, title)
  grid(columns: (auto, 1fr), column-gutter: 3mm, row-gutter: 5pt,
    ..items.map(it => (verdict-mark(verdict), [#it.says #small(it.check)])).flatten())
}

#let body(data) = {
  grid(columns: (1.25fr, 1.15fr, 1.25fr, 1.1fr), column-gutter: 5mm, ..data.tiles.map(tile))
  if data.stops.len() == 0 { v(2pt); [No finding stops this build. That is not an approval.] }
  sentences("What stops it", "stop", data.stops)
  sentences("What to watch", "watch", data.watches)
  if data.missing.len() > 0 {
    heading(level: 2, outlined: false, "Prices that are missing")
    list(..data.missing.map(m => [#m.what: #m.wanted]))
  }
  heading(level: 2, outlined: false, "Rooms, clear inside")
  listing((auto, 1fr, auto), (left, left, right), ("Room", "For", "Length × width × height"), data.rooms)
  heading(level: 2, outlined: false, "Site")
  grid(columns: (auto, 1fr, auto, 1fr), column-gutter: 4mm, row-gutter: 4pt,
    ..data.site.map(((label, value)) => (small(label), value)).flatten())
  if data.enquiry != "" {
    heading(level: 2, outlined: false, "What was asked for")
    data.enquiry
  }
  if data.notes.len() > 0 {
    heading(level: 2, outlined: false, "Notes of the job")
    list(..data.notes)
  }
  heading(level: 2, outlined: false, "Contents")
  context query(heading.where(level: 1)).map(it => {
    let at = it.location()
    box(link(at)[#it.body #counter(page).at(at).first()])
  }).join([ · ])
}
`;
