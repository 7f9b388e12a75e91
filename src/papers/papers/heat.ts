import { CHECKS } from "../../checks/checks.ts";
import type { HeatPicture, HeatTables } from "../../checks/heatShown.ts";
import type { JsonValue } from "../../job/file.ts";
import { formatQuantity, type System } from "../../units/format.ts";
import { csv } from "../csv.ts";
import { materialLooks } from "../materialLooks.ts";
import type { Paper } from "../paper.ts";
import type { Results } from "../results.ts";
import { sectionSvg } from "../sectionSvg.ts";
import { shownText } from "../shownText.ts";
import { amountText, temperatureText } from "../write.ts";

/** What the box loses through its real sections, how cold its surfaces get, and pictures of the sections that decide. */
export const heat: Paper = {
  id: "heat",
  title: "Heat and moisture",
  make: (results) => {
    const looks = materialLooks(results.heat.pictures);
    const drawn = results.heat.pictures.map((picture, at) => ({ picture, file: `section-${at + 1}.svg`, ...sectionSvg(picture, looks, results.job.units) }));
    return {
      section: {
        template: TEMPLATE,
        data: {
          ...tablesOf(results.heat.tables, results.job.units),
          pictures: drawn.map(({ picture, file, width, height }) => ({ ...captionOf(picture, results), file, widthMm: width, heightMm: height })),
          airs: airsIn(results.heat.pictures, results.job.units),
          key: [...new Map([...looks.values()].map(({ name, fill, hatch }) => [name, { name, fill, hatch }])).values()],
          leavesOut: CHECKS.find(({ id }) => id === "envelope")?.leavesOut ?? "",
          decides: CHECKS.find(({ id }) => id === "envelope")?.decides ?? "",
        },
        files: Object.fromEntries(drawn.map(({ file, svg }) => [file, svg])),
      },
      files: [
        { path: "heat.csv", text: lossTable(results) },
        { path: "surfaces.csv", text: surfaceTable(results) },
      ],
    };
  },
};

/** Everything printed of the tables, in the job's units; numbers without their unit, which stands in the header. */
function tablesOf({ faces, openings, junctions, loss, yearlyHeat, surfaces, missing }: HeatTables, system: System): Readonly<Record<string, JsonValue>> {
  const share = (one: number): string => (loss === undefined ? "" : tenths(one / loss));
  const lossOf = (rows: readonly { readonly loss: number }[]): number => rows.reduce((sum, one) => sum + one.loss, 0);
  return {
    units: { area: unitOf(amountText({ value: 1, unit: "m2" }, system)), U: unitOf(transmittance(1, system)), psi: unitOf(linear(1, system)), length: system === "metric" ? "m" : "ft", loss: system === "metric" ? "W/K" : "BTU/(h·°F)" },
    tiles: [
      ["Heat lost by conduction", loss === undefined ? "not known" : lossText(loss, system), "for each degree between inside and outside"],
      ["Heat in a year", yearlyHeat === undefined ? "not known" : formatQuantity("energy", yearlyHeat, system, { unit: "kWh", digits: 3 }), "by monthly means, without sun, people, equipment, air"],
      ["Through faces, openings, edges", loss === undefined ? "not known" : [faces, openings, junctions].map((rows) => share(lossOf(rows))).join(" · "), "of the heat lost"],
    ],
    faces: faces.map(({ name, area, field, bridged, share: added, loss: own }) => [
      capital(name), numberOf(amountText({ value: area, unit: "m2" }, system)), numberOf(transmittance(field, system)), numberOf(transmittance(bridged, system)), percent(added), numberOf(lossText(own, system)), share(own),
    ]),
    openings: openings.map(({ opening, transmittance: U, area, loss: own, isBare }) => [
      isBare ? `${opening}, as bare steel` : opening, numberOf(amountText({ value: area, unit: "m2" }, system)), numberOf(transmittance(U, system)), numberOf(lossText(own, system)), share(own),
    ]),
    junctions: junctions
      .toSorted((a, b) => Math.abs(b.loss) - Math.abs(a.loss))
      .map(({ name, psi, length, loss: own }) => [capital(name), numberOf(amountText({ value: length, unit: "m" }, system)), numberOf(linear(psi, system)), numberOf(lossText(own, system)), share(own)]),
    rooms: [...new Set(surfaces.map(({ room }) => room))].map((room) => ({
      room,
      rows: surfaces
        .filter((one) => one.room === room)
        .map(({ verdict, name, section, words, criterion, when, temperature, factor, need }) => ({
          verdict,
          name: capital(name),
          where: section === name ? words : `${section}, ${words}`,
          against: `${criterion === "mould" ? "mould" : "dew"}, ${when === "the winter design hour" ? "design hour" : when}`,
          numbers: [temperatureText(temperature, system), ...apart(factor, need)],
        })),
    })),
    missing,
  };
}

