import { source } from "../../working/source.ts";
import { foot, inch, poundPerFoot } from "../imperial.ts";
import { steelPerMetre } from "../steel.ts";
import type { SectionRow } from "../rows.ts";

const listed = source("AISC shapes database v16", "seen", "nominal weight");
const flatBar = source("width times thickness times 7850 kg/m3", "derived");

const TWENTY_AND_TWENTY_FOUR = [20 * foot, 24 * foot];
const TWENTY = [20 * foot];

/** Size in inches; `thickness` is nominal (design takes 0.93 of it); weight as listed in lb/ft. */
function hollow(name: string, depth: number, width: number, thickness: number, listedPounds: number): SectionRow {
  return {
    id: `hss-${name}`,
    what: `hollow section ${name.replaceAll("-", "/").replaceAll("x", " x ")} in`,
    source: listed,
    shape: "hollow",
    material: "steel",
    depth: depth * inch,
    width: width * inch,
    thickness: thickness * inch,
    massPerLength: listedPounds * poundPerFoot,
    stockLengths: TWENTY_AND_TWENTY_FOUR,
  };
}

function angle(name: string, leg: number, thickness: number, listedPounds: number): SectionRow {
  return {
    id: `angle-${name}`,
    what: `hot-rolled angle ${name.replaceAll("-", "/").replaceAll("x", " x ")} in`,
    source: listed,
    shape: "angle",
    material: "steel",
    depth: leg * inch,
    width: leg * inch,
    thickness: thickness * inch,
    massPerLength: listedPounds * poundPerFoot,
    stockLengths: TWENTY,
  };
}

function flat(name: string, words: string, width: number, thickness: number): SectionRow {
  return {
    id: `flat-${name}`,
    what: `flat bar ${words}`,
    source: flatBar,
    shape: "flat",
    material: "steel",
    depth: thickness * inch,
    width: width * inch,
    thickness: thickness * inch,
    massPerLength: steelPerMetre(width * inch * thickness * inch),
    stockLengths: TWENTY,
  };
}

/** Hollow sections, hot-rolled angles and flat bars. */
export const hotRolledSections: readonly SectionRow[] = [
  hollow("2x2x1-8", 2, 2, 0.125, 3.05),
  hollow("2x2x3-16", 2, 2, 0.1875, 4.32),
  hollow("2x2x1-4", 2, 2, 0.25, 5.41),
  hollow("3x2x1-8", 3, 2, 0.125, 3.9),
  hollow("3x2x3-16", 3, 2, 0.1875, 5.59),
  hollow("3x3x1-8", 3, 3, 0.125, 4.75),
  hollow("3x3x3-16", 3, 3, 0.1875, 6.87),
  hollow("3x3x1-4", 3, 3, 0.25, 8.81),
  hollow("4x2x1-8", 4, 2, 0.125, 4.75),
  hollow("4x2x3-16", 4, 2, 0.1875, 6.87),
  hollow("4x4x1-4", 4, 4, 0.25, 12.21),
  hollow("6x4x1-4", 6, 4, 0.25, 15.62),
  angle("2x2x3-16", 2, 0.1875, 2.44),
  angle("3x3x1-4", 3, 0.25, 4.9),
  flat("1-1-2x1-8", "1-1/2 x 1/8 in, also as a temporary screed for foam", 1.5, 0.125),
  flat("2x1-4", "2 x 1/4 in", 2, 0.25),
  flat("3x1-4", "3 x 1/4 in", 3, 0.25),
];
