import { source, type Source } from "../../working/source.ts";
import { foot, inch, poundPerSquareFoot } from "../imperial.ts";
import type { BoardRow } from "../rows.ts";
import { eightAndTen, eightToTwelve, feet } from "./stock.ts";

const gypsumMass: Source = source("ASTM C1396/C1396M thickness; usual mass of made boards; screws at 8 in and 12 in, common practice", "typical");
const woodMass: Source = source("thickness by performance category of DOC PS 1 and PS 2; mass 3.0 (plywood) and 3.3 (OSB) lb/ft2 an inch", "memory");

function gypsum(id: string, what: string, eighths: number, poundsAFoot: number): BoardRow {
  return {
    id,
    what,
    source: gypsumMass,
    kind: "gypsum",
    material: "gypsum-board",
    thickness: (eighths / 8) * inch,
    massPerArea: poundsAFoot * poundPerSquareFoot,
    stock: eightToTwelve,
    fixing: { fastener: "screw-drywall-25", edge: 8 * inch, field: 12 * inch },
    taped: true,
  };
}

interface Wood {
  readonly id: string;
  readonly what: string;
  readonly material: "plywood" | "plywood-treated" | "osb";
  /** Made thickness in 1/32 in, which is less than the name that the trade gives. */
  readonly thirtySeconds: number;
  readonly poundsAnInch: number;
}

function wood(panel: Wood): BoardRow {
  const inches = panel.thirtySeconds / 32;
  return {
    id: panel.id,
    what: panel.what,
    source: woodMass,
    kind: "wood panel",
    material: panel.material,
    thickness: inches * inch,
    massPerArea: panel.poundsAnInch * inches * poundPerSquareFoot,
    stock: panel.material === "osb" ? [feet(4, 8), feet(4, 9), feet(4, 10)] : eightAndTen,
    fixing: { fastener: "screw-drilling-32", edge: 6 * inch, field: 12 * inch },
    taped: false,
  };
}

/** Boards that line walls and ceilings. */
export const liningBoards: readonly BoardRow[] = [
  gypsum("gypsum-1-2", "gypsum board 1/2 in, regular", 4, 1.6),
  gypsum("gypsum-5-8", "gypsum board 5/8 in, regular", 5, 2.1),
  gypsum("gypsum-type-x-1-2", "gypsum board 1/2 in, Type X", 4, 1.9),
  gypsum("gypsum-type-x-5-8", "gypsum board 5/8 in, Type X", 5, 2.2),
  wood({ id: "plywood-1-4", what: "plywood 1/4 in", material: "plywood", thirtySeconds: 8, poundsAnInch: 3 }),
  wood({ id: "plywood-1-2", what: "plywood 1/2 in (15/32 in as made)", material: "plywood", thirtySeconds: 15, poundsAnInch: 3 }),
  wood({ id: "plywood-5-8", what: "plywood 5/8 in (19/32 in as made)", material: "plywood", thirtySeconds: 19, poundsAnInch: 3 }),
  wood({ id: "plywood-3-4", what: "plywood 3/4 in (23/32 in as made)", material: "plywood", thirtySeconds: 23, poundsAnInch: 3 }),
  wood({ id: "plywood-frt-1-2", what: "fire-retardant plywood 1/2 in (15/32 in as made)", material: "plywood-treated", thirtySeconds: 15, poundsAnInch: 3.4 }),
  wood({ id: "plywood-frt-3-4", what: "fire-retardant plywood 3/4 in (23/32 in as made)", material: "plywood-treated", thirtySeconds: 23, poundsAnInch: 3.4 }),
  wood({ id: "osb-7-16", what: "oriented strand board 7/16 in", material: "osb", thirtySeconds: 14, poundsAnInch: 3.3 }),
  wood({ id: "osb-3-4", what: "oriented strand board 3/4 in (23/32 in as made)", material: "osb", thirtySeconds: 23, poundsAnInch: 3.3 }),
  {
    id: "frp-panel-2-3",
    what: "fibre-reinforced plastic panel 0.09 in, glued over a board",
    source: source("usual made panels; adhesive over the whole back, common practice", "typical"),
    kind: "plastic panel",
    material: "frp",
    thickness: 0.09 * inch,
    massPerArea: 3.4,
    stock: eightToTwelve,
    fixing: null,
    bond: { sealant: "adhesive-panel", perArea: 1 },
    taped: false,
  },
  {
    id: "cement-board-1-2",
    what: "cement backer board 1/2 in",
    source: source("usual made boards of this kind; screws at 8 in, common practice", "typical"),
    kind: "cement board",
    material: "cement-board",
    thickness: inch / 2,
    massPerArea: 14,
    stock: [{ width: 3 * foot, length: 5 * foot }, feet(4, 8)],
    fixing: { fastener: "screw-drilling-32", edge: 8 * inch, field: 8 * inch },
    taped: true,
  },
];
