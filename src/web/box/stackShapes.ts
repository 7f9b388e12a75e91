import type { Layer, LayerStack } from "./layerStack.ts";

/** The trapezoidal sheet behind a build-up, in m. */
export interface SheetProfile {
  readonly depth: number;
  readonly pitch: number;
  readonly innerFlat: number;
  readonly outerFlat: number;
}

export interface StackShapes {
  /** The drawing's box, mm; up is inward. */
  readonly box: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
  /** The sheet as an open line. */
  readonly sheet: string;
  readonly layers: readonly { readonly layer: Layer; readonly kind: Layer["kind"]; readonly path: string }[];
}

/** Length of wall that is drawn, mm: a stud's pitch and a trough on either side; of thin layers without either, less, so that they can be told apart. */
const DRAWN = { framed: 560, flat: 140 };
const EDGE = 6;
/** A coat is far thinner than a line; it is drawn as a strip of this height. */
const COAT = 2;

/**
 * The shapes of a stack in mm, x along the wall, y outward from the inside plane, so that the inside is at the top.
 * Undefined where a depth cannot be read: a drawing that is not to scale would mislead.
 */
export function drawStack(stack: LayerStack, profile: SheetProfile | undefined): StackShapes | undefined {
  if (stack.total === undefined) return undefined;
  const isFramed = profile !== undefined || stack.layers.some(({ kind }) => kind === "studs" || kind === "furring");
  const drawn = isFramed ? DRAWN.framed : DRAWN.flat;
  const points = sheetPoints(profile, drawn);
  const coats = stack.layers.filter(({ kind }) => kind === "paint").length;
  const deepest = Math.max(stack.total, ...stack.layers.flatMap(({ to }) => to ?? []));
  const top = -mm(deepest) - coats * COAT - EDGE;
  const bottom = mm(profile?.depth ?? NO_PROFILE) + EDGE;
  return {
    box: { x: 0, y: top, width: drawn, height: bottom - top },
    sheet: `M${points.map(([x, y]) => `${x} ${y}`).join("L")}`,
    layers: stack.layers.map((layer, index) => ({ layer, kind: layer.kind, path: pathOf(layer, points, coatsBelow(stack.layers, index), drawn) })),
  };
}

/** The inside plane of the sheet. */
const PLANE = 0;

/** A partition or leaf has a flat sheet, or none, behind it. */
const NO_PROFILE = 0;

/** The inner line of the sheet over the drawn length: outer flat, slope, inner flat, slope, again and again. */
function sheetPoints(profile: SheetProfile | undefined, drawn: number): readonly (readonly [number, number])[] {
  if (profile === undefined) return [[0, 0], [drawn, 0]];
  const { depth, pitch, innerFlat, outerFlat } = profile;
  const slope = (pitch - innerFlat - outerFlat) / 2;
  const corners: readonly (readonly [number, number])[] = [
    [0, depth], [outerFlat, depth], [outerFlat + slope, 0], [outerFlat + slope + innerFlat, 0],
  ];
  const points: (readonly [number, number])[] = [];
  for (let start = 0; mm(start) < drawn; start += pitch) {
    for (const [x, y] of corners) points.push([mm(start + x), mm(y)]);
  }
  const beyond = points.findIndex(([x]) => x >= drawn);
  if (beyond === -1) return [...points, [drawn, mm(depth)]];
  const [after, before] = [points[beyond], points[beyond - 1]];
  if (after === undefined || before === undefined) return points;
  const share = (drawn - before[0]) / (after[0] - before[0]);
  return [...points.slice(0, beyond), [drawn, round(before[1] + share * (after[1] - before[1]))]];
}

function pathOf(layer: Layer, sheet: readonly (readonly [number, number])[], coats: number, drawn: number): string {
  const { kind, from = PLANE, to = PLANE } = layer;
  switch (kind) {
    case "foam":
      return `M${sheet.map(([x, y]) => `${x} ${y}`).join("L")}L${drawn} ${-mm(to)}L0 ${-mm(to)}Z`;
    case "studs":
      return studPaths(layer, from, to, drawn);
    case "batts":
    case "furring":
    case "board":
      return rectangle(0, drawn, from, to);
    case "paint":
      return `M0 ${round(-mm(from) - coats * COAT)}h${drawn}v${-COAT}H0Z`;
  }
}

/** Studs as open channels: a web and two flanges, a line thick. */
function studPaths({ pitch, barWidth }: Layer, from: number, to: number, drawn: number): string {
  const apart = pitch === undefined ? drawn : mm(pitch);
  const width = barWidth === undefined ? STUD_DRAWN : mm(barWidth);
  const paths: string[] = [];
  for (let x = FIRST_STUD; x < drawn && paths.length < MOST_STUDS; x += Math.max(apart, width)) {
    const end = round(Math.min(x + width, drawn));
    paths.push(`M${end} ${-mm(from)}H${round(x)}V${-mm(to)}H${end}v${FLANGE}H${round(x + FLANGE)}V${round(-mm(from) - FLANGE)}H${end}Z`);
  }
  return paths.join("");
}

const FIRST_STUD = 60;
/** A section whose flange is not known is drawn as wide as most. */
const STUD_DRAWN = 32;
const FLANGE = 2;
const MOST_STUDS = 40;

function rectangle(x0: number, x1: number, from: number, to: number): string {
  return `M${x0} ${-mm(from)}H${x1}V${-mm(to)}H${x0}Z`;
}

function coatsBelow(layers: readonly Layer[], index: number): number {
  return layers.slice(0, index).filter(({ kind }) => kind === "paint").length;
}

function mm(metres: number): number {
  return round(metres * 1000);
}

/** Hundredths of a millimetre are finer than any screen. */
function round(x: number): number {
  return Math.round(x * 100) / 100;
}
