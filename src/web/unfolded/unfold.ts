import type { Rect, Surface, SurfaceId, Vec2, Vec3 } from "../../river/screen.ts";

/**
 * Where a face lies on the sheet. The sheet is measured in metres, x to the right and y down, as a screen is. A face is
 * only turned and moved onto it, never scaled and never mirrored against what one sees from inside.
 */
export interface Placement {
  readonly key: string;
  readonly surface: Surface;
  /** Seen from the room on this side; only partitions have two. */
  readonly side: "inside" | "door side" | "blind side";
  /** Unit steps of u and v on the sheet, and the point of u = v = 0. */
  readonly u: Vec2;
  readonly v: Vec2;
  readonly origin: Vec2;
}

/** Free paper between two faces, for rails, labels and dimensions, metres. */
export const GAP = 0.7;

/** The six faces folded out around the floor: left wall below, right wall above and the roof beyond it, ends to the sides. */
export function unfold(surfaces: readonly Surface[]): readonly Placement[] {
  const floor = surfaces.find(({ id }) => id === "floor");
  if (floor === undefined) return [];
  const middle = placed(floor, FOLDS.floor, { x: 0, y: 0 });
  const at = new Map<SurfaceId, Placement>([["floor", middle]]);
  for (const { id, fold, beyond, toward } of FOLDED) {
    const surface = surfaces.find((one) => one.id === id);
    const neighbour = at.get(beyond);
    if (surface === undefined || neighbour === undefined) continue;
    at.set(id, beside(placed(surface, fold, { x: 0, y: 0 }), neighbour, toward));
  }
  return [...at.values()];
}

/** Both sides of a partition in the free corners of the sheet, beside the left wall and in line with the ends: blind side under the blind end. */
export function partitionPlacements(faces: readonly Placement[], partition: Surface): readonly Placement[] {
  const find = (id: SurfaceId): Placement | undefined => faces.find(({ surface }) => surface.id === id);
  const [wall, blind, door] = [find("left"), find("blindEnd"), find("doorEnd")];
  if (wall === undefined || blind === undefined || door === undefined) return [];
  return (["blind side", "door side"] as const).map((side) => {
    const first = placed(partition, side === "door side" ? FOLDS.doorSide : FOLDS.blindSide, { x: 0, y: 0 }, side);
    const now = outline(first);
    const x = side === "door side" ? outline(door).x1 - now.x1 : outline(blind).x0 - now.x0;
    return { ...first, origin: { x: first.origin.x + x, y: first.origin.y + outline(wall).y0 - now.y0 } };
  });
}

/** A point of a face on the sheet. */
export function toSheet({ u, v, origin }: Placement, at: { readonly u: number; readonly v: number }): Vec2 {
  return { x: origin.x + u.x * at.u + v.x * at.v, y: origin.y + u.y * at.u + v.y * at.v };
}

/** A point of the sheet on a face; the steps are square and of unit length, so that turning back is a projection. */
export function fromSheet({ u, v, origin }: Placement, at: Vec2): { readonly u: number; readonly v: number } {
  return stepOnFace({ u, v }, { x: at.x - origin.x, y: at.y - origin.y });
}

/** A distance on the sheet as a distance on a face. */
export function stepOnFace({ u, v }: Pick<Placement, "u" | "v">, by: Vec2): { readonly u: number; readonly v: number } {
  return { u: by.x * u.x + by.y * u.y, v: by.x * v.x + by.y * v.y };
}

/** A rectangle on the sheet, x0 < x1, y0 < y1. */
export interface SheetRect {
  readonly x0: number;
  readonly x1: number;
  readonly y0: number;
  readonly y1: number;
}

export function rectOnSheet(placement: Placement, rect: Rect): SheetRect {
  const a = toSheet(placement, { u: rect.u0, v: rect.v0 });
  const b = toSheet(placement, { u: rect.u1, v: rect.v1 });
  return { x0: Math.min(a.x, b.x), x1: Math.max(a.x, b.x), y0: Math.min(a.y, b.y), y1: Math.max(a.y, b.y) };
}

/** The whole of a face on the sheet, rails and posts included. */
export function outline(placement: Placement): SheetRect {
  return rectOnSheet(placement, placement.surface.outside);
}

