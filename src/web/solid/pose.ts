import type { Bounds } from "./geometry/measure.ts";
import type { Ray } from "./picking.ts";

export type Triple = readonly [number, number, number];

/** Where the eye is: around a target, at a distance, turned about the vertical from +x and tilted above the level, radians. */
export interface Pose {
  readonly target: Triple;
  readonly distance: number;
  readonly turn: number;
  readonly tilt: number;
}

/** Angle of view from top to bottom. */
export const FIELD_OF_VIEW = (35 * Math.PI) / 180;

/** Views to start from, by name. */
export const VIEWS = {
  corner: { name: "From a corner", turn: -0.62, tilt: 0.42 },
  doorEnd: { name: "Door end", turn: 0, tilt: 0 },
  blindEnd: { name: "Blind end", turn: Math.PI, tilt: 0 },
  left: { name: "Left wall", turn: -Math.PI / 2, tilt: 0 },
  right: { name: "Right wall", turn: Math.PI / 2, tilt: 0 },
  above: { name: "From above", turn: -Math.PI / 2, tilt: 1.55 },
  below: { name: "From below", turn: -Math.PI / 2, tilt: -1.2 },
} as const;
export type ViewName = keyof typeof VIEWS;

/** Looks at all of some bounds from a named side; `aspect` is the picture's width over its height. */
export function poseFrom(view: ViewName, { from, to }: Bounds, aspect: number): Pose {
  const { turn, tilt } = VIEWS[view];
  const target: Triple = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2, (from[2] + to[2]) / 2];
  const pose = { target, distance: 1, turn, tilt };
  const { right, up, back } = basis(pose);
  const half = Math.tan(FIELD_OF_VIEW / 2);
  let distance = NEAREST;
  for (const corner of cornersOf({ from, to })) {
    const off: Triple = [corner[0] - target[0], corner[1] - target[1], corner[2] - target[2]];
    const wide = Math.abs(dot(off, right)) / (half * aspect);
    const high = Math.abs(dot(off, up)) / half;
    distance = Math.max(distance, (Math.max(wide, high) + dot(off, back)) * MARGIN);
  }
  return { ...pose, distance };
}

/** Turns the eye about the target, by radians to the right and upward. */
export function orbited(pose: Pose, right: number, up: number): Pose {
  return { ...pose, turn: pose.turn + right, tilt: Math.min(Math.max(pose.tilt + up, -STEEPEST), STEEPEST) };
}

/** Moves target and eye sideways and upward in the picture, in shares of the picture's height at the target. */
export function panned(pose: Pose, right: number, up: number): Pose {
  const { right: r, up: u } = basis(pose);
  const height = 2 * pose.distance * Math.tan(FIELD_OF_VIEW / 2);
  const move = (axis: 0 | 1 | 2): number => pose.target[axis] + height * (r[axis] * right + u[axis] * up);
  return { ...pose, target: [move(0), move(1), move(2)] };
}

/** Multiplies the distance to the target: below 1 goes nearer. */
export function zoomed(pose: Pose, by: number): Pose {
  return { ...pose, distance: Math.min(Math.max(pose.distance * by, NEAREST), FARTHEST) };
}

/** Where the eye stands. */
export function eyeOf(pose: Pose): Triple {
  const { back } = basis(pose);
  return [pose.target[0] + back[0] * pose.distance, pose.target[1] + back[1] * pose.distance, pose.target[2] + back[2] * pose.distance];
}

/** The ray through a point of the picture: x from -1 left to 1 right, y from -1 at the foot to 1 at the top. */
export function rayThrough(pose: Pose, aspect: number, x: number, y: number): Ray {
  const { right, up, back } = basis(pose);
  const half = Math.tan(FIELD_OF_VIEW / 2);
  const toward = (axis: 0 | 1 | 2): number => right[axis] * x * half * aspect + up[axis] * y * half - back[axis];
  return { from: eyeOf(pose), toward: [toward(0), toward(1), toward(2)] };
}

/** Where a point is in the picture, as for rayThrough; undefined behind the eye. */
export function pictured(pose: Pose, aspect: number, point: Triple): { readonly x: number; readonly y: number } | undefined {
  const { right, up, back } = basis(pose);
  const eye = eyeOf(pose);
  const off: Triple = [point[0] - eye[0], point[1] - eye[1], point[2] - eye[2]];
  const ahead = -dot(off, back);
  if (ahead <= 0) return undefined;
  const half = Math.tan(FIELD_OF_VIEW / 2);
  return { x: dot(off, right) / (ahead * half * aspect), y: dot(off, up) / (ahead * half) };
}

/** Place along an axis through a point that lies nearest to a ray; undefined where the ray runs along the axis. */
export function placeOnAxis({ from, toward }: Ray, point: Triple, axis: 0 | 1 | 2): number | undefined {
  const off: Triple = [point[0] - from[0], point[1] - from[1], point[2] - from[2]];
  const tt = dot(toward, toward);
  const ta = toward[axis];
  const size = tt - ta * ta;
  if (size < 1e-6 * tt) return undefined;
  return point[axis] + (ta * dot(off, toward) - tt * off[axis]) / size;
}

const NEAREST = 0.2;
const FARTHEST = 120;
const MARGIN = 1.05;
/** Just short of straight up or down, where the vertical would be lost. */
const STEEPEST = 1.55;

function basis({ turn, tilt }: Pose): { readonly right: Triple; readonly up: Triple; readonly back: Triple } {
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const [ct, st] = [Math.cos(tilt), Math.sin(tilt)];
  return { right: [-s, c, 0], up: [-st * c, -st * s, ct], back: [ct * c, ct * s, st] };
}

function dot(a: Triple, b: Triple): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

function cornersOf({ from, to }: Bounds): readonly Triple[] {
  return [from[0], to[0]].flatMap((x) => [from[1], to[1]].flatMap((y) => [from[2], to[2]].map((z): Triple => [x, y, z])));
}
