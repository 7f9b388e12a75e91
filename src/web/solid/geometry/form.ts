import { toWorld } from "../../../river/shapes.ts";
import type { Surface } from "../../../river/screen.ts";

/**
 * The outside of one closed thing in the world, metres: nine numbers a triangle, counter-clockwise seen from outside, and
 * six numbers for each line. `edges` run around its sides, `bends` where a side bends.
 */
export interface Form {
  readonly triangles: Float64Array;
  readonly edges: Float64Array;
  readonly bends: Float64Array;
}

/** A point on a surface: u, v, and w inward. */
export type Corner = readonly [u: number, v: number, w: number];

export interface FormMaker {
  /** Three corners, counter-clockwise seen from outside by one for whom u, v and w are right-handed. */
  readonly triangle: (a: Corner, b: Corner, c: Corner) => void;
  /** Four corners in the same order. */
  readonly quad: (a: Corner, b: Corner, c: Corner, d: Corner) => void;
  readonly edge: (a: Corner, b: Corner) => void;
  readonly bend: (a: Corner, b: Corner) => void;
  readonly form: () => Form;
}

/** Puts corners on a surface together to a form in the world; turns triangles around where the surface is left-handed. */
export function formMaker(surface: Surface): FormMaker {
  const triangles: number[] = [];
  const edges: number[] = [];
  const bends: number[] = [];
  const turned = isLeftHanded(surface);
  const put = (into: number[], [u, v, w]: Corner): void => {
    const { x, y, z } = toWorld(surface, u, v, w);
    into.push(x, y, z);
  };
  const triangle = (a: Corner, b: Corner, c: Corner): void => {
    if (sameCorner(a, b) || sameCorner(b, c) || sameCorner(c, a)) return;
    put(triangles, a);
    put(triangles, turned ? c : b);
    put(triangles, turned ? b : c);
  };
  return {
    triangle,
    quad: (a, b, c, d) => {
      triangle(a, b, c);
      triangle(a, c, d);
    },
    edge: (a, b) => {
      put(edges, a);
      put(edges, b);
    },
    bend: (a, b) => {
      put(bends, a);
      put(bends, b);
    },
    form: () => ({ triangles: Float64Array.from(triangles), edges: Float64Array.from(edges), bends: Float64Array.from(bends) }),
  };
}

function isLeftHanded({ along: a, up: b, inward: c }: Surface): boolean {
  return (a.y * b.z - a.z * b.y) * c.x + (a.z * b.x - a.x * b.z) * c.y + (a.x * b.y - a.y * b.x) * c.z < 0;
}

function sameCorner(a: Corner, b: Corner): boolean {
  return a[0] === b[0] && a[1] === b[1] && a[2] === b[2];
}
