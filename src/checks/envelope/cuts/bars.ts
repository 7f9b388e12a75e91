import type { PlacedOpening } from "../../../build/build.ts";
import type { Part } from "../../../build/part.ts";
import type { Surface } from "../../../build/surface.ts";
import { catalogue } from "../../../catalogue/catalogue.ts";
import { MILL_DENSITY } from "../../../catalogue/steel.ts";
import type { SectionShape } from "../../../catalogue/rows.ts";
import type { Vec2 } from "../../../geometry/vector.ts";

/** A bar cut across: thin walls along the outside of its section, in (t, w), and the hollow that they close in, if any. */
export interface BarWalls {
  readonly lines: readonly (readonly Vec2[])[];
  readonly thickness: number;
  readonly conductivity: number;
  readonly hollow: boolean;
}

/** The walls of a bar; undefined for a bar that is left out of sections. */
export function wallsOf(part: Part, surface: Surface, opening: PlacedOpening | undefined): BarWalls | undefined {
  const { material } = part;
  if (part.shape.kind !== "bar" || material === undefined || part.role === "trim" || part.temporary) return undefined;
  const { conductivity } = catalogue.materials.get(material);
  const box = boxOf(part);
  if (part.row === undefined) return { ...boxMember(part, box), conductivity };
  const { shape, thickness, lip } = catalogue.sections.get(part.row.id);
  const lines = OUTLINES[shape](box, lowSide(part, surface, opening), lip);
  return { lines, thickness, conductivity, hollow: shape === "hollow" };
}

/** The outside of a section: across (t) and through the depth (w). */
interface Box {
  readonly t0: number;
  readonly t1: number;
  readonly w0: number;
  readonly w1: number;
}

function boxOf({ rect, depth, shape }: Part): Box {
  const [t0, t1] = shape.kind === "bar" && shape.runs === "v" ? [rect.u0, rect.u1] : [rect.v0, rect.v1];
  return { t0, t1, w0: depth.from, w1: depth.to };
}

/**
 * Posts and rails of the box are known by outside size and mass alone: a closed hollow whose wall gives that mass.
 * Cross-members are channels with one wall thickness.
 */
function boxMember(part: Part, box: Box): Pick<BarWalls, "lines" | "thickness" | "hollow"> {
  const { massBasis } = part;
  if (massBasis.by !== "length") throw new RangeError(`${part.id}: a bar of the box needs its mass by length`);
  const area = massBasis.massPerLength / MILL_DENSITY;
  const [width, depth] = [box.t1 - box.t0, box.w1 - box.w0];
  if (part.role === "cross-member") {
    return { lines: channel(box, true), thickness: wallFrom(depth + 2 * width, 2, area, part.id), hollow: false };
  }
  return { lines: ring(box), thickness: wallFrom(2 * (depth + width), 4, area, part.id), hollow: true };
}

/** Wall t from area = round * t - folds * t2, the smaller root. Throws RangeError where no wall gives the area. */
function wallFrom(round: number, folds: number, area: number, id: string): number {
  const inside = round ** 2 - 4 * folds * area;
  if (!(area > 0) || inside < 0) throw new RangeError(`${id}: no wall gives ${area} m2 in its outside size`);
  return (round - Math.sqrt(inside)) / (2 * folds);
}

/** Outlines by shape; `low` says that web or corner lies on the side of the lower t. */
const OUTLINES: Readonly<Record<SectionShape, (box: Box, low: boolean, lip: number | undefined) => readonly (readonly Vec2[])[]>> = {
  stud: channel,
  track: channel,
  channel,
  hollow: ring,
  angle: ({ t0, t1, w0, w1 }, low) => {
    const [corner, tip] = low ? [t0, t1] : [t1, t0];
    return [[{ x: tip, y: w0 }, { x: corner, y: w0 }, { x: corner, y: w1 }]];
  },
  hat: ({ t0, t1, w0, w1 }) => [[{ x: t0, y: w0 }, { x: t0, y: w1 }, { x: t1, y: w1 }, { x: t1, y: w0 }]],
  flat: ({ t0, t1, w0 }) => [[{ x: t0, y: w0 }, { x: t1, y: w0 }]],
};

function channel({ t0, t1, w0, w1 }: Box, low: boolean, lip?: number): readonly (readonly Vec2[])[] {
  const [web, tip] = low ? [t0, t1] : [t1, t0];
  const folded = [{ x: tip, y: w0 }, { x: web, y: w0 }, { x: web, y: w1 }, { x: tip, y: w1 }];
  return [lip === undefined ? folded : [{ x: tip, y: w0 + lip }, ...folded, { x: tip, y: w1 - lip }]];
}

function ring({ t0, t1, w0, w1 }: Box): readonly (readonly Vec2[])[] {
  return [[{ x: t0, y: w0 }, { x: t1, y: w0 }, { x: t1, y: w1 }, { x: t0, y: w1 }, { x: t0, y: w0 }]];
}

/**
 * On which side web or corner stands: studs open toward the doors and the right wall; tracks stand with the web on what
 * they are fixed to, headers and sills toward their opening, angles in their corner, frame angles at the clear opening.
 */
function lowSide(part: Part, surface: Surface, opening: PlacedOpening | undefined): boolean {
  const { t0, t1 } = boxOf(part);
  const alongU = part.shape.kind === "bar" && part.shape.runs === "v";
  const middle = (t0 + t1) / 2;
  const of = part.role === "opening frame" && opening !== undefined ? opening.clear : surface.inside;
  const centre = alongU ? (of.u0 + of.u1) / 2 : (of.v0 + of.v1) / 2;
  const { role } = part;
  if (role === "header" || role === "blocking") return true;
  if (role === "sill") return false;
  if (role === "opening frame") return middle > centre;
  if (role === "track" || role === "corner angle") return middle < centre;
  return alongU ? surface.along.x + surface.along.y > 0 : true;
}
