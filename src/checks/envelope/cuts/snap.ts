import type { Region, Sheet } from "../../../physics/conduction.ts";
import type { Vec2 } from "../../../geometry/vector.ts";
import type { Shown } from "./layers.ts";

/** Thin walls stand on the plane of a layer that is this near, m: their own thickness and the sheet's are less. */
const NEAR = 0.0025;

/**
 * Moves thin walls, and the hollows that they close in, onto the lines of the layers beside them: a wall has no thickness in a
 * section, and two lines a millimetre apart would only refine the mesh. Layers stay where they are.
 */
export function snapped(layers: readonly Region[], bars: readonly Shown[]): readonly Shown[] {
  const xs: number[] = [];
  const ys: number[] = [];
  const note = (points: readonly Vec2[]): void => {
    for (const { x, y } of points) {
      if (!xs.includes(x)) xs.push(x);
      if (!ys.includes(y)) ys.push(y);
    }
  };
  layers.forEach(({ outline }) => note(outline.outer));
  const move = ({ x, y }: Vec2): Vec2 => ({ x: nearest(xs, x), y: nearest(ys, y) });
  return bars.map(({ regions, sheets }): Shown => {
    const moved = {
      regions: regions.map((region): Region => ({ ...region, outline: { outer: region.outline.outer.map(move), holes: [] } })),
      sheets: sheets.map((sheet): Sheet => ({ ...sheet, points: sheet.points.map(move) })),
    };
    moved.sheets.forEach(({ points }) => note(points));
    return moved;
  });
}

function nearest(lines: readonly number[], at: number): number {
  let found = at;
  let least = NEAR;
  for (const line of lines) {
    const away = Math.abs(line - at);
    if (away > least) continue;
    least = away;
    found = line;
  }
  return found;
}
