import { source } from "../../working/source.ts";
import { hollowArea, steelPerMetre } from "../steel.ts";
import type { BoxRow, FrameMember } from "../rows.ts";

const made = source("frame sections usual on dry freight containers; mass from thickness and developed width", "typical");

/** Member pressed from plate: what of it is seen, and the strip from which it is folded. */
function pressed(face: number, depth: number, strip: number, thickness: number): FrameMember {
  return { face, depth, massPerLength: steelPerMetre(strip * thickness), source: made };
}

function tube(side: number, thickness: number): FrameMember {
  return { face: side, depth: side, massPerLength: steelPerMetre(hollowArea(side, side, thickness)), source: made };
}

/** Blind-end posts are one pressing of 6 mm; door-end posts a 6 mm pressing with a 113 x 40 x 12 mm hot-rolled channel inside. */
export const posts: BoxRow["posts"] = {
  blindEnd: pressed(0.15, 0.1, 0.36, 0.006),
  doorEnd: { face: 0.152, depth: 0.049, massPerLength: steelPerMetre(0.3 * 0.006 + 0.169 * 0.012), source: made },
};

export const rails: BoxRow["rails"] = {
  topSide: tube(0.06, 0.003),
  bottomSide: pressed(0.162, 0.048, 0.232, 0.0045),
  topBlind: tube(0.06, 0.003),
  bottomBlind: pressed(0.16, 0.06, 0.265, 0.004),
  doorHeader: pressed(0.141, 0.1, 0.42, 0.004),
  doorSill: pressed(0.15, 0.12, 0.36, 0.0045),
};

/** Pressed channel 122 x 45 x 40 x 4 mm under the floor. */
export const crossMembers: BoxRow["crossMembers"] = {
  pitch: 0.3,
  depth: 0.122,
  flange: 0.045,
  massPerLength: steelPerMetre((0.122 + 0.045 + 0.04 - 2 * 0.004) * 0.004),
  source: made,
};
