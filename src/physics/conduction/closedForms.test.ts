import { describe, expect, test } from "vitest";
import type { Vec2 } from "../../geometry/vector.ts";
import { solveSection } from "../conduction.ts";
import { airOf, airOver, sheet, solid } from "./exampleSections.ts";
import { firstLines, halved } from "./lines.ts";
import { assembleNetwork } from "./network.ts";
import { layOut } from "./pattern.ts";
import type { Region, Section } from "./section.ts";
import { solveMesh } from "./solveMesh.ts";

// Closed forms derived here: fins by the balance of a slice (tanh(m L), as in textbooks of heat transfer), the plate by
// separation of variables. Each stands beside its test.

describe("a sheet that sticks through into another air", () => {
  // Two fins base to base: conductance k t m tanh(m L) each, m^2 = 2 / (R k t) with air on both sides.
  const [k, t, left, right] = [50, 0.002, 0.1, 0.16];
  const fin = (R: number, length: number): number => finConductance(k * t, 2 / (R * k * t), length);
  const want = inSeries(fin(0.04, left), fin(0.13, right));
  const section: Section = {
    window: { u0: -0.2, u1: 0.2, v0: -0.1, v1: 0.1 },
    regions: [airOver("a", -0.2, -0.1, 0, 0.1), airOver("b", 0, -0.1, 0.2, 0.1)],
    sheets: [sheet("fin", k, t, [{ x: -left, y: 0 }, { x: right, y: 0 }])],
    airs: [airOf("a", 0.04), airOf("b", 0.13)],
  };

  test("passes what the closed form says", () => {
    const solution = solveSection(section, { coupling: 1e-4, share: 1e-4, mostUnknowns: 2000 });
    if (!solution.ok) throw new Error(solution.reason);
    expect(Math.abs(solution.coupling("a", "b") / want - 1)).toBeLessThan(1e-4);
  });

  test("converges with order 2", () => {
    expectOrder(section, want, 2);
  });

  test("a sheet along a slope passes the same", () => {
    const along = (s: number): Vec2 => ({ x: 0.6 * s, y: 0.8 * s });
    const tilted = {
      ...section,
      window: { u0: -0.2, u1: 0.2, v0: -0.2, v1: 0.2 },
      regions: [airOver("a", -0.2, -0.2, 0, 0.2), airOver("b", 0, -0.2, 0.2, 0.2)],
      sheets: [sheet("fin", k, t, [along(-left), along(0), along(right)])],
    };
    const solution = solveSection(tilted, { coupling: 1e-4, share: 1e-4, mostUnknowns: 4000 });
    if (!solution.ok) throw new Error(solution.reason);
    expect(Math.abs(solution.coupling("a", "b") / want - 1)).toBeLessThan(1e-4);
  });
});

describe("a hollow ring of sheet", () => {
  const [k, t, width, height] = [50, 0.003, 0.12, 0.08];
  const ring = sheet("ring", k, t, [{ x: -width / 2, y: 0 }, { x: width / 2, y: 0 }, { x: width / 2, y: height }, { x: -width / 2, y: height }, { x: -width / 2, y: 0 }]);
  const window = { u0: -0.2, u1: 0.2, v0: -0.1, v1: 0.2 };

  test("around air has that air's and the outer film in series, all along", () => {
    const solution = solveSection(
      {
        window,
        regions: [airOver("a", -0.2, -0.1, 0.2, 0.2), airOver("b", -width / 2, 0, width / 2, height)],
        sheets: [ring],
        airs: [airOf("a", 0.04), airOf("b", 0.13)],
      },
      { coupling: 1e-6, share: 1e-6, mostUnknowns: 4000 },
    );
    if (!solution.ok) throw new Error(solution.reason);
    expect(solution.coupling("a", "b") * (0.04 + 0.13)).toBeCloseTo(2 * (width + height), 9);
    expect(solution.surface("b").every(({ shares }) => Math.abs((shares[0] as number) - 0.13 / 0.17) < 1e-9)).toBe(true);
  });

  test("around nothing, half in one air and half in another: two pairs of fins with air on one side", () => {
    const half = (R: number): number => finConductance(k * t, 1 / (R * k * t), (width + height) / 2);
    const section: Section = {
      window,
      regions: [around(-0.2, "a"), around(0.2, "b")],
      sheets: [ring],
      airs: [airOf("a", 0.04), airOf("b", 0.13)],
    };
    expectOrder(section, 2 * inSeries(half(0.04), half(0.13)), 2);
  });

  /** Air from the middle to `far`, without the ring's inside. */
  function around(far: number, air: string): Region {
    const side = Math.sign(far) * (width / 2);
    const outer = [
      { x: 0, y: -0.1 },
      { x: far, y: -0.1 },
      { x: far, y: 0.2 },
      { x: 0, y: 0.2 },
      { x: 0, y: height },
      { x: side, y: height },
      { x: side, y: 0 },
      { x: 0, y: 0 },
    ];
    return { what: `air ${air}`, outline: { outer, holes: [] }, fill: { kind: "air", air } };
  }
});

