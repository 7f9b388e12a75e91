import { articleRows } from "./articles.ts";
import { battRows } from "./batts.ts";
import { boardRows } from "./boards.ts";
import { boxRows } from "./boxes.ts";
import { coatingRows } from "./coatings.ts";
import { fastenerRows } from "./fasteners.ts";
import { foamRows } from "./foams.ts";
import { materialRows } from "./materials.ts";
import { profileRows } from "./profiles.ts";
import { sealantRows } from "./sealants.ts";
import { sectionRows } from "./sections.ts";
import { table } from "./table.ts";

/** The one way to a catalogue row: `catalogue.boards.get("plywood-1-2")`. */
export const catalogue = {
  boxes: table("boxes", boxRows),
  profiles: table("profiles", profileRows),
  materials: table("materials", materialRows),
  boards: table("boards", boardRows),
  sections: table("sections", sectionRows),
  fasteners: table("fasteners", fastenerRows),
  sealants: table("sealants", sealantRows),
  foams: table("foams", foamRows),
  batts: table("batts", battRows),
  coatings: table("coatings", coatingRows),
  articles: table("articles", articleRows),
} as const;
