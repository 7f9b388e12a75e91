import type { Vec2 } from "./vector.ts";

/**
 * A trapezoidal wave seen from the side that the inner flats touch. `s` runs along the wave from the start of an outer
 * flat; the depth behind the inside plane is `depth` on outer flats and 0 on inner flats. Metres.
 */
export interface Trapezoid {
  readonly pitch: number;
  readonly innerFlat: number;
  readonly outerFlat: number;
  readonly depth: number;
}

/** Width of one slope in the plane. */
export function slopeWidth(wave: Trapezoid): number {
  return (wave.pitch - wave.innerFlat - wave.outerFlat) / 2;
}

/** Depth of the sheet behind the inside plane at `s`. */
export function depthAt(wave: Trapezoid, s: number): number {
  const slope = slopeWidth(wave);
  const at = s - Math.floor(s / wave.pitch) * wave.pitch;
  if (at <= wave.outerFlat) return wave.depth;
  if (at < wave.outerFlat + slope) return wave.depth * (1 - (at - wave.outerFlat) / slope);
  if (at <= wave.outerFlat + slope + wave.innerFlat) return 0;
  return (wave.depth * (at - wave.outerFlat - slope - wave.innerFlat)) / slope;
}

/** Area between the inside plane and the sheet from `from` to `to`, square metres for each metre of rib. */
export function troughArea(wave: Trapezoid, from: number, to: number): number {
  return areaTo(wave, to) - areaTo(wave, from);
}

/** Length of the sheet laid flat from `from` to `to`. */
export function developedLength(wave: Trapezoid, from: number, to: number): number {
  return developedTo(wave, to) - developedTo(wave, from);
}

/** The sheet's line from `from` to `to`: x along, y the depth behind the inside plane. */
export function wavePoints(wave: Trapezoid, from: number, to: number): readonly Vec2[] {
  const points: Vec2[] = [{ x: from, y: depthAt(wave, from) }];
  for (const s of breaks(wave, from, to)) points.push({ x: s, y: depthAt(wave, s) });
  points.push({ x: to, y: depthAt(wave, to) });
  return points;
}

/** Positions strictly between `from` and `to` where the sheet bends. */
function breaks(wave: Trapezoid, from: number, to: number): readonly number[] {
  const slope = slopeWidth(wave);
  const offsets = [0, wave.outerFlat, wave.outerFlat + slope, wave.outerFlat + slope + wave.innerFlat];
  const found: number[] = [];
  for (let k = Math.floor(from / wave.pitch); k * wave.pitch < to; k += 1) {
    for (const offset of offsets) {
      const s = k * wave.pitch + offset;
      if (s > from && s < to) found.push(s);
    }
  }
  return found;
}

function areaTo(wave: Trapezoid, s: number): number {
  const { pitch, innerFlat, outerFlat, depth } = wave;
  const slope = slopeWidth(wave);
  const whole = Math.floor(s / pitch);
  const at = s - whole * pitch;
  const down = Math.min(Math.max(at - outerFlat, 0), slope);
  const up = Math.max(at - outerFlat - slope - innerFlat, 0);
  const onSlopes = slope === 0 ? 0 : depth * (down - down ** 2 / (2 * slope)) + (depth * up ** 2) / (2 * slope);
  return whole * depth * (outerFlat + slope) + depth * Math.min(at, outerFlat) + onSlopes;
}

function developedTo(wave: Trapezoid, s: number): number {
  const { pitch, innerFlat, outerFlat, depth } = wave;
  const slope = slopeWidth(wave);
  const rise = Math.hypot(slope, depth);
  const whole = Math.floor(s / pitch);
  const at = s - whole * pitch;
  const onSlope = (run: number): number => (slope === 0 ? 0 : (Math.min(Math.max(run, 0), slope) * rise) / slope);
  return (
    whole * (outerFlat + innerFlat + 2 * rise) +
    Math.min(at, outerFlat) +
    onSlope(at - outerFlat) +
    Math.min(Math.max(at - outerFlat - slope, 0), innerFlat) +
    onSlope(at - outerFlat - slope - innerFlat)
  );
}
