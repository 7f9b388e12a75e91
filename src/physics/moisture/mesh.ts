import { layerResistance } from "../plainLayers.ts";
import { airThicknessOf, type VapourLayer } from "./layer.ts";
import { nth } from "./nth.ts";

/** Plain layers from outside in, between two airs; surface resistances in m2K/W. */
export interface Wall {
  readonly layers: readonly VapourLayer[];
  readonly outsideResistance: number;
  readonly insideResistance: number;
}

/** A plane across the wall. `outer` and `inner` name what lies on either side; they are the same within a layer. */
export interface Plane {
  /** m from the outside surface. */
  readonly depth: number;
  readonly outer: string;
  readonly inner: string;
}

/** A stretch of neighbouring planes that vapour can pass from end to end. */
export interface Stretch {
  /** Its outer plane by its place in the list. */
  readonly from: number;
  /** Equivalent thickness of air from the stretch's outer end to each of its planes, m. */
  readonly s: readonly number[];
}

/** The wall cut at its planes: the outside surface first, the inside surface last. */
export interface Mesh {
  readonly planes: readonly Plane[];
  /** Share of the way of heat from the outside air to each plane, 0 to 1. */
  readonly shares: readonly number[];
  readonly stretches: readonly Stretch[];
}

/** Layers that resist heat more than this are cut into equal slices, so that a plane within them can condense. From memory of ISO 13788. */
const GREATEST_SLICE = 0.25;
/** Slices of a layer at most: of a resistance that no wall has. */
const MOST_SLICES = 400;

/**
 * Cuts a wall into planes. Throws RangeError where there is no layer, where a surface resistance is not above zero, where a
 * layer's thickness, conductivity or vapour resistance makes no sense, or where one layer would take more than 400 slices.
 */
export function meshOf({ layers, outsideResistance, insideResistance }: Wall): Mesh {
  if (layers.length === 0) throw new RangeError("layers: a wall needs one at least");
  for (const [name, value] of Object.entries({ outsideResistance, insideResistance })) {
    if (!(value > 0 && Number.isFinite(value))) throw new RangeError(`${name} is ${value} m2K/W and has to be above zero`);
  }
  const slices = layers.flatMap(slicesOf);
  const total = outsideResistance + slices.reduce((sum, { resistance }) => sum + resistance, 0) + insideResistance;
  const planes: Plane[] = [];
  const shares: number[] = [];
  let [depth, resistance] = [0, outsideResistance];
  for (let k = 0; k <= slices.length; k += 1) {
    planes.push({ depth, outer: slices[k - 1]?.what ?? "outside air", inner: slices[k]?.what ?? "room" });
    shares.push(resistance / total);
    const slice = slices[k];
    if (slice !== undefined) [depth, resistance] = [depth + slice.thickness, resistance + slice.resistance];
  }
  return { planes, shares, stretches: stretchesOf(slices) };
}

interface Slice {
  readonly what: string;
  readonly thickness: number;
  readonly resistance: number;
  readonly airThickness: number | undefined;
}

function slicesOf(layer: VapourLayer): readonly Slice[] {
  const { what, thickness, conductivity } = layer;
  if (!Number.isFinite(thickness)) throw new RangeError(`thickness of ${what} is ${thickness} m and has to be finite`);
  const resistance = layerResistance.compute({ d: thickness, lambda: conductivity });
  const airThickness = airThicknessOf(layer);
  // Within a vapour-tight layer nothing can condense.
  const count = airThickness === undefined ? 1 : Math.max(1, Math.ceil(resistance / GREATEST_SLICE - 1e-9));
  if (count > MOST_SLICES) throw new RangeError(`resistance of ${what} is ${resistance} m2K/W, more than any wall's`);
  const slice = {
    what,
    thickness: thickness / count,
    resistance: resistance / count,
    airThickness: airThickness === undefined ? undefined : airThickness / count,
  };
  return Array.from({ length: count }, () => slice);
}

function stretchesOf(slices: readonly Slice[]): readonly Stretch[] {
  const stretches: { from: number; s: number[] }[] = [];
  let s: number[] | undefined;
  for (const [k, { airThickness }] of slices.entries()) {
    if (airThickness === undefined) s = undefined;
    else if (s === undefined) stretches.push({ from: k, s: (s = [0, airThickness]) });
    else s.push(nth(s, s.length - 1) + airThickness);
  }
  return stretches;
}
