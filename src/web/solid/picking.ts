import type { Build, Part } from "../../river/screen.ts";
import type { Selection } from "../state/selection.ts";
import { AXES, type Bounds, n } from "./geometry/measure.ts";
import { type CutPlane, isTaken } from "./geometry/section.ts";
import type { Solid } from "./solids.ts";

type Triple = readonly [number, number, number];

/** A half line in the world. */
export interface Ray {
  readonly from: Triple;
  readonly toward: Triple;
}

/** The part that a ray meets first, of what the section leaves; undefined where it meets none. */
export function pickSolid(solids: readonly Solid[], ray: Ray, plane: CutPlane | undefined): Solid | undefined {
  let nearest = Infinity;
  let found: Solid | undefined;
  for (const solid of solids) {
    if (!meetsBounds(solid.bounds, ray)) continue;
    const { triangles } = solid.form;
    for (let at = 0; at < triangles.length; at += 9) {
      const distance = meetsTriangle(triangles, at, ray);
      if (distance === undefined || distance >= nearest) continue;
      if (isTaken(plane, along(ray, distance))) continue;
      nearest = distance;
      found = solid;
    }
  }
  return found;
}

/** What picking a part selects: the opening or item that it is of, where it was put in as one; else the part. */
export function selectionFor({ id, role, of }: Part): Selection {
  if (of !== undefined && role === "item") return { kind: "item", id: of };
  if (of !== undefined && OF_OPENINGS.has(role)) return { kind: "opening", id: of };
  return { kind: "part", id };
}

const OF_OPENINGS: ReadonlySet<Part["role"]> = new Set(["article", "opening frame", "trim"] as const);

/** Whether a selection takes a part in. Findings light their parts up instead. */
export function selects(selection: Selection, part: Part, build: Build): boolean {
  const { kind, id } = selection;
  switch (kind) {
    case "part":
      return part.id === id;
    case "opening":
    case "item":
      return part.of === id;
    case "partition":
    case "face":
      return standsFor(part, id);
    case "build-up":
      return part.material !== undefined && LAYERED.has(part.role) && usesBuildUp(build, part.surface, id);
    case "finding":
      return false;
  }
}

/** Whether what a finding lights up takes a part in: by its own id, that of its opening or item, or that of its surface. */
export function lights(lit: ReadonlySet<string>, part: Part): boolean {
  return lit.has(part.id) || (part.of !== undefined && lit.has(part.of)) || (lit.has(part.surface) && standsFor(part, part.surface));
}

/** The parts that show where a surface is: its sheet, doors or bare floor; the first boards of a partition. */
function standsFor({ surface, role, layer }: Part, id: string): boolean {
  if (surface !== id) return false;
  return FACES.has(role) || (role === "board" && layer === 1 && !BOX_FACES.has(id));
}

const FACES: ReadonlySet<Part["role"]> = new Set(["skin", "cargo door", "bare floor"] as const);
const BOX_FACES: ReadonlySet<string> = new Set(["left", "right", "blindEnd", "doorEnd", "roof", "floor"]);

const LAYERED: ReadonlySet<Part["role"]> = new Set([
  "foam", "batt", "stud", "jamb stud", "cripple stud", "track", "header", "sill", "blocking", "furring", "board",
] as const);

function usesBuildUp({ job }: Build, surface: string, name: string): boolean {
  const face = Object.entries(job.faces).find(([id]) => id === surface)?.[1];
  const partition = job.partitions.find(({ id }) => id === surface);
  return face?.buildUp === name || partition?.buildUp === name || partition?.blindSide === name;
}

function along({ from, toward }: Ray, distance: number): Triple {
  return [from[0] + toward[0] * distance, from[1] + toward[1] * distance, from[2] + toward[2] * distance];
}

function meetsBounds({ from, to }: Bounds, ray: Ray): boolean {
  let near = 0;
  let far = Infinity;
  for (const axis of AXES) {
    const a = (from[axis] - ray.from[axis]) / ray.toward[axis];
    const b = (to[axis] - ray.from[axis]) / ray.toward[axis];
    if (Number.isNaN(a) || Number.isNaN(b)) continue;
    near = Math.max(near, Math.min(a, b));
    far = Math.min(far, Math.max(a, b));
  }
  return near <= far;
}

/** Distance along the ray to a triangle, in lengths of its direction; undefined where it misses. By Cramer's rule on the two edges and the ray. */
function meetsTriangle(p: Float64Array, at: number, { from, toward }: Ray): number | undefined {
  const corner = (k: number): Triple => [n(p, at + k * 3), n(p, at + k * 3 + 1), n(p, at + k * 3 + 2)];
  const a = corner(0);
  const e1 = minus(corner(1), a);
  const e2 = minus(corner(2), a);
  const across = cross(toward, e2);
  const size = dot(e1, across);
  if (Math.abs(size) < 1e-15) return undefined;
  const off = minus(from, a);
  const first = dot(off, across) / size;
  if (first < 0 || first > 1) return undefined;
  const turned = cross(off, e1);
  const second = dot(toward, turned) / size;
  if (second < 0 || first + second > 1) return undefined;
  const distance = dot(e2, turned) / size;
  return distance > 0 ? distance : undefined;
}

function minus(a: Triple, b: Triple): Triple {
  return [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
}

function dot(a: Triple, b: Triple): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

function cross(a: Triple, b: Triple): Triple {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}
