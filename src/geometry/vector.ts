/** A point or direction in the plane, metres. */
export interface Vec2 {
  readonly x: number;
  readonly y: number;
}

/** A point or direction in space, metres. */
export interface Vec3 {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

export function add(a: Vec3, b: Vec3): Vec3 {
  return { x: a.x + b.x, y: a.y + b.y, z: a.z + b.z };
}

export function scale(a: Vec3, by: number): Vec3 {
  return { x: a.x * by, y: a.y * by, z: a.z * by };
}
