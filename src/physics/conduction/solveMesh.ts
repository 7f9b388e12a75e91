import { dissect } from "./dissection.ts";
import { factorise, solveFactored } from "./factor.ts";
import { matrixOf } from "./matrix.ts";
import type { Film, Network } from "./network.ts";

/** Shares and couplings on one mesh; environments in the order of the network's films. */
export interface MeshSolution {
  readonly unknowns: number;
  /** For each environment the temperature of every node where that environment has 1 K and the others 0; 0 where inactive. */
  readonly shares: readonly Float64Array[];
  /** couplings[e][f]: heat that reaches f where e has 1 K and the others 0; at e itself the heat that leaves it, W/(m K). */
  readonly couplings: readonly (readonly number[])[];
  /** Heat that is lost or gained on the way, relative to the sizes of all flows; the greatest of all environments. */
  readonly imbalance: number;
}

/** Solves a network of which every part touches an air: one factor, one right-hand side for each environment. */
export function solveMesh(network: Network): MeshSolution {
  const { order, ends } = dissect(network.columns, network.rows, network.active);
  const factor = factorise(matrixOf(network, order), ends);
  const isBalanced = (share: Float64Array, environment: number): boolean => imbalanceOf(flowsFrom(network, environment, share), environment) <= LOST_BY_ROUNDING;
  const right = new Float64Array(order.length);
  const shareOf = (environment: number): Float64Array => {
    const share = new Float64Array(network.active.length);
    const addSolution = (heat: Float64Array): void => {
      for (let at = 0; at < right.length; at += 1) right[at] = heat[order[at] as number] as number;
      solveFactored(factor, right);
      for (let at = 0; at < right.length; at += 1) {
        const k = order[at] as number;
        share[k] = (share[k] as number) + (right[at] as number);
      }
    };
    addSolution((network.films[environment] as Film).conductance);
    // Once more where rounding lost heat, as beside films a billion times as conductive as what they touch.
    if (!isBalanced(share, environment)) addSolution(heatLeft(network, environment, share));
    return share;
  };
  const last = network.films.length - 1;
  const others = network.films.slice(0, last).map((_, environment) => shareOf(environment));
  // All shares add up to one; where too few digits are left for the last environment, it is solved like the others.
  const rest = restOf(others, order, network.active.length);
  const shares = [...others, isBalanced(rest, last) ? rest : shareOf(last)];
  const couplings = shares.map((share, from) => flowsFrom(network, from, share));
  return { unknowns: order.length, shares, couplings, imbalance: Math.max(...couplings.map(imbalanceOf)) };
}

/** Part of the heat flow that may be lost before the solution is corrected. */
const LOST_BY_ROUNDING = 1e-11;

/** What shares leave of one. */
function restOf(shares: readonly Float64Array[], order: Int32Array, nodes: number): Float64Array {
  const rest = new Float64Array(nodes);
  for (const k of order) rest[k] = 1;
  for (const share of shares) for (const k of order) rest[k] = (rest[k] as number) - (share[k] as number);
  return rest;
}

/** Heat that reaches each environment where one has 1 K and the others 0; at that one itself the heat that leaves it, W/(m K). */
function flowsFrom({ films }: Network, environment: number, share: Float64Array): readonly number[] {
  return films.map(({ conductance }, to) => {
    let flow = 0;
    for (let k = 0; k < conductance.length; k += 1) {
      const film = conductance[k] as number;
      if (film > 0) flow += film * (to === environment ? 1 - (share[k] as number) : (share[k] as number));
    }
    return flow;
  });
}

/** Heat that stays in each node at these shares of one environment, W/(m K): 0 everywhere once they are the solution. */
function heatLeft({ columns, right, up, upRight, upLeft, films }: Network, environment: number, share: Float64Array): Float64Array {
  const left = new Float64Array(share.length);
  const pass = (conductance: number, a: number, b: number): void => {
    const flow = conductance * ((share[a] as number) - (share[b] as number));
    left[a] = (left[a] as number) - flow;
    left[b] = (left[b] as number) + flow;
  };
  films.forEach(({ conductance }, film) => {
    const outside = film === environment ? 1 : 0;
    for (let k = 0; k < left.length; k += 1) left[k] = (left[k] as number) + (conductance[k] as number) * (outside - (share[k] as number));
  });
  for (let k = 0; k < left.length; k += 1) {
    if ((right[k] as number) > 0) pass(right[k] as number, k, k + 1);
    if ((up[k] as number) > 0) pass(up[k] as number, k, k + columns);
    if ((upRight[k] as number) > 0) pass(upRight[k] as number, k, k + columns + 1);
    if ((upLeft[k] as number) > 0) pass(upLeft[k] as number, k + 1, k + columns);
  }
  return left;
}

/** Heat lost or gained between the environment that it leaves and those that it reaches, relative to both. */
function imbalanceOf(flows: readonly number[], from: number): number {
  const out = flows[from] as number;
  const arrived = flows.reduce((sum, flow, to) => (to === from ? sum : sum + flow), 0);
  return out + arrived > 0 ? Math.abs(out - arrived) / (out + arrived) : 0;
}