describe("a thick plate between a film at its base and films on both sides", () => {
  // Half of the plate, 0 <= y <= H, symmetric about y = 0; base at x = 0 in air a (R_a), the side y = H in air b (R_b), tip
  // adiabatic. T = sum A_n cos(l_n y) cosh(l_n (L - x)) with l tan(l H) = 1 / (R_b k).
  const [k, H, L, R_a, R_b] = [0.5, 0.05, 0.12, 0.05, 0.1];
  const section: Section = {
    window: { u0: -0.02, u1: L, v0: 0, v1: H + 0.02 },
    regions: [airOver("a", -0.02, 0, 0, H), airOver("b", 0, H, L, H + 0.02), solid("plate", k, 0, 0, L, H)],
    sheets: [],
    airs: [airOf("a", R_a), airOf("b", R_b)],
  };

  test("converges with order 2", () => {
    expectOrder(section, plateCoupling(), 2);
  });

  function plateCoupling(): number {
    let flow = 0;
    for (let n = 0; n < 400; n += 1) {
      const l = rootNear(n);
      const c = (2 * Math.sin(l * H)) / (l * H + Math.sin(l * H) * Math.cos(l * H));
      // -k dT/dx = (c - T) / R_a at the base, for each term.
      const tanh = Math.tanh(l * L);
      const base = c / (1 + R_a * k * l * tanh);
      flow += k * base * tanh * Math.sin(l * H);
    }
    return flow;
  }

  /** The root of l H tan(l H) = H / (R_b k) between n pi and (n + 1/2) pi, by halving. */
  function rootNear(n: number): number {
    let low = n * Math.PI;
    let high = (n + 0.5) * Math.PI;
    for (let turn = 0; turn < 100; turn += 1) {
      const middle = (low + high) / 2;
      if (middle * Math.tan(middle) < H / (R_b * k)) low = middle;
      else high = middle;
    }
    return low / H;
  }
});

describe("a linear field is exact", () => {
  test("through one material that slopes cut", () => {
    const zigzag = [{ x: 0, y: 0.03 }, { x: 0.11, y: 0.03 }, { x: 0.17, y: 0.07 }, { x: 0.22, y: 0.07 }, { x: 0.3, y: 0.01 }, { x: 0.4, y: 0.01 }];
    const lower = { what: "below", outline: { outer: [{ x: 0, y: 0 }, { x: 0.4, y: 0 }, ...zigzag.toReversed()], holes: [] }, fill: { kind: "solid", conductivity: 0.3 } } as const;
    const section: Section = {
      window: { u0: 0, u1: 0.4, v0: -0.01, v1: 0.11 },
      regions: [airOver("a", 0, -0.01, 0.4, 0), airOver("b", 0, 0.1, 0.4, 0.11), solid("above", 0.3, 0, 0, 0.4, 0.1), lower],
      sheets: [],
      airs: [airOf("a", 0.04), airOf("b", 0.13)],
    };
    const [solution] = meshes(section, 1);
    expect(solution?.couplings[0]?.[1]).toBeCloseTo(0.4 / (0.04 + 0.1 / 0.3 + 0.13), 12);
  });

  test("through a slab that stands at 45 degrees, its faces and ends along diagonals", () => {
    const at = (s: number, d: number): Vec2 => ({ x: (s - d) / Math.SQRT2, y: (s + d) / Math.SQRT2 });
    const strip = (d0: number, d1: number): readonly Vec2[] => [at(0, d0), at(0.3, d0), at(0.3, d1), at(0, d1)];
    const section: Section = {
      window: { u0: -0.2, u1: 0.3, v0: -0.1, v1: 0.4 },
      regions: [
        { what: "a", outline: { outer: strip(-0.05, 0), holes: [] }, fill: { kind: "air", air: "a" } },
        { what: "slab", outline: { outer: strip(0, 0.1), holes: [] }, fill: { kind: "solid", conductivity: 0.3 } },
        { what: "b", outline: { outer: strip(0.1, 0.15), holes: [] }, fill: { kind: "air", air: "b" } },
      ],
      sheets: [],
      airs: [airOf("a", 0.04), airOf("b", 0.13)],
    };
    for (const solution of meshes(section, 2)) expect(solution.couplings[0]?.[1]).toBeCloseTo(0.3 / (0.04 + 0.1 / 0.3 + 0.13), 12);
  });
});

function finConductance(kt: number, m2: number, length: number): number {
  return kt * Math.sqrt(m2) * Math.tanh(Math.sqrt(m2) * length);
}

function inSeries(a: number, b: number): number {
  return 1 / (1 / a + 1 / b);
}

/** Solutions on the first mesh and those with halved cells. */
function meshes(section: Section, count: number): readonly ReturnType<typeof solveMesh>[] {
  const pattern = layOut(section);
  if (!pattern.ok) throw new Error(pattern.reason);
  let lines = firstLines(pattern);
  return Array.from({ length: count }, () => {
    const solution = solveMesh(assembleNetwork(section, pattern, lines));
    lines = { x: halved(lines.x), y: halved(lines.y) };
    return solution;
  });
}

/** Holds the errors of the coupling on four meshes to an order of convergence, and the last one to be small. */
function expectOrder(section: Section, want: number, order: number): void {
  const errors = meshes(section, 4).map(({ couplings }) => Math.abs((couplings[0]?.[1] as number) / want - 1));
  const orders = errors.slice(1).map((error, at) => Math.log2((errors[at] as number) / error));
  for (const observed of orders) expect(Math.abs(observed - order)).toBeLessThan(0.15);
  expect(errors.at(-1)).toBeLessThan(1e-3);
}