/** Factor, need and margin with as many decimals as tell them apart. */
function apart(factor: number, need: number): readonly string[] {
  const digits = [2, 3, 4].find((count) => factor.toFixed(count) !== need.toFixed(count)) ?? 6;
  return [factor.toFixed(digits), need.toFixed(digits), signed(factor - need, digits)];
}

function captionOf({ id, name, coldest }: HeatPicture, { heat: { sections }, job }: Results): Readonly<Record<string, JsonValue>> {
  const row = sections.find((one) => one.id === id);
  if (row === undefined) throw new RangeError(`no section ${id} is listed`);
  return {
    name: capital(name),
    coldest: coldest === undefined ? "" : `${temperatureText(coldest.temperature, job.units)}, temperature factor ${coldest.factor.toFixed(2)}, ${coldest.words}`,
    verdict: row.verdict ?? "",
    mesh: `${row.unknowns} unknowns; its last halving changed the heat by ${percent(row.change)}`,
  };
}

/** "outside 32 °F, bunk room 64 °F with its dew point at 59.5 °F". */
function airsIn(pictures: readonly HeatPicture[], system: System): string {
  const dewPoints = new Map(pictures.flatMap(({ coldest, dewPoint }) => (coldest === undefined || dewPoint === undefined ? [] : [[coldest.room, dewPoint.temperature] as const])));
  const airs = new Map(pictures.flatMap(({ environments }) => environments.map(({ name, temperature }) => [name, temperature] as const)));
  return [...airs]
    .map(([name, temperature]) => {
      const dewPoint = dewPoints.get(name);
      return `${name} ${temperatureText(temperature, system)}${dewPoint === undefined ? "" : ` with its dew point at ${temperatureText(dewPoint, system)}`}`;
    })
    .join(", ");
}

function lossTable({ heat: { tables }, job }: Results): string {
  const header = ["kind", "id", "what", "U W/(m2 K)", "U without bridges W/(m2 K)", "area m2", "psi W/(m K)", "length m", "loss W/K", "loss in job units", "job unit"];
  const { faces, openings, junctions, loss } = tables;
  const shownLoss = (value: number): readonly [number, string] => apartFromUnit(lossText(value, job.units));
  return csv(header, [
    ...faces.map((one) => ["face", one.surface, one.name, one.bridged, one.field, one.area, undefined, undefined, one.loss, ...shownLoss(one.loss)]),
    ...openings.map((one) => ["opening", one.opening, one.isBare ? "as bare steel" : "", one.transmittance, undefined, one.area, undefined, undefined, one.loss, ...shownLoss(one.loss)]),
    ...junctions.map((one) => ["junction", one.id, shownText(one.name), undefined, undefined, undefined, one.psi, one.length, one.loss, ...shownLoss(one.loss)]),
    ...(loss === undefined ? [] : [["total", "", "whole box", undefined, undefined, undefined, undefined, undefined, loss, ...shownLoss(loss)]]),
  ]);
}

