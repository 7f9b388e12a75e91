// Times the solver of plane sections in a warm process, beside textbook ones on the same equations.
import { solveSection } from "../src/physics/conduction.ts";
import { dissect } from "../src/physics/conduction/dissection.ts";
import { studBay } from "../src/physics/conduction/exampleSections.ts";
import { factorise, solveFactored } from "../src/physics/conduction/factor.ts";
import { firstLines, halved } from "../src/physics/conduction/lines.ts";
import { matrixOf } from "../src/physics/conduction/matrix.ts";
import { assembleNetwork } from "../src/physics/conduction/network.ts";
import { layOut } from "../src/physics/conduction/pattern.ts";
import { solveMesh } from "../src/physics/conduction/solveMesh.ts";
import type { SymmetricMatrix } from "../src/physics/conduction/symmetricMatrix.ts";
import { bandsOf, solveBands } from "./bands.ts";

const SECTIONS = 40;
/** The first mesh and the one with halved cells. */
const TWO_MESHES = { coupling: 1e9, share: 1e9, mostUnknowns: 100_000 };

/** Lines of text; `median` runs a piece of work many times and gives the middle of its times, ms. */
export function conductionTimes(median: (run: () => unknown) => number): readonly string[] {
  const bays = Array.from({ length: SECTIONS }, (_, at) => studBay({ phase: (0.278 * at) / SECTIONS }));
  const all = median(() => bays.map((bay) => solveSection(bay, TWO_MESHES)));
  return [...onMesh(2, median), "", ...onMesh(3, median), "", line(`${SECTIONS} bays, two meshes each`, all)];
}

/** The solvers on one mesh of a stud bay: the first mesh is 1, and each after it has halved cells. */
function onMesh(mesh: number, median: (run: () => unknown) => number): readonly string[] {
  const section = studBay({ phase: 0.1 });
  const pattern = layOut(section);
  if (!pattern.ok) throw new Error(pattern.reason);
  let lines = firstLines(pattern);
  for (let at = 1; at < mesh; at += 1) lines = { x: halved(lines.x), y: halved(lines.y) };
  const network = assembleNetwork(section, pattern, lines);
  const { unknowns } = solveMesh(network);
  const { order, ends } = dissect(network.columns, network.rows, network.active);
  const dissected = matrixOf(network, order);
  const inRows = matrixOf(network, Int32Array.from([...network.active.keys()].filter((k) => network.active[k] === 1)));
  const bands = bandsOf(inRows);

  const whole = median(() => solveMesh(assembleNetwork(section, pattern, lines)));
  const direct = median(() => solveFactored(factorise(dissected, ends), ones(dissected)));
  const banded = median(() => solveBands(bands, ones(inRows)));
  const gradients = median(() => conjugateGradients(inRows, ones(inRows)));
  return [
    `conduction, a stud bay of ${unknowns} unknowns`,
    line("assembled and solved", whole, `${((1000 * whole) / unknowns).toFixed(2)} us for each unknown`),
    line("one right-hand side", direct),
    line("textbook: in bands", banded, `${(banded / direct).toFixed(1)} times as long`),
    line("textbook: gradients", gradients, `${(gradients / direct).toFixed(1)} times as long`),
  ];
}

function line(what: string, ms: number, more = ""): string {
  return `${what.padEnd(28)}${ms.toFixed(2).padStart(9)} ms ${more}`.trimEnd();
}

function ones({ diagonal }: SymmetricMatrix): Float64Array {
  return new Float64Array(diagonal.length).fill(1);
}

/** Conjugate gradients with the symmetric Gauss-Seidel preconditioner, to a residual of 1e-10. */
function conjugateGradients(matrix: SymmetricMatrix, right: Float64Array): Float64Array {
  const size = right.length;
  const x = new Float64Array(size);
  const r = right.slice();
  let z = gaussSeidel(matrix, r);
  const p = z.slice();
  const limit = 1e-20 * dot(r, r);
  let rz = dot(r, z);
  while (dot(r, r) > limit) {
    const q = times(matrix, p);
    const step = rz / dot(p, q);
    for (let k = 0; k < size; k += 1) {
      x[k] = (x[k] as number) + step * (p[k] as number);
      r[k] = (r[k] as number) - step * (q[k] as number);
    }
    z = gaussSeidel(matrix, r);
    const next = dot(r, z);
    for (let k = 0; k < size; k += 1) p[k] = (z[k] as number) + (next / rz) * (p[k] as number);
    rz = next;
  }
  return x;
}

function times({ diagonal, start, row, value }: SymmetricMatrix, p: Float64Array): Float64Array {
  const q = new Float64Array(p.length);
  for (let k = 0; k < p.length; k += 1) {
    let sum = (q[k] as number) + (diagonal[k] as number) * (p[k] as number);
    for (let at = start[k] as number; at < (start[k + 1] as number); at += 1) {
      const r = row[at] as number;
      sum += (value[at] as number) * (p[r] as number);
      q[r] = (q[r] as number) + (value[at] as number) * (p[k] as number);
    }
    q[k] = sum;
  }
  return q;
}

function gaussSeidel({ diagonal, start, row, value }: SymmetricMatrix, r: Float64Array): Float64Array {
  const z = r.slice();
  for (let k = 0; k < z.length; k += 1) {
    const known = (z[k] as number) / (diagonal[k] as number);
    z[k] = known;
    for (let at = start[k] as number; at < (start[k + 1] as number); at += 1) {
      const below = row[at] as number;
      z[below] = (z[below] as number) - (value[at] as number) * known;
    }
  }
  for (let k = 0; k < z.length; k += 1) z[k] = (z[k] as number) * (diagonal[k] as number);
  for (let k = z.length - 1; k >= 0; k -= 1) {
    let sum = z[k] as number;
    for (let at = start[k] as number; at < (start[k + 1] as number); at += 1) sum -= (value[at] as number) * (z[row[at] as number] as number);
    z[k] = sum / (diagonal[k] as number);
  }
  return z;
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < a.length; k += 1) sum += (a[k] as number) * (b[k] as number);
  return sum;
}
