import { source } from "../working/source.ts";
import { boardFoot, inch } from "./imperial.ts";
import type { FoamRow } from "./rows.ts";

/** Foams sprayed in place. Values of the product in hand rule: its own sheet gives density, passes and yield. */
export const foamRows: readonly FoamRow[] = [
  {
    id: "foam-closed-cell-2lb",
    what: "closed-cell sprayed foam, nominal 2 lb/ft3",
    source: source("usual product data of medium-density foam; pass limits as in CAN/ULC-S705.2, from memory", "typical"),
    material: "foam-closed-cell",
    closedCell: true,
    passThickness: { least: 0.015, greatest: 0.05 },
    nozzleRoom: 3 * inch,
    barrierThickness: null,
    setYield: 4000 * boardFoot,
    setMass: 455,
  },
  {
    id: "foam-open-cell-half-lb",
    what: "open-cell sprayed foam, nominal 1/2 lb/ft3",
    source: source("usual product data of low-density foam", "typical"),
    material: "foam-open-cell",
    closedCell: false,
    passThickness: { least: 0.05, greatest: 0.15 },
    nozzleRoom: 3 * inch,
    barrierThickness: null,
    setYield: 16000 * boardFoot,
    setMass: 445,
  },
];