function surfaceTable({ heat: { tables }, job }: Results): string {
  const header = ["room", "surface", "section", "where", "against", "when", "verdict", "temperature degC", "factor", "need", "margin", "temperature in job units", "job unit"];
  return csv(
    header,
    tables.surfaces.map(({ room, name, section, words, criterion, when, verdict, temperature, factor, need }) => [
      shownText(room), shownText(name), shownText(section), words, criterion, when, verdict, temperature, factor, need, factor - need, ...apartFromUnit(temperatureText(temperature, job.units)),
    ]),
  );
}

function transmittance(value: number, system: System): string {
  return formatQuantity("thermalTransmittance", value, system, { digits: 3 });
}

function linear(value: number, system: System): string {
  return formatQuantity("linearTransmittance", value, system, { digits: 3 });
}

/** Heat for each kelvin, or for each degree Fahrenheit, which is 5/9 of one. */
function lossText(value: number, system: System): string {
  return system === "metric" ? `${formatQuantity("power", value, system, { unit: "W", digits: 3 })}/K` : `${formatQuantity("power", (value * 5) / 9, system, { unit: "BTU/h", digits: 3 })} per °F`;
}

function percent(ratio: number): string {
  return formatQuantity("ratio", ratio, "metric", { unit: "%", digits: 2 });
}

/** A part of the whole, to a tenth of a percent. */
function tenths(ratio: number): string {
  // Adding zero turns -0 into 0.
  return `${(Number((100 * ratio).toFixed(1)) + 0).toFixed(1)} %`;
}

/** A number beside its unit, for a spreadsheet. */
function apartFromUnit(text: string): readonly [number, string] {
  return [Number(numberOf(text)), unitOf(text)];
}

function signed(value: number, digits: number): string {
  return `${value < 0 ? "-" : "+"}${Math.abs(value).toFixed(digits)}`;
}

/** "0.35" of "0.35 W/(m²·K)". */
function numberOf(text: string): string {
  return text.split(" ")[0] as string;
}