/** The smallest rectangle around all placements. Throws RangeError for none. */
export function sheetBounds(placements: readonly Placement[]): SheetRect {
  if (placements.length === 0) throw new RangeError("no face to go around");
  const all = placements.map(outline);
  return {
    x0: Math.min(...all.map(({ x0 }) => x0)),
    x1: Math.max(...all.map(({ x1 }) => x1)),
    y0: Math.min(...all.map(({ y0 }) => y0)),
    y1: Math.max(...all.map(({ y1 }) => y1)),
  };
}

/** The six numbers of an SVG matrix that draws a face's u and v on the sheet. */
export function matrixText({ u, v, origin }: Placement): string {
  return `matrix(${u.x} ${u.y} ${v.x} ${v.y} ${origin.x} ${origin.y})`;
}

/** Which way the world's axes run on the sheet. The axis that a face is square to has no way. */
interface Fold {
  readonly x: Vec2;
  readonly y: Vec2;
  readonly z: Vec2;
}

const NONE: Vec2 = { x: 0, y: 0 };
const RIGHT: Vec2 = { x: 1, y: 0 };
const LEFT: Vec2 = { x: -1, y: 0 };
const UP: Vec2 = { x: 0, y: -1 };
const DOWN: Vec2 = { x: 0, y: 1 };

/** The blind end lies to the left, so that along runs to the right on the floor and across runs up the sheet. */
const FOLDS = {
  floor: { x: RIGHT, y: UP, z: NONE },
  left: { x: RIGHT, y: NONE, z: DOWN },
  right: { x: RIGHT, y: NONE, z: UP },
  blindEnd: { x: NONE, y: UP, z: LEFT },
  doorEnd: { x: NONE, y: UP, z: RIGHT },
  roof: { x: RIGHT, y: DOWN, z: NONE },
  doorSide: { x: NONE, y: RIGHT, z: UP },
  blindSide: { x: NONE, y: LEFT, z: UP },
} as const satisfies Readonly<Record<string, Fold>>;

interface Folded {
  readonly id: SurfaceId;
  readonly fold: Fold;
  readonly beyond: SurfaceId;
  readonly toward: Vec2;
}

/** In the order in which one goes around them. */
const FOLDED: readonly Folded[] = [
  { id: "left", fold: FOLDS.left, beyond: "floor", toward: DOWN },
  { id: "blindEnd", fold: FOLDS.blindEnd, beyond: "floor", toward: LEFT },
  { id: "right", fold: FOLDS.right, beyond: "floor", toward: UP },
  { id: "doorEnd", fold: FOLDS.doorEnd, beyond: "floor", toward: RIGHT },
  { id: "roof", fold: FOLDS.roof, beyond: "right", toward: UP },
];

function placed(surface: Surface, fold: Fold, shift: Vec2, side: Placement["side"] = "inside"): Placement {
  const start = onSheet(fold, surface.origin);
  return {
    key: side === "inside" ? surface.id : `${surface.id} ${side}`,
    surface,
    side,
    u: onSheet(fold, surface.along),
    v: onSheet(fold, surface.up),
    origin: { x: start.x + shift.x, y: start.y + shift.y },
  };
}

function onSheet({ x, y, z }: Fold, at: Vec3): Vec2 {
  return { x: plain(at.x * x.x + at.y * y.x + at.z * z.x), y: plain(at.x * x.y + at.y * y.y + at.z * z.y) };
}

/** No minus zero, which text would show. */
function plain(n: number): number {
  return n === 0 ? 0 : n;
}

/** The face moved away from its neighbour until a gap is between their outlines; along the fold line it stays in line. */
function beside(face: Placement, neighbour: Placement, toward: Vec2): Placement {
  const a = outline(neighbour);
  const b = outline(face);
  const x = toward.x === 0 ? 0 : toward.x > 0 ? a.x1 + GAP - b.x0 : a.x0 - GAP - b.x1;
  const y = toward.y === 0 ? 0 : toward.y > 0 ? a.y1 + GAP - b.y0 : a.y0 - GAP - b.y1;
  return { ...face, origin: { x: face.origin.x + x, y: face.origin.y + y } };
}
