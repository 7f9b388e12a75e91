import type { Vec2 } from "../../geometry/vector.ts";

/**
 * The answer for a section. The problem is linear: the temperature at any point is the sum over the environments of
 * share x environment temperature, and the shares at a point add up to one. One solution serves every design hour.
 */
export interface SectionSolution {
  readonly ok: true;
  readonly environments: readonly string[];
  /** Heat flow between two environments for each metre of depth and kelvin, W/(m K); same both ways. */
  coupling(from: string, to: string): number;
  /** Points along the surfaces that an environment's airs touch, every mesh node once, with their shares. */
  surface(environment: string): readonly SurfacePoint[];
  /** Node values for pictures. */
  readonly field: Field;
  readonly quality: Quality;
}

/** `shares` in the order of `environments`. */
export interface SurfacePoint {
  readonly at: Vec2;
  readonly air: string;
  readonly shares: readonly number[];
}

/** Nodes of a grid of lines; `active` is 0 where a node touches neither material nor sheet and has no value. */
export interface Field {
  readonly xs: Float64Array;
  readonly ys: Float64Array;
  /** Node k = j * xs.length + i. */
  readonly active: Uint8Array;
  readonly shares: readonly Float64Array[];
  /** Cells that hold solid, index j * (xs.length - 1) + i: the conductivity, 0 where there is none; mean of both halves where a slope cuts the cell. */
  readonly conductivity: Float64Array;
  /** Cells that a slope cuts: 1 from the lower left corner, -1 from the upper left; 0 where none does. */
  readonly slope: Int8Array;
  /** Which halves of a cell hold solid: 1 the lower, 2 the upper, 3 both, or all of a cell that is not cut; 0 none. */
  readonly halves: Uint8Array;
}

export interface Quality {
  readonly unknowns: number;
  readonly refinements: number;
  /** Greatest relative change of a coupling from the mesh before, whose cells were twice as large. */
  readonly couplingChange: number;
  /** Greatest change of a share on a surface from the mesh before. */
  readonly shareChange: number;
  /** Sum of the heat flows over all environments, relative to the sum of their sizes. */
  readonly imbalance: number;
}

export interface NotSolved {
  readonly ok: false;
  readonly reason: string;
}

export interface Accuracy {
  /** Greatest relative change of couplings between the last two meshes. */
  readonly coupling: number;
  /** Greatest change of shares on surfaces between the last two meshes. */
  readonly share: number;
  /** Most unknowns that a mesh may have. */
  readonly mostUnknowns: number;
}
