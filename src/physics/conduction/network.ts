import type { MeshLines } from "./lines.ts";
import { NOTHING, type Pattern } from "./pattern.ts";
import type { Section } from "./section.ts";

/**
 * The finite elements of one mesh put together: a network of conductances between its nodes, W/(m K), one list for each
 * direction and each environment; node k = j * columns of nodes + i.
 *
 * A whole cell is a bilinear quadrilateral; a cell that a slope cuts is two linear triangles with the right angle at its
 * corners. Of the bilinear element only as much of the conductance across the diagonals is taken as leaves none along the
 * edges below zero, which holds it back on cells more stretched than the root of two; linear fields stay exact. A film of
 * air acts half on each end of an edge. So no conductance is ever below zero, and shares cannot leave the range from 0 to 1
 * on any mesh.
 */
export interface Network {
  readonly columns: number;
  readonly rows: number;
  /** From k to k + 1, k + columns, k + columns + 1. */
  readonly right: Float64Array;
  readonly up: Float64Array;
  readonly upRight: Float64Array;
  /** From k + 1 to k + columns. */
  readonly upLeft: Float64Array;
  /** To each environment, and which of its airs a node touches first, NOTHING where none. */
  readonly films: readonly Film[];
  /** 1 where a node touches solid or a sheet. */
  readonly active: Uint8Array;
  /** Mean of both halves of a cell. */
  readonly conductivity: Float64Array;
  /** By cell as `Field` has them. */
  readonly slope: Int8Array;
  readonly halves: Uint8Array;
}

export interface Film {
  readonly environment: string;
  readonly conductance: Float64Array;
  readonly air: Int32Array;
}

/** Halves of a cell that hold solid, as bits of one number. */
export const LOWER = 1;
export const UPPER = 2;

/** Puts together the network of a section on the lines of a mesh. */
export function assembleNetwork(section: Section, pattern: Pattern, lines: MeshLines): Network {
  const columns = lines.x.at.length;
  const rows = lines.y.at.length;
  const nodes = columns * rows;
  const network: Network = {
    columns,
    rows,
    right: new Float64Array(nodes),
    up: new Float64Array(nodes),
    upRight: new Float64Array(nodes),
    upLeft: new Float64Array(nodes),
    films: environmentsOf(section).map((environment) => ({
      environment,
      conductance: new Float64Array(nodes),
      air: new Int32Array(nodes).fill(NOTHING),
    })),
    active: new Uint8Array(nodes),
    conductivity: new Float64Array((columns - 1) * (rows - 1)),
    slope: new Int8Array((columns - 1) * (rows - 1)),
    halves: new Uint8Array((columns - 1) * (rows - 1)),
  };
  addSolids(section, pattern, lines, network);
  addEdges(section, pattern, lines, network);
  return network;
}

/** Environments in the order in which the airs name them. */
function environmentsOf(section: Section): readonly string[] {
  return [...new Set(section.airs.map(({ environment }) => environment))];
}

function addSolids({ regions }: Section, pattern: Pattern, lines: MeshLines, network: Network): void {
  const { x, y } = lines;
  const ofRegion = Float64Array.from(regions, ({ fill }) => (fill.kind === "solid" ? fill.conductivity : 0));
  const wide = pattern.xs.length - 1;
  pattern.lower.forEach((lowerRegion, cell) => {
    const upperRegion = pattern.upper[cell] as number;
    const lower = lowerRegion === NOTHING ? 0 : (ofRegion[lowerRegion] as number);
    const upper = upperRegion === NOTHING ? 0 : (ofRegion[upperRegion] as number);
    if (lower === 0 && upper === 0) return;
    const rises = pattern.diagonal[cell] as number;
    const I = cell % wide;
    const J = (cell - I) / wide;
    const i0 = x.breaks[I] as number;
    const i1 = x.breaks[I + 1] as number;
    const j0 = y.breaks[J] as number;
    const j1 = y.breaks[J + 1] as number;
    for (let j = j0; j < j1; j += 1) {
      // Where the slope cuts this row of cells; left of it lies the upper half of a rising one, the lower of a falling one.
      const cut = rises > 0 ? i0 + (j - j0) : i1 - 1 - (j - j0);
      for (let i = i0; i < i1; i += 1) {
        if (rises !== 0 && i === cut) addHalves(network, lines, i, j, rises, lower, upper);
        else addWhole(network, lines, i, j, rises > 0 === i < cut ? upper : lower);
      }
    }
  });
}

