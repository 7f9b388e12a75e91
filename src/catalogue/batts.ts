import { source } from "../working/source.ts";
import { inch } from "./imperial.ts";
import type { BattRow } from "./rows.ts";

interface Wool {
  readonly kind: BattRow["kind"];
  readonly id: string;
  /** kg/m3. */
  readonly density: number;
  readonly length: number;
}

const rock: Wool = { kind: "rock wool", id: "batt-rock", density: 40, length: 48 * inch };
const glass: Wool = { kind: "glass wool", id: "batt-glass", density: 12, length: 96 * inch };

/** A batt of so many half inches, in both widths: as wide as the pitch, since it reaches into the open side of a folded stud. */
function batts({ kind, id, density, length }: Wool, halfInches: number, pack: number): readonly BattRow[] {
  const thickness = (halfInches / 2) * inch;
  const whole = Math.floor(halfInches / 2);
  return [16, 24].map((pitch) => ({
    id: `${id}-${whole}-1-2-${pitch}`,
    what: `${kind} batt ${whole}-1/2 in, for studs at ${pitch} in`,
    source: source("usual sizes, densities and packs of batts for steel studs", "typical"),
    kind,
    material: "mineral-wool",
    thickness,
    width: pitch * inch,
    length,
    massPerArea: density * thickness,
    pack,
  }));
}

/** Mineral wool batts for the bays between studs. The sheet of the product in hand rules, above all for its conductivity. */
export const battRows: readonly BattRow[] = [
  ...batts(rock, 3, 16),
  ...batts(rock, 5, 10),
  ...batts(rock, 7, 8),
  ...batts(glass, 3, 20),
  ...batts(glass, 5, 16),
  ...batts(glass, 7, 12),
];
