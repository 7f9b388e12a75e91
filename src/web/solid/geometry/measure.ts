/** Area of all triangles together, square metres. */
export function areaOf(triangles: Float64Array): number {
  let area = 0;
  for (let at = 0; at < triangles.length; at += 9) area += Math.hypot(...crossAt(triangles, at)) / 2;
  return area;
}

/** Volume within closed triangles, cubic metres: above zero where they face outward. */
export function volumeOf(triangles: Float64Array): number {
  let volume = 0;
  for (let at = 0; at < triangles.length; at += 9) {
    const [x, y, z] = crossAt(triangles, at);
    volume += (x * n(triangles, at) + y * n(triangles, at + 1) + z * n(triangles, at + 2)) / 6;
  }
  return volume;
}

/** Twice the area of the triangle that starts at `at`, as a vector along its outward normal. */
export function crossAt(p: Float64Array, at: number): readonly [number, number, number] {
  const ax = n(p, at + 3) - n(p, at);
  const ay = n(p, at + 4) - n(p, at + 1);
  const az = n(p, at + 5) - n(p, at + 2);
  const bx = n(p, at + 6) - n(p, at);
  const by = n(p, at + 7) - n(p, at + 1);
  const bz = n(p, at + 8) - n(p, at + 2);
  return [ay * bz - az * by, az * bx - ax * bz, ax * by - ay * bx];
}

/** Least and greatest coordinates. */
export interface Bounds {
  readonly from: readonly [number, number, number];
  readonly to: readonly [number, number, number];
}

export function boundsOf(points: Float64Array): Bounds {
  const from: [number, number, number] = [Infinity, Infinity, Infinity];
  const to: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  for (let at = 0; at < points.length; at += 3) {
    for (const axis of AXES) {
      from[axis] = Math.min(from[axis], n(points, at + axis));
      to[axis] = Math.max(to[axis], n(points, at + axis));
    }
  }
  return { from, to };
}

/** The smallest bounds around all of these. */
export function boundsAround(all: readonly Bounds[]): Bounds {
  return boundsOf(Float64Array.from(all.flatMap(({ from, to }) => [...from, ...to])));
}

export const AXES = [0, 1, 2] as const;

/** A number of an array that is known to be there. */
export function n(array: Float64Array | readonly number[], at: number): number {
  return array[at] as number;
}