/** A bilinear quadrilateral. */
function addWhole({ columns, right, up, upRight, upLeft, active, conductivity, halves }: Network, { x, y }: MeshLines, i: number, j: number, lambda: number): void {
  if (lambda === 0) return;
  const k = j * columns + i;
  const ratio = ((y.at[j + 1] as number) - (y.at[j] as number)) / ((x.at[i + 1] as number) - (x.at[i] as number));
  const alongX = (lambda * ratio) / 2;
  const alongY = lambda / ratio / 2;
  const across = Math.min((alongX + alongY) / 3, alongX, alongY);
  right[k] = (right[k] as number) + alongX - across;
  right[k + columns] = (right[k + columns] as number) + alongX - across;
  up[k] = (up[k] as number) + alongY - across;
  up[k + 1] = (up[k + 1] as number) + alongY - across;
  upRight[k] = (upRight[k] as number) + across;
  upLeft[k] = (upLeft[k] as number) + across;
  const cell = j * (columns - 1) + i;
  conductivity[cell] = lambda;
  halves[cell] = LOWER | UPPER;
  active[k] = 1;
  active[k + 1] = 1;
  active[k + columns] = 1;
  active[k + columns + 1] = 1;
}

/** Two linear triangles; along its longest side such a triangle has no conductance. */
function addHalves({ columns, right, up, active, conductivity, slope, halves }: Network, { x, y }: MeshLines, i: number, j: number, rises: number, lower: number, upper: number): void {
  const k = j * columns + i;
  const ratio = ((y.at[j + 1] as number) - (y.at[j] as number)) / ((x.at[i + 1] as number) - (x.at[i] as number));
  const [left, atRight] = rises > 0 ? [upper, lower] : [lower, upper];
  right[k] = (right[k] as number) + (lower * ratio) / 2;
  right[k + columns] = (right[k + columns] as number) + (upper * ratio) / 2;
  up[k] = (up[k] as number) + left / ratio / 2;
  up[k + 1] = (up[k + 1] as number) + atRight / ratio / 2;
  const cell = j * (columns - 1) + i;
  conductivity[cell] = (lower + upper) / 2;
  slope[cell] = rises;
  halves[cell] = (lower > 0 ? LOWER : 0) | (upper > 0 ? UPPER : 0);
  if (left > 0 || lower > 0) active[k] = 1;
  if (lower > 0 || atRight > 0) active[k + 1] = 1;
  if (left > 0 || upper > 0) active[k + columns] = 1;
  if (upper > 0 || atRight > 0) active[k + columns + 1] = 1;
}

