import { checkSection } from "./checkSection.ts";
import { firstLines, halved, type MeshLines } from "./lines.ts";
import { loosePart } from "./loosePart.ts";
import { assembleNetwork, type Network } from "./network.ts";
import { layOut } from "./pattern.ts";
import type { Section } from "./section.ts";
import type { Accuracy, NotSolved, SectionSolution, SurfacePoint } from "./solution.ts";
import { type MeshSolution, solveMesh } from "./solveMesh.ts";

/**
 * Steady conduction through a plane section by linear finite elements: what share each environment has in every temperature,
 * and the heat that passes between environments. The mesh is halved until two meshes agree as closely as asked.
 *
 * Not solved where the section holds nothing that conducts, where a part of it touches no air, where its slopes do not fit a
 * mesh, and where the accuracy would take more unknowns than allowed. Throws RangeError at a value outside its domain.
 */
export function solveSection(section: Section, accuracy: Accuracy): SectionSolution | NotSolved {
  checkSection(section, accuracy);
  const pattern = layOut(section);
  if (!pattern.ok) return pattern;
  const meshOn = (lines: MeshLines): Mesh => ({ lines, network: assembleNetwork(section, pattern, lines) });
  let mesh = meshOn(firstLines(pattern));
  const trouble = troubleWith(mesh);
  if (trouble !== undefined) return { ok: false, reason: trouble };
  if (unknownsOf(mesh.network) > accuracy.mostUnknowns) {
    return { ok: false, reason: `the first mesh has ${unknownsOf(mesh.network)} unknowns, more than the ${accuracy.mostUnknowns} allowed` };
  }
  let solved = solveMesh(mesh.network);
  let change: Change | undefined;
  for (let refinements = 1; ; refinements += 1) {
    const finer = meshOn({ x: halved(mesh.lines.x), y: halved(mesh.lines.y) });
    const unknowns = unknownsOf(finer.network);
    if (unknowns > accuracy.mostUnknowns) return { ok: false, reason: tooMany(unknowns, accuracy, change) };
    const finerSolved = solveMesh(finer.network);
    change = changeBetween(mesh, solved, finerSolved);
    mesh = finer;
    solved = finerSolved;
    if (change.coupling <= accuracy.coupling && change.share <= accuracy.share) {
      return solutionOf(section, mesh, solved, change, refinements);
    }
  }
}

interface Mesh {
  readonly lines: MeshLines;
  readonly network: Network;
}

interface Change {
  readonly coupling: number;
  readonly share: number;
}

/** Couplings below this part of the greatest one carry no heat worth comparing. */
const NO_COUPLING = 1e-9;

function unknownsOf({ active }: Network): number {
  let count = 0;
  for (let k = 0; k < active.length; k += 1) count += active[k] as number;
  return count;
}

/** Why a network cannot be solved; undefined where it can. */
function troubleWith({ lines, network }: Mesh): string | undefined {
  if (!network.active.includes(1)) return "the section holds neither solid nor sheet";
  const loose = loosePart(network);
  if (loose === undefined) return undefined;
  const i = loose % network.columns;
  const x = lines.x.at[i] as number;
  const y = lines.y.at[(loose - i) / network.columns] as number;
  return `what lies at (${x}, ${y}) m touches no air, neither itself nor through what it touches: its temperature is open`;
}

function tooMany(unknowns: number, { coupling, share, mostUnknowns }: Accuracy, change: Change | undefined): string {
  const achieved =
    change === undefined
      ? "no two meshes could be compared"
      : `the last two meshes differ by ${change.coupling} of a coupling and ${change.share} of a share on a surface`;
  return `${achieved}; asked for are ${coupling} and ${share}, and the next mesh has ${unknowns} unknowns of ${mostUnknowns} allowed`;
}

/** Greatest changes of couplings and of shares on surfaces from a mesh to the one with halved cells. */
function changeBetween({ network }: Mesh, coarse: MeshSolution, fine: MeshSolution): Change {
  const greatest = Math.max(...fine.couplings.flat());
  let coupling = 0;
  fine.couplings.forEach((flows, from) => {
    flows.forEach((flow, to) => {
      if (to === from || flow <= NO_COUPLING * greatest) return;
      coupling = Math.max(coupling, Math.abs(flow - (coarse.couplings[from]?.[to] as number)) / flow);
    });
  });
  const { columns, films } = network;
  const fineColumns = 2 * columns - 1;
  let share = 0;
  for (const { conductance } of films) {
    conductance.forEach((film, k) => {
      if (film === 0) return;
      const i = k % columns;
      const fineNode = 2 * ((k - i) / columns) * fineColumns + 2 * i;
      coarse.shares.forEach((values, environment) => {
        share = Math.max(share, Math.abs((values[k] as number) - (fine.shares[environment]?.[fineNode] as number)));
      });
    });
  }
  return { coupling, share };
}

function solutionOf(section: Section, { lines, network }: Mesh, solved: MeshSolution, change: Change, refinements: number): SectionSolution {
  const environments = network.films.map(({ environment }) => environment);
  const indexOf = (environment: string): number => {
    const index = environments.indexOf(environment);
    if (index === -1) throw new RangeError(`environment ${environment} is none of ${environments.join(", ")}`);
    return index;
  };
  return {
    ok: true,
    environments,
    coupling: (from, to) => {
      if (from === to) throw new RangeError(`coupling of ${from} with itself is asked for`);
      const a = indexOf(from);
      const b = indexOf(to);
      // Equal but for rounding; the mean makes it the same both ways to the last digit.
      return ((solved.couplings[a]?.[b] as number) + (solved.couplings[b]?.[a] as number)) / 2;
    },
    surface: (environment) => surfaceOf(section, lines, network, solved, indexOf(environment)),
    field: {
      xs: lines.x.at,
      ys: lines.y.at,
      active: network.active,
      shares: solved.shares,
      conductivity: network.conductivity,
      slope: network.slope,
      halves: network.halves,
    },
    quality: {
      unknowns: solved.unknowns,
      refinements,
      couplingChange: change.coupling,
      shareChange: change.share,
      imbalance: solved.imbalance,
    },
  };
}

function surfaceOf(
  { airs }: Section,
  lines: MeshLines,
  { columns, films }: Network,
  { shares }: MeshSolution,
  environment: number,
): readonly SurfacePoint[] {
  const points: SurfacePoint[] = [];
  films[environment]?.conductance.forEach((film, k) => {
    if (film === 0) return;
    const i = k % columns;
    points.push({
      at: { x: lines.x.at[i] as number, y: lines.y.at[(k - i) / columns] as number },
      air: (airs[films[environment]?.air[k] as number] as { readonly id: string }).id,
      shares: shares.map((values) => values[k] as number),
    });
  });
  return points;
}