function unitOf(text: string): string {
  return text.split(" ").slice(1).join(" ");
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

const TEMPLATE = String.raw`
#import "style.typ": *

#let tile((label, value, beside)) = block(width: 100%, stroke: (top: 1.4pt + ink), inset: (top: 5pt, bottom: 4pt), {
  small(label)
  v(-4pt)
  text(size: 13pt, weight: 600, value)
  v(-5pt)
  small(beside)
})

#let swatch(fill, hatch) = box(width: 7mm, height: 3.2mm, baseline: 0.5mm, stroke: 0.3pt + soft, fill: if hatch == "dots" {
  tiling(size: (1.5mm, 1.5mm), place(dx: 0.6mm, dy: 0.6mm, circle(radius: 0.13mm, fill: luma(43%))))
} else if hatch == "strokes" {
  tiling(size: (1.5mm, 1.5mm), { place(rect(width: 1.5mm, height: 1.5mm, fill: rgb(fill))); place(line(start: (0mm, 1.5mm), end: (1.5mm, 0mm), stroke: 0.3pt + rgb("#a99f7c"))) })
} else { rgb(fill) })

#let line-swatch(body) = box(width: 7mm, height: 3.2mm, baseline: 0.5mm, body)

#let key(data) = {
  let blue = rgb("#1d4a70")
  let items = data.key.map(k => (swatch(k.fill, k.hatch), k.name))
  items.push((swatch("#dfe7ee", "none"), [outside air]))
  items.push((line-swatch(place(horizon, line(length: 100%, stroke: 1pt + black))), [steel, not thinner than 0.35 mm on paper]))
  items.push((line-swatch(place(horizon, line(length: 100%, stroke: 0.45pt + blue))), [isotherm]))
  items.push((line-swatch(place(horizon, line(length: 100%, stroke: (paint: blue, thickness: 1.7pt, dash: (array: (7pt, 2.3pt)))))), [dew point of the air at the coldest surface]))
  items.push((line-swatch(place(center + horizon, circle(radius: 1.15mm, stroke: 1.1pt + black, fill: white, inset: 0pt, align(center + horizon, circle(radius: 0.4mm, fill: black))))), [coldest surface]))
  set text(size: 7.6pt)
  set par(leading: 0.4em)
  grid(columns: (auto, 1fr) * 3, column-gutter: (2mm, 4mm), row-gutter: 4pt, align: horizon, ..items.flatten())
}

#let picture(p) = block(breakable: false, width: 100%, below: 8mm, {
  set text(size: 7.8pt)
  set par(leading: 0.42em, spacing: 0.55em)
  image(p.file, width: p.widthMm * 1mm, height: p.heightMm * 1mm, alt: p.name)
  v(-1mm)
  [#if p.verdict != "" { verdict-mark(p.verdict); h(1.5mm) }#text(weight: 600, p.name)]
  if p.coldest != "" { parbreak(); [Coldest: #p.coldest.] }
  parbreak()
  small[Mesh: #p.mesh.]
})

#let body(data) = {
  grid(columns: (1fr, 1fr, 1.2fr), column-gutter: 5mm, ..data.tiles.map(tile))
  [Heat is counted through sections cut from this build, between inside planes. _Field_ is the face without what bridges it; edges and the frames of
  openings count by what passes them beyond the plain faces.]
  heading(level: 2, outlined: false, "Faces")
  let right-of-first(n) = (left,) + (right,) * n
  listing((1fr,) + (auto,) * 6, right-of-first(6),
    ("Face", [Area, #data.units.area], [U of the field, #data.units.U], [U with bridges], [They add], [Heat, #data.units.loss], [Of all]), data.faces)
  if data.openings.len() > 0 {
    heading(level: 2, outlined: false, "Openings")
    listing((1fr,) + (auto,) * 4, right-of-first(4), ("Opening", [Area, #data.units.area], [U, #data.units.U], [Heat, #data.units.loss], [Of all]), data.openings)
  }
  heading(level: 2, outlined: false, "Edges, partitions, frames of openings")
  listing((1fr,) + (auto,) * 4, right-of-first(4), ("Line, the largest first", [Length, #data.units.length], [ψ, #data.units.psi], [Heat, #data.units.loss], [Of all]), data.junctions)
  for room in data.rooms {
    heading(level: 2, outlined: false, [Coldest surfaces of the #room.room])
    [Each against what asks most of it. The factor is 0 at the outside temperature and 1 at the room's; mould asks for air below 80 % humid at the
    surface in a month, dew for a surface above the dew point. Surface resistances are those of the mould rule, which err cold.]
    listing((auto, 1fr, auto, auto, auto, auto, auto), (left, left, left, right, right, right, right),
      ("", "Surface", "Against", "At", "Factor", "Needed", "Margin"),
      room.rows.map(r => (verdict-mark(r.verdict), { r.name; linebreak(); small(r.where) }, r.against, ..r.numbers)))
  }
  if data.pictures.len() > 0 {
    heading(level: 2, outlined: false, "Sections that decide, at the winter design hour")
    [Of each face the coldest stud bay, the coldest edge between walls, at the roof and at the floor, the coldest junction of a partition, and of each make of
    opening its coldest edge. Upright sections stand as in the box; level ones are seen from above. Air: #data.airs.]
    block(above: 8pt, below: 10pt, sticky: true, key(data))
    columns(2, gutter: 8mm, for p in data.pictures { picture(p) })
  }
  if data.missing.len() > 0 {
    heading(level: 2, outlined: false, "Left out")
    [No place to cut, or no mesh fine enough: #data.missing.join("; ").]
  }
  block(above: 14pt, framed[Not in these figures: #data.leavesOut. Who decides: #data.decides.])
}
`;
