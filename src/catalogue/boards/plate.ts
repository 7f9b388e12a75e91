import { source } from "../../working/source.ts";
import { inch, poundPerSquareFoot } from "../imperial.ts";
import { MILL_DENSITY } from "../steel.ts";
import type { BoardRow } from "../rows.ts";
import { eightToTwelve, plates } from "./stock.ts";

const stitched = { sealant: "weld-stitch", perArea: 0.8 } as const;
const floorPlate = source("AISC Steel Construction Manual, weights of raised-pattern floor plate; stitch weld 0.8 m a m2, common practice", "memory");
const smoothPlate = source("thickness times 7850 kg/m3; stitch weld 0.8 m a m2, common practice", "derived");
const aluminium = source("usual mass of made sheet; rivets at 6 in and 12 in, common practice", "typical");

/** Steel and aluminium plates and sheets. */
export const plateBoards: readonly BoardRow[] = [
  {
    id: "checker-plate-1-8",
    what: "steel checker plate 1/8 in, without the pattern's height",
    source: floorPlate,
    kind: "steel plate",
    material: "steel",
    thickness: inch / 8,
    massPerArea: 6.16 * poundPerSquareFoot,
    stock: plates,
    fixing: null,
    bond: stitched,
    taped: false,
  },
  {
    id: "checker-plate-3-16",
    what: "steel checker plate 3/16 in, without the pattern's height",
    source: floorPlate,
    kind: "steel plate",
    material: "steel",
    thickness: (3 * inch) / 16,
    massPerArea: 8.7 * poundPerSquareFoot,
    stock: plates,
    fixing: null,
    bond: stitched,
    taped: false,
  },
  {
    id: "plate-3-16",
    what: "smooth steel plate 3/16 in",
    source: smoothPlate,
    kind: "steel plate",
    material: "steel",
    thickness: (3 * inch) / 16,
    massPerArea: ((3 * inch) / 16) * MILL_DENSITY,
    stock: plates,
    fixing: null,
    bond: stitched,
    taped: false,
  },
  {
    id: "plate-14-gauge",
    what: "smooth steel sheet 14 gauge (0.0747 in)",
    source: smoothPlate,
    kind: "steel plate",
    material: "steel",
    thickness: 0.0747 * inch,
    massPerArea: 0.0747 * inch * MILL_DENSITY,
    stock: plates,
    fixing: null,
    bond: stitched,
    taped: false,
  },
  {
    id: "aluminium-sheet-2",
    what: "aluminium sheet 0.080 in (2 mm)",
    source: aluminium,
    kind: "aluminium sheet",
    material: "aluminium",
    thickness: 0.08 * inch,
    massPerArea: 5.5,
    stock: eightToTwelve,
    fixing: { fastener: "rivet-blind-4-8", edge: 6 * inch, field: 12 * inch },
    taped: false,
  },
  {
    id: "aluminium-tread-1-8",
    what: "aluminium tread plate 1/8 in, without the pattern's height",
    source: aluminium,
    kind: "aluminium sheet",
    material: "aluminium",
    thickness: inch / 8,
    massPerArea: 9.4,
    stock: plates,
    fixing: { fastener: "rivet-blind-4-8", edge: 6 * inch, field: 12 * inch },
    taped: false,
  },
];
