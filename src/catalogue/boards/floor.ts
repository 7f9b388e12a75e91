import { source } from "../../working/source.ts";
import { foot, inch } from "../imperial.ts";
import type { BoardRow } from "../rows.ts";

const made = source("usual made floor coverings; adhesive over the whole back, common practice", "typical");
const glued = { sealant: "adhesive-floor", perArea: 1 } as const;
const sixFootRoll = [{ width: 6 * foot, length: 60 * foot }] as const;
const twoMetreRoll = [{ width: 2, length: 20 }] as const;
const fourFootRoll = [{ width: 4 * foot, length: 50 * foot }] as const;

/** Floor coverings sold as rolls and glued down. */
export const floorBoards: readonly BoardRow[] = [
  {
    id: "vinyl-sheet-2",
    what: "sheet vinyl 2 mm, joints welded",
    source: made,
    kind: "floor covering",
    material: "vinyl",
    thickness: 0.002,
    massPerArea: 3.1,
    stock: [...sixFootRoll, ...twoMetreRoll],
    fixing: null,
    bond: glued,
    taped: false,
  },
  {
    id: "vinyl-sheet-3",
    what: "sheet vinyl 3 mm, heavy wear, joints welded",
    source: made,
    kind: "floor covering",
    material: "vinyl",
    thickness: 0.003,
    massPerArea: 4.7,
    stock: [...sixFootRoll, ...twoMetreRoll],
    fixing: null,
    bond: glued,
    taped: false,
  },
  {
    id: "rubber-5",
    what: "rubber floor 3/16 in, studded",
    source: made,
    kind: "floor covering",
    material: "rubber",
    thickness: (3 * inch) / 16,
    massPerArea: 6.1,
    stock: fourFootRoll,
    fixing: null,
    bond: glued,
    taped: false,
  },
];
