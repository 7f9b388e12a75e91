import { source, type Source } from "../working/source.ts";
import type { MaterialRow } from "./rows.ts";

const seen = source("ISO 10077-2 and EN 12524 table of design values, as carried in ISO 10456:2007", "seen");
const memory = source("ISO 10456:2007 tables 3 and 4", "memory");
const typical = (what: string): Source => source(what, "typical");

type Values = readonly [density: number, conductivity: number, specificHeat: number, vapourResistance: number | null];

function material(id: string, what: string, values: Values, from: Source): MaterialRow {
  const [density, conductivity, specificHeat, vapourResistance] = values;
  return { id, what, density, conductivity, specificHeat, vapourResistance, source: from };
}

/** Materials by id. The dry-cup value of mu is taken where the standard gives two. */
export const materialRows: readonly MaterialRow[] = [
  material("steel", "steel", [7800, 50, 450, null], seen),
  material("weathering-steel", "weathering steel of the box's skin and frame, thermal values of steel", [7800, 50, 450, null], seen),
  material("galvanised-steel", "galvanised sheet steel, thermal values of steel", [7800, 50, 450, null], seen),
  material("stainless-steel", "stainless steel, austenitic", [7900, 17, 460, null], seen),
  material("aluminium", "aluminium alloy", [2800, 160, 880, null], seen),
  material("copper", "copper", [8900, 380, 380, null], seen),
  material("pvc", "PVC, rigid", [1390, 0.17, 900, 50000], seen),
  material("vinyl", "PVC floor covering", [1700, 0.25, 1400, 10000], source("ISO 10456:2007 table 3, plastic floor covering", "memory")),
  material("rubber", "rubber floor covering", [1200, 0.17, 1400, 10000], source("ISO 10456:2007 table 3, rubber floor covering", "memory")),
  material("silicone", "silicone sealant, filled", [1450, 0.5, 1000, 5000], memory),
  material("polyethylene", "polyethylene sheet, low density", [920, 0.33, 2200, 100000], memory),
  material("softwood", "softwood, 500 kg/m3", [500, 0.13, 1600, 50], memory),
  material("plywood", "plywood, 500 kg/m3", [500, 0.13, 1600, 200], memory),
  material("plywood-treated", "plywood, pressure-treated fire-retardant, thermal values of plywood 700 kg/m3", [600, 0.15, 1600, 210], typical("plywood of ISO 10456:2007 read between 500 and 700 kg/m3")),
  material("container-floor-plywood", "hardwood plywood of container floors, thermal values of plywood 700 kg/m3", [800, 0.19, 1600, 230], typical("plywood of ISO 10456:2007 read between 700 and 1000 kg/m3; density of made floors")),
  material("osb", "oriented strand board, 650 kg/m3", [650, 0.13, 1700, 50], memory),
  material("gypsum-board", "gypsum plasterboard, 700 kg/m3", [700, 0.21, 1000, 10], memory),
  material("gypsum-board-dense", "gypsum plasterboard, 900 kg/m3", [900, 0.25, 1000, 10], memory),
  material("cement-board", "cement backer board, glass-mesh faced", [1200, 0.25, 1000, 30], typical("made boards of this kind")),
  material("frp", "glass-fibre reinforced polyester panel", [1500, 0.3, 1200, 50000], typical("made panels; polyester resin of ISO 10456:2007 gives 1400 kg/m3 and 0.19 W/(m K)")),
  material("mineral-wool", "mineral wool batt, declared value", [45, 0.037, 1030, 1], source("ISO 10456:2007 for heat and vapour; density and conductivity as usually declared", "typical")),
  material("xps", "extruded polystyrene board, declared value", [35, 0.034, 1450, 150], source("ISO 10456:2007 for heat and vapour; density and conductivity as usually declared", "typical")),
  material("foam-closed-cell", "sprayed polyurethane, closed cell, aged", [32, 0.026, 1400, 70], source("usually declared values of medium-density foam; vapour resistance such that 50 mm meets the 60 ng/(Pa s m2) of CAN/ULC-S705.1; heat capacity of ISO 10456:2007", "typical")),
  material("foam-open-cell", "sprayed polyurethane, open cell", [8, 0.039, 1400, 4], typical("usually declared values of half-pound foam")),
  material("concrete", "concrete, 2200 kg/m3", [2200, 1.65, 1000, 120], source("ISO 10456:2007; conductivity seen, vapour resistance from memory", "memory")),
  material("glass", "soda lime glass", [2500, 1, 750, null], memory),
  material("paint-film", "dry paint film", [1400, 0.3, 1000, 10000], typical("usual paint films; carried for mass only")),
];
