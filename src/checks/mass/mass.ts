import { type Build, greatestGrossOf, tareOf } from "../../build/build.ts";
import { centreHeight, cornerLoad, STANDARD_GRAVITY } from "../../physics/rigidBody.ts";
import { compare } from "../../working/comparison.ts";
import { apply } from "../../working/formula.ts";
import { given, type Quantity } from "../../working/quantity.ts";
import { source } from "../../working/source.ts";
import { fromRow } from "../fromRow.ts";
import type { Check, Finding } from "../check.ts";
import { findingMaker, type MakeFinding } from "../finding.ts";
import { GREATEST_ECCENTRICITY } from "../limits.ts";
import { sayIn } from "../say.ts";
import { offCentre, type OffCentre } from "./offCentre.ts";
import { SENTENCES } from "./sentences.ts";
import { weigh, type Weighed } from "./weigh.ts";

/** Mass, centre of mass and corner loads of the finished box. See docs/checks/mass.md. */
export const mass: Check = {
  id: "mass",
  asks: "What does the finished box weigh, where is its centre of mass, and what does each corner carry?",
  needs: ["box.tare", "box.greatestGross", "items"],
  leavesOut:
    "people, stores and liquids not entered as items; sling and crane forces; corners on uneven ground; temporary parts; screws, sealants and wiring",
  decides: "the carrier and the lifting contractor, on the mass found by weighing",
  run(build) {
    const make = findingMaker("mass", SENTENCES, sayIn(build.job.units));
    const weighed = weigh(build.parts);
    if (weighed === undefined) return [make("no mass", {}, { verdict: "note", at: "total", about: [] })];
    const off = offCentre(build, weighed);
    return [
      gross(build, weighed, make),
      ...tare(build, make),
      ...eccentric(off, make),
      height(build, weighed, make),
      ...corners(build, weighed, off, make),
    ];
  },
};

type Make = MakeFinding<typeof SENTENCES>;

function gross(build: Build, { total }: Weighed, make: Make): Finding {
  const most = given(greatestGrossOf(build), "kg", "m_gross", "greatest gross mass", plateOrRow(build, "greatestGross"));
  const comparison = compare(total, "<=", most, 1e-6);
  const facts = { total: total.value, most: most.value };
  const body = { at: "total", about: [], working: [total], comparison };
  return comparison.holds
    ? make("within gross", { ...facts, left: comparison.margin }, { ...body, verdict: "pass" })
    : make("over gross", { ...facts, over: -comparison.margin }, { ...body, verdict: "stop" });
}

function tare(build: Build, make: Make): readonly Finding[] {
  const typical = given(tareOf(build), "kg", "m_tare", "tare of the box", plateOrRow(build, "tare"));
  const missing =
    build.job.box.tare === undefined
      ? [make("tare from catalogue", { tare: typical.value }, { verdict: "note", at: "tare", about: [], working: [typical] })]
      : [];
  const heavy = build.parts
    .filter((part) => part.role === "rest of the box" && part.mass < 0)
    .map((part) => {
      const over = given(part.mass, "kg", "m_rest", "tare less the modelled parts of the box", {
        kind: "part",
        id: part.id,
        field: "mass",
      });
      return make(
        "box modelled too heavy",
        { over: -part.mass },
        { verdict: "watch", at: "rest-of-box", about: [part.id], working: [over] },
      );
    });
  return [...missing, ...heavy];
}

function eccentric(off: OffCentre, make: Make): readonly Finding[] {
  return [off.along, off.across].map(({ way, toward, eccentricity, share }) => {
    const comparison = compare(share, "<=", GREATEST_ECCENTRICITY, 1e-12);
    const facts = { way, offset: Math.abs(eccentricity.value), toward, share: share.value, most: GREATEST_ECCENTRICITY.value };
    const body = { at: `eccentricity/${way}`, about: [], comparison };
    return comparison.holds
      ? make("mass near middle", facts, { ...body, verdict: "pass" })
      : make("mass off middle", facts, { ...body, verdict: "watch" });
  });
}

function height(build: Build, { centre }: Weighed, make: Make): Finding {
  const { id, insets } = build.box;
  const h_floor = given(
    insets.floor,
    "m",
    "h_floor",
    "bare floor above the underside",
    fromRow(`boxes/${id}`, "insets.floor", insets.source),
  );
  const above = apply(centreHeight, { x_cm: centre.z, h_floor });
  return make("centre height", { height: above.value }, { verdict: "note", at: "centre-height", about: [], working: [above] });
}

/** Loads at the four bottom corner fittings. */
function corners(build: Build, { total }: Weighed, off: OffCentre, make: Make): readonly Finding[] {
  const { fittings, id } = build.box;
  const row = `boxes/${id}`;
  const common = {
    m_sum: total,
    g_n: given(STANDARD_GRAVITY, "m/s2", "g_n", "standard acceleration of free fall", {
      kind: "constant",
      source: source("3rd CGPM, 1901", "seen"),
    }),
    e_x: off.along.eccentricity,
    e_y: off.across.eccentricity,
    S_x: given(fittings.holesAlong, "m", "S_x", "corner fitting holes apart along", fromRow(row, "fittings.holesAlong", fittings.source)),
    P_y: given(
      fittings.holesAcross,
      "m",
      "P_y",
      "corner fitting holes apart across",
      fromRow(row, "fittings.holesAcross", fittings.source),
    ),
  };
  const loads = CORNERS.map(({ words, s_x, s_y }) =>
    apply(
      cornerLoad,
      { ...common, s_x: side(s_x, "s_x", words), s_y: side(s_y, "s_y", words) },
      { means: `load on the corner at the ${words}` },
    ),
  );
  const [blindLeft, blindRight, doorLeft, doorRight] = loads.map(({ value }) => value) as [number, number, number, number];
  const lifted = loads.flatMap((load, index) => (load.value < 0 ? [{ load, corner: CORNERS[index]?.words ?? "" }] : []));
  return [
    make(
      "corner loads",
      { blindLeft, blindRight, doorLeft, doorRight },
      { verdict: "note", at: "corner-loads", about: [], working: loads },
    ),
    ...lifted.map(({ load, corner }) =>
      make(
        "corner lifts off",
        { corner: `at the ${corner}`, load: load.value },
        { verdict: "stop", at: `corner-lifts-off/${corner.replaceAll(/\W+/g, "-")}`, about: [], working: [load] },
      ),
    ),
  ];
}

const CORNERS = [
  { words: "blind end, left", s_x: -1, s_y: -1 },
  { words: "blind end, right", s_x: -1, s_y: 1 },
  { words: "door end, left", s_x: 1, s_y: -1 },
  { words: "door end, right", s_x: 1, s_y: 1 },
] as const;

function side(value: number, symbol: string, corner: string): Quantity<"1"> {
  return given(value, "1", symbol, `side of the corner at the ${corner}`, {
    kind: "constant",
    source: source("position of the corner", "derived"),
  });
}

function plateOrRow({ job, box }: Build, field: "tare" | "greatestGross") {
  return job.box[field] === undefined
    ? fromRow(`boxes/${box.id}`, `mass.${field}`, box.mass.source)
    : ({ kind: "job", path: `box.${field}` } as const);
}