/** Films and sheets on the edges and diagonals that the section asks for. */
function addEdges(section: Section, pattern: Pattern, { x, y }: MeshLines, network: Network): void {
  const { columns } = network;
  const wide = pattern.xs.length - 1;
  const tall = pattern.ys.length - 1;
  const touch = contacts(section, network);
  const half = (halves: Int32Array, I: number, J: number): number =>
    I < 0 || J < 0 || I >= wide || J >= tall ? NOTHING : (halves[J * wide + I] as number);
  const risesAt = (I: number, J: number): number => (I < 0 || I >= wide ? 0 : (pattern.diagonal[J * wide + I] as number));

  for (let J = 0; J <= tall; J += 1) {
    const row = (y.breaks[J] as number) * columns;
    for (let I = 0; I < wide; I += 1) {
      const sheet = pattern.sheetsAlongX[J * wide + I] as number;
      const meets = touch(half(pattern.upper, I, J - 1), half(pattern.lower, I, J), sheet);
      if (meets === undefined) continue;
      for (let i = x.breaks[I] as number; i < (x.breaks[I + 1] as number); i += 1) {
        meets(network.right, row + i, row + i, row + i + 1, (x.at[i + 1] as number) - (x.at[i] as number));
      }
    }
  }
  for (let J = 0; J < tall; J += 1) {
    for (let I = 0; I <= wide; I += 1) {
      const sheet = pattern.sheetsAlongY[J * (wide + 1) + I] as number;
      const left = half(risesAt(I - 1, J) > 0 ? pattern.lower : pattern.upper, I - 1, J);
      const right = half(risesAt(I, J) > 0 ? pattern.upper : pattern.lower, I, J);
      const meets = touch(left, right, sheet);
      if (meets === undefined) continue;
      const i = x.breaks[I] as number;
      for (let j = y.breaks[J] as number; j < (y.breaks[J + 1] as number); j += 1) {
        const k = j * columns + i;
        meets(network.up, k, k, k + columns, (y.at[j + 1] as number) - (y.at[j] as number));
      }
    }
  }
  pattern.diagonal.forEach((rises, cell) => {
    if (rises === 0) return;
    const sheet = pattern.sheetsAcross[cell] as number;
    const meets = touch(pattern.lower[cell] as number, pattern.upper[cell] as number, sheet);
    if (meets === undefined) return;
    const I = cell % wide;
    const J = (cell - I) / wide;
    const i0 = x.breaks[I] as number;
    const i1 = x.breaks[I + 1] as number;
    const j0 = y.breaks[J] as number;
    for (let step = 0; step < i1 - i0; step += 1) {
      const i = rises > 0 ? i0 + step : i1 - 1 - step;
      const j = j0 + step;
      const k = j * columns + i;
      const length = Math.hypot((x.at[i + 1] as number) - (x.at[i] as number), (y.at[j + 1] as number) - (y.at[j] as number));
      if (rises > 0) meets(network.upRight, k, k, k + columns + 1, length);
      else meets(network.upLeft, k, k + 1, k + columns, length);
    }
  });
}

type Meets = (along: Float64Array, edge: number, from: number, to: number, length: number) => void;

/** What has to be added along an edge between two regions that carries a sheet or none; undefined for nothing. */
function contacts({ regions, airs }: Section, network: Network): (a: number, b: number, sheet: number) => Meets | undefined {
  const airOf = (region: number): number => {
    const fill = region === NOTHING ? undefined : regions[region]?.fill;
    return fill?.kind === "air" ? airs.findIndex(({ id }) => id === fill.air) : NOTHING;
  };
  const isSolid = (region: number): boolean => region !== NOTHING && regions[region]?.fill.kind === "solid";
  const filmOf = airs.map(({ environment }) => network.films.findIndex((film) => film.environment === environment));

  return (a, b, sheet) => {
    const airA = sheet > 0 || isSolid(b) ? airOf(a) : NOTHING;
    const airB = sheet > 0 || isSolid(a) ? airOf(b) : NOTHING;
    const touching = [airA, airB].filter((air) => air !== NOTHING);
    if (sheet === 0 && touching.length === 0) return undefined;
    return (along, edge, from, to, length) => {
      if (sheet > 0) {
        along[edge] = (along[edge] as number) + sheet / length;
        network.active[from] = 1;
        network.active[to] = 1;
      }
      for (const air of touching) {
        const film = network.films[filmOf[air] as number] as Film;
        const half = length / (airs[air] as { readonly resistance: number }).resistance / 2;
        for (const node of [from, to]) {
          film.conductance[node] = (film.conductance[node] as number) + half;
          if (film.air[node] === NOTHING) film.air[node] = air;
        }
      }
    };
  };
}
