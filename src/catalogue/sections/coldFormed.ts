import { source } from "../../working/source.ts";
import { foot, inch } from "../imperial.ts";
import { steelPerMetre, stripWidth } from "../steel.ts";
import type { SectionRow } from "../rows.ts";

const strip = source("developed strip times design thickness times 7850 kg/m3; sizes as usual in ASTM C645 and C955 framing", "derived");

/** Design thickness is the least bare-metal thickness over 0.95 (AISI S220 and S240, from memory). */
const GAUGES = [
  { name: "18mil", words: "18 mil (25 gauge)", thickness: (0.0179 / 0.95) * inch },
  { name: "33mil", words: "33 mil (20 gauge)", thickness: (0.0329 / 0.95) * inch },
] as const;
type Gauge = (typeof GAUGES)[number];

const WEBS = [
  { name: "1-5-8", inches: 1.625 },
  { name: "2-1-2", inches: 2.5 },
  { name: "3-5-8", inches: 3.625 },
] as const;

const STUD_FLANGE = 1.25 * inch;
const STUD_LIP = (3 / 16) * inch;
const TRACK_FLANGE = 1.25 * inch;
const STUD_LENGTHS = [8, 9, 10, 12].map((feet) => feet * foot);
const TEN_FEET = [10 * foot];

/** Inside fold radius: 3/32 in less half the thickness, which is usual for sheet up to 43 mil. */
function foldRadius(thickness: number): number {
  return (3 / 32) * inch - thickness / 2;
}

interface Bar {
  readonly id: string;
  readonly what: string;
  readonly shape: "stud" | "track" | "angle";
  readonly depth: number;
  readonly width: number;
  readonly elements: readonly number[];
  readonly lip?: number;
  readonly stockLengths: readonly number[];
}

function bar(gauge: Gauge, { elements, ...kept }: Bar): SectionRow {
  const { thickness } = gauge;
  const area = stripWidth(elements, thickness, foldRadius(thickness)) * thickness;
  return { ...kept, source: strip, material: "galvanised-steel", thickness, massPerLength: steelPerMetre(area) };
}

function stud(gauge: Gauge, web: (typeof WEBS)[number]): SectionRow {
  const depth = web.inches * inch;
  return bar(gauge, {
    id: `stud-${web.name}-${gauge.name}`,
    what: `steel stud ${web.inches} in, flange 1-1/4 in, ${gauge.words}`,
    shape: "stud",
    depth,
    width: STUD_FLANGE,
    lip: STUD_LIP,
    elements: [STUD_LIP, STUD_FLANGE, depth, STUD_FLANGE, STUD_LIP],
    stockLengths: STUD_LENGTHS,
  });
}

/** A track is deeper than its stud by its own two flanges, so that the stud stands inside it. */
function track(gauge: Gauge, web: (typeof WEBS)[number]): SectionRow {
  const depth = web.inches * inch + 2 * gauge.thickness;
  return bar(gauge, {
    id: `track-${web.name}-${gauge.name}`,
    what: `steel track for ${web.inches} in studs, flange 1-1/4 in, ${gauge.words}`,
    shape: "track",
    depth,
    width: TRACK_FLANGE,
    elements: [TRACK_FLANGE, depth, TRACK_FLANGE],
    stockLengths: TEN_FEET,
  });
}

/** Hats have sloping webs and hemmed feet: 4-1/2 in of strip is what made bars of 7/8 in weigh out to. */
const HAT_STRIP = 4.5 * inch;

function hat(gauge: Gauge): SectionRow {
  return {
    id: `hat-7-8-${gauge.name}`,
    what: `furring hat 7/8 in, face 1-1/4 in, ${gauge.words}`,
    source: source("usual strip of made bars times design thickness times 7850 kg/m3", "typical"),
    shape: "hat",
    material: "galvanised-steel",
    depth: (7 / 8) * inch,
    width: 1.25 * inch,
    thickness: gauge.thickness,
    massPerLength: steelPerMetre(HAT_STRIP * gauge.thickness),
    stockLengths: [10 * foot, 12 * foot],
  };
}

function corner(gauge: Gauge, kind: "angle" | "trim", name: string, inches: number): SectionRow {
  const leg = inches * inch;
  return bar(gauge, {
    id: `${kind}-${name}-${gauge.name}`,
    what: kind === "angle" ? `corner angle ${inches} in, ${gauge.words}` : `trim angle ${inches} in around openings, ${gauge.words}`,
    shape: "angle",
    depth: leg,
    width: leg,
    elements: [leg, leg],
    stockLengths: TEN_FEET,
  });
}

/** Studs, tracks, hats, corner and trim angles folded from sheet. */
export const coldFormedSections: readonly SectionRow[] = GAUGES.flatMap((gauge) => [
  ...WEBS.flatMap((web) => [stud(gauge, web), track(gauge, web)]),
  hat(gauge),
  corner(gauge, "angle", "1-1-2", 1.5),
  corner(gauge, "trim", "2x2", 2),
  corner(gauge, "trim", "3x3", 3),
]);
