import { source } from "../working/source.ts";
import type { ProfileRow } from "./rows.ts";

const made = source("sheet profiles usual on dry freight containers", "typical");

/** Trapezoidal sheets of the box's skin. Slopes take what the two flats leave of the pitch, half each. */
export const profileRows: readonly ProfileRow[] = [
  {
    id: "side-36",
    what: "side wall sheet, vertical corrugations 36 mm deep",
    depth: 0.036,
    pitch: 0.278,
    innerFlat: 0.07,
    outerFlat: 0.072,
    thickness: 0.0016,
    material: "weathering-steel",
    source: made,
  },
  {
    id: "end-46",
    what: "blind end sheet, vertical corrugations 45.6 mm deep",
    depth: 0.0456,
    pitch: 0.25,
    innerFlat: 0.104,
    outerFlat: 0.11,
    thickness: 0.002,
    material: "weathering-steel",
    source: made,
  },
  {
    id: "roof-20",
    what: "roof sheet, corrugations 20 mm deep across the box",
    depth: 0.02,
    pitch: 0.209,
    innerFlat: 0.0645,
    outerFlat: 0.091,
    thickness: 0.002,
    material: "weathering-steel",
    source: made,
  },
];
