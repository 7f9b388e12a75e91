import { source, type Source } from "../../working/source.ts";
import type { BoxRow } from "../rows.ts";
import { crossMembers, posts, rails } from "./frame.ts";

/** What sets one dry box apart from the next. */
export interface DryBox {
  readonly id: string;
  readonly nominalFeet: BoxRow["nominalFeet"];
  readonly length: number;
  readonly height: number;
  readonly from: Source;
  readonly tare: number;
  readonly greatestGross: number;
  readonly holesAlong: number;
}

const WIDTH = 2.438;
const HIGH_CUBE_FROM = 2.8;
/** Seen on the door end: header over the opening; the opening starts at the bare floor. */
const HEADER_FACE = rails.doorHeader.face;

const insets: BoxRow["insets"] = {
  blindEnd: 0.06,
  doorEnd: 0.1,
  left: 0.043,
  right: 0.043,
  roof: 0.028,
  floor: 0.17,
  source: source("usual inside sizes of made boxes, shared between the faces by their sheets and frame", "typical"),
};

const leafMassPerArea = 45;
const leafGap = 0.01;

/** A dry box with cargo doors at one end: inside sizes, door opening and leaves follow from the outside and the insets. */
export function dryBox(box: DryBox): BoxRow {
  const tall = box.height > HIGH_CUBE_FROM;
  const opening = {
    width: WIDTH - 2 * posts.doorEnd.depth,
    height: box.height - insets.floor - HEADER_FACE,
  };
  const leafWidth = opening.width / 2 - leafGap;
  const leafHeight = opening.height - 2 * leafGap;
  return {
    id: box.id,
    what: `${box.nominalFeet} ft ${tall ? "high cube" : "standard"} dry box`,
    source: source("dry freight container of ISO 668 and ISO 1496-1, with usual values of made boxes", "typical"),
    nominalFeet: box.nominalFeet,
    height: tall ? "high cube" : "standard",
    outside: { length: box.length, width: WIDTH, height: box.height, source: box.from },
    inside: {
      length: box.length - insets.blindEnd - insets.doorEnd,
      width: WIDTH - insets.left - insets.right,
      height: box.height - insets.roof - insets.floor,
      source: source("usual inside sizes of made boxes; ISO 1496-1 gives only the least", "typical"),
    },
    insets,
    doorOpening: { ...opening, source: source("usual door openings of made boxes; ISO 1496-1 gives only the least", "typical") },
    mass: { tare: box.tare, greatestGross: box.greatestGross, source: massSource(box) },
    fittings: {
      holesAlong: box.holesAlong,
      holesAcross: 2.259,
      body: { length: 0.178, width: 0.162, height: 0.118 },
      mass: 11,
      source: source("ISO 668 hole spacing and ISO 1161 fitting; mass of usual castings", "memory"),
    },
    posts,
    rails,
    crossMembers,
    forkPockets: forkPockets(box.nominalFeet),
    floor: {
      thickness: 0.028,
      material: "container-floor-plywood",
      source: source("28 mm plywood floor usual on made boxes", "typical"),
    },
    sheets: { side: "side-36", end: "end-46", roof: "roof-20" },
    cargoDoors: {
      leafWidth,
      leafHeight,
      leafMass: leafMassPerArea * leafWidth * leafHeight,
      // A deeper lining would leave the doorway between the posts and meet the lining of the side walls.
      liningDepth: posts.doorEnd.face - insets.doorEnd,
      liningMargin: 0.06,
      source: source("usual cargo doors of made boxes; lining kept between the posts, common practice", "typical"),
    },
  };
}

function massSource(box: DryBox): Source {
  const tare = "usual tare of made boxes";
  return box.nominalFeet === 10
    ? source(`${tare}; greatest gross mass of 1D boxes in ISO 668, from memory`, "typical")
    : source(`${tare}; greatest gross mass 30480 kg of ISO 668:2013, raised to 36000 kg by its amendment 2; the plate rules`, "typical");
}

/** Centres, least width and least height of pockets for packed boxes. Boxes of 40 and 45 ft have none. */
function forkPockets(feet: BoxRow["nominalFeet"]): BoxRow["forkPockets"] {
  const clause = "fork-lift pockets";
  if (feet === 20) return { spacing: 2.05, width: 0.355, height: 0.115, source: source("ISO 1496-1:2013", "memory", clause) };
  if (feet === 10) return { spacing: 0.9, width: 0.305, height: 0.102, source: source("ISO 1496-1:2013", "memory", clause) };
  return null;
}
