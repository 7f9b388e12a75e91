import type { Bounds } from "./geometry/measure.ts";
import type { CutPlane } from "./geometry/section.ts";
import type { Triple } from "./pose.ts";

/** How far the frame of a section stands off the build. */
const OFF = 0.18;

/** The frame that shows where the plane of a section is: four edges around the build. */
export function frameEdges(bounds: Bounds, plane: CutPlane): Float64Array {
  const corners = ([[0, 0], [1, 0], [1, 1], [0, 1]] as const).map(([first, second]) => cornerOf(bounds, plane, first, second));
  return Float64Array.from(corners.flatMap((corner, at) => [...corner, ...(corners[(at + 1) % 4] as Triple)]));
}

/** Where the frame is taken hold of: over the middle of its top, or at the corner of a level one. */
export function holdOf(bounds: Bounds, plane: CutPlane): Triple {
  const { from, to } = bounds;
  if (plane.axis === 2) return cornerOf(bounds, plane, 1, 0);
  const top = to[2] + OFF;
  return plane.axis === 0 ? [plane.at, (from[1] + to[1]) / 2, top] : [(from[0] + to[0]) / 2, plane.at, top];
}

/** A corner of the frame: 0 or 1 for the near or far end of each of the two axes across, in order. */
function cornerOf({ from, to }: Bounds, { axis, at }: CutPlane, first: 0 | 1, second: 0 | 1): Triple {
  const end = (k: 0 | 1 | 2, far: 0 | 1): number => (far === 1 ? to[k] + OFF : from[k] - OFF);
  if (axis === 0) return [at, end(1, first), end(2, second)];
  if (axis === 1) return [end(0, first), at, end(2, second)];
  return [end(0, first), end(1, second), at];
}
