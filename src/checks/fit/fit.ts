import type { Check } from "../check.ts";
import { articleFits, frameAndSheet } from "./articleFits.ts";
import { battsInStack } from "./battsInStack.ts";
import { beforeOpenings } from "./beforeOpenings.ts";
import { boardOverlap } from "./boardOverlap.ts";
import { boardSeams, boardStagger } from "./boardSeams.ts";
import { bringIn } from "./bringIn.ts";
import { cargoDoorLining } from "./cargoDoorLining.ts";
import { cargoDoorOpenings } from "./cargoDoorOpenings.ts";
import { clearSpaces } from "./clearSpaces.ts";
import { fitOf, type Rule } from "./context.ts";
import { foamInStack } from "./foamInStack.ts";
import { itemsAndArticles } from "./itemsAndArticles.ts";
import { itemsApart } from "./itemsApart.ts";
import { itemsInRooms } from "./itemsInRooms.ts";
import { nozzleRoom } from "./nozzleRoom.ts";
import { openingInSheet } from "./openingInSheet.ts";
import { openingsAndCrossMembers, openingsAndPartitions } from "./openingsAcross.ts";
import { openingsAndStuds } from "./openingsAndStuds.ts";
import { openingsApart } from "./openingsApart.ts";
import { roomSizes } from "./roomSizes.ts";
import { snags } from "./snags.ts";
import { steelInTheWay } from "./steelInTheWay.ts";
import { swings, swingsAndItems } from "./swings.ts";

/** Whether the build goes together: a list of rules, each with one question. See docs/checks/fit.md. */
export const fit: Check = {
  id: "fit",
  asks: "Does everything fit: openings, framing, boards, foam, batts, cargo doors, rooms, items and swings?",
  needs: ["openings", "items", "rooms", "faces", "buildUps"],
  leavesOut:
    "strength of the cut box; fire separation and working clearances of codes; turning an item inside; leaves over a half turn; what stands outside the box; tolerances of the box in hand",
  decides: "the shop, on the box as measured; makers' papers for articles, foam and boards",
  run(build) {
    const prepared = fitOf(build);
    return RULES.flatMap((rule) => rule(prepared));
  },
};

const RULES: readonly Rule[] = [
  openingInSheet,
  openingsApart,
  openingsAndPartitions,
  openingsAndCrossMembers,
  cargoDoorOpenings,
  openingsAndStuds,
  articleFits,
  frameAndSheet,
  roomSizes,
  itemsInRooms,
  itemsApart,
  itemsAndArticles,
  clearSpaces,
  swings,
  swingsAndItems,
  beforeOpenings,
  bringIn,
  cargoDoorLining,
  nozzleRoom,
  foamInStack,
  battsInStack,
  boardSeams,
  boardStagger,
  boardOverlap,
  steelInTheWay,
  snags,
];
