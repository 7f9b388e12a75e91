import type { Vec2 } from "../../../geometry/vector.ts";
import { given, type Quantity } from "../../../working/quantity.ts";
import type { SectionSolution } from "../../../physics/conduction.ts";
import { isInOpening, OUTSIDE } from "../cuts/airs.ts";
import type { SolvedSection } from "../heat/solved.ts";

/** A point of a room's surface, with the least temperature factor of those asked for. */
export interface ColdPoint {
  readonly solved: SolvedSection;
  readonly at: Vec2;
  readonly factor: number;
}

/** A point of a surface with the air before it. */
export interface FactorPoint {
  readonly at: Vec2;
  readonly air: string;
  readonly factor: number;
}

/**
 * Weight of each environment in a room's temperature factor: 0 outside, 1 the room itself, and another room by where its
 * temperature lies between the two.
 */
export type Weights = ReadonlyMap<string, number>;

/** Weights for a room at T_i, beside rooms by what they are heated to; one that is not heated counts as the outside. */
export function weightsOf(room: string, T_e: number, T_i: number, heated: ReadonlyMap<string, number | undefined>): Weights {
  const between = [...heated].map(([environment, T]) => [environment, T === undefined || T <= T_e ? 0 : (T - T_e) / (T_i - T_e)] as const);
  return new Map([...between, [OUTSIDE, 0], [room, 1]]);
}

/** A room's surface points with their factors: plain surfaces alone, or those in openings too. Throws RangeError for an environment without a weight. */
export function pointsOf(solution: SectionSolution, room: string, weights: Weights, where: "plain" | "any"): readonly FactorPoint[] {
  const { environments } = solution;
  if (!environments.includes(room)) return [];
  const weight = environments.map((one) => {
    const known = weights.get(one);
    if (known === undefined) throw new RangeError(`environment ${one} has no weight`);
    return known;
  });
  return solution
    .surface(room)
    .filter(({ air }) => where === "any" || !isInOpening(air))
    .map(({ at, air, shares }) => ({ at, air, factor: shares.reduce((sum, share, k) => sum + share * (weight[k] as number), 0) }));
}

/** The coldest point of a room in a section; undefined where it shows none. */
export function coldestPoint(solved: SolvedSection, room: string, weights: Weights, where: "plain" | "any"): ColdPoint | undefined {
  const coldest = pointsOf(solved.solution, room, weights, where).reduce<FactorPoint | undefined>(
    (least, one) => (least === undefined || one.factor < least.factor ? one : least),
    undefined,
  );
  return coldest === undefined ? undefined : { solved, at: coldest.at, factor: coldest.factor };
}

/** The factor of a point as a quantity. */
export function factorOf({ solved, at, factor }: ColdPoint, where: string): Quantity<"1"> {
  const { quality } = solved.solution;
  return given(factor, "1", "f_Rsi", `temperature factor of the coldest surface, ${where}`, {
    kind: "solver",
    method: "steady plane conduction by linear finite elements, mesh halved until two agree",
    size: `${quality.unknowns} unknowns; the last halving changed temperature shares by up to ${quality.shareChange.toPrecision(2)}; point at ${at.x.toFixed(4)}, ${at.y.toFixed(4)} m of the section`,
    residual: quality.imbalance,
  });
}
