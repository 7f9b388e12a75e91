import { defineFormula } from "../working/formula.ts";
import { commonPractice, source } from "../working/source.ts";

const arithmetic = source("sums and whole packs of what the parts say", "derived");
const geometry = source("perimeter and rows of a rectangle", "derived");
const boardFootDefinition = source("board foot of the foam trade: one square foot one inch thick, 144 in3", "derived");

/** Keeps the last digits of floating arithmetic from asking for one pack more. */
const up = (x: number): number => Math.ceil(x - 1e-9);
const total = (list: readonly number[]): number => list.reduce((sum, one) => sum + one, 0);

export const netLength = defineFormula({
  id: "takeoff-net-length",
  symbol: "L_net",
  means: "length of the parts together",
  unit: "m",
  text: "sum(L)",
  takes: { L: "m[]" },
  source: arithmetic,
  compute: ({ L }) => total(L),
});

export const netArea = defineFormula({
  id: "takeoff-net-area",
  symbol: "A_net",
  means: "area of the parts together",
  unit: "m2",
  text: "sum(A)",
  takes: { A: "m2[]" },
  source: arithmetic,
  compute: ({ A }) => total(A),
});

export const netVolume = defineFormula({
  id: "takeoff-net-volume",
  symbol: "V_net",
  means: "volume of the parts together",
  unit: "m3",
  text: "sum(V)",
  takes: { V: "m3[]" },
  source: arithmetic,
  compute: ({ V }) => total(V),
});

export const netPieces = defineFormula({
  id: "takeoff-net-pieces",
  symbol: "n_net",
  means: "pieces together",
  unit: "1",
  text: "sum(n)",
  takes: { n: "1[]" },
  source: arithmetic,
  compute: ({ n }) => total(n),
});

export const boardFeet = defineFormula({
  id: "takeoff-board-feet",
  symbol: "n_bf",
  means: "board feet of foam in place",
  unit: "1",
  text: "V_net / (144 * 0.0254 ^ 3)",
  takes: { V_net: "m3" },
  source: boardFootDefinition,
  compute: ({ V_net }) => V_net / (144 * 0.0254 ** 3),
});

export const foamPasses = defineFormula({
  id: "takeoff-foam-passes",
  symbol: "n_pass",
  means: "passes of foam where it is deepest",
  unit: "1",
  text: "ceil(d / d_pass - 1e-9)",
  takes: { d: "m", d_pass: "m" },
  source: source("greatest thickness of a pass from the foam's row", "derived"),
  compute: ({ d, d_pass }) => up(d / d_pass),
});

export const foamSets = defineFormula({
  id: "takeoff-foam-sets",
  symbol: "n_set",
  means: "whole sets of drums",
  unit: "1",
  text: "ceil(V_net * (1 + f_more) / V_each - 1e-9)",
  takes: { V_net: "m3", f_more: "1", V_each: "m3" },
  source: arithmetic,
  compute: ({ V_net, f_more, V_each }) => up((V_net * (1 + f_more)) / V_each),
});

export const coatVolume = defineFormula({
  id: "takeoff-coat-volume",
  symbol: "V_wet",
  means: "liquid coating with what is lost in spraying or rolling",
  unit: "m3",
  text: "A_net / (k_cov * (1 - f_lost))",
  takes: { A_net: "m2", k_cov: "m2/m3", f_lost: "1" },
  source: source("spreading rate less the share lost", "derived"),
  compute: ({ A_net, k_cov, f_lost }) => A_net / (k_cov * (1 - f_lost)),
});

export const packsByVolume = defineFormula({
  id: "takeoff-packs-by-volume",
  symbol: "n_pack",
  means: "whole packs",
  unit: "1",
  text: "ceil(V_wet / V_each - 1e-9)",
  takes: { V_wet: "m3", V_each: "m3" },
  source: arithmetic,
  compute: ({ V_wet, V_each }) => up(V_wet / V_each),
});

export const packsByPieces = defineFormula({
  id: "takeoff-packs-by-pieces",
  symbol: "n_pack",
  means: "whole packs, with spares",
  unit: "1",
  text: "ceil(n_net * (1 + f_more) / n_each - 1e-9)",
  takes: { n_net: "1", f_more: "1", n_each: "1" },
  source: arithmetic,
  compute: ({ n_net, f_more, n_each }) => up((n_net * (1 + f_more)) / n_each),
});

export const packsByLength = defineFormula({
  id: "takeoff-packs-by-length",
  symbol: "n_pack",
  means: "whole pieces of sealant, tape, filler or wire, with losses",
  unit: "1",
  text: "ceil(L_net * (1 + f_more) / L_each - 1e-9)",
  takes: { L_net: "m", f_more: "1", L_each: "m" },
  source: arithmetic,
  compute: ({ L_net, f_more, L_each }) => up((L_net * (1 + f_more)) / L_each),
});

export const packsByArea = defineFormula({
  id: "takeoff-packs-by-area",
  symbol: "n_pack",
  means: "whole pieces of adhesive, with losses",
  unit: "1",
  text: "ceil(A_net * (1 + f_more) / A_each - 1e-9)",
  takes: { A_net: "m2", f_more: "1", A_each: "m2" },
  source: arithmetic,
  compute: ({ A_net, f_more, A_each }) => up((A_net * (1 + f_more)) / A_each),
});

export const boardScrews = defineFormula({
  id: "takeoff-board-screws",
  symbol: "n_board",
  means: "fasteners of one board piece: at edge spacing round it, at field spacing on the supports between",
  unit: "1",
  text: "2 * ceil(b_p / s_edge - 1e-9) + 2 * ceil(h_p / s_edge - 1e-9) + max(0, ceil(b_p / s_stud - 1e-9) - 1) * max(0, ceil(h_p / s_field - 1e-9) - 1)",
  takes: { b_p: "m", h_p: "m", s_edge: "m", s_field: "m", s_stud: "m" },
  source: geometry,
  compute: ({ b_p, h_p, s_edge, s_field, s_stud }) =>
    2 * up(b_p / s_edge) + 2 * up(h_p / s_edge) + Math.max(0, up(b_p / s_stud) - 1) * Math.max(0, up(h_p / s_field) - 1),
});

export const rowOfFasteners = defineFormula({
  id: "takeoff-row-of-fasteners",
  symbol: "n_row",
  means: "fasteners along one bar: at a spacing, and one at its end",
  unit: "1",
  text: "(ceil(L / s_row - 1e-9) + 1) * n_abreast",
  takes: { L: "m", s_row: "m", n_abreast: "1" },
  source: commonPractice,
  compute: ({ L, s_row, n_abreast }) => (up(L / s_row) + 1) * n_abreast,
});

export const endFasteners = defineFormula({
  id: "takeoff-end-fasteners",
  symbol: "n_end",
  means: "fasteners at both ends of one bar",
  unit: "1",
  text: "2 * n_abreast",
  takes: { n_abreast: "1" },
  source: commonPractice,
  compute: ({ n_abreast }) => 2 * n_abreast,
});

export const perimeterLength = defineFormula({
  id: "takeoff-perimeter",
  symbol: "L_round",
  means: "length round a rectangle",
  unit: "m",
  text: "2 * (b_p + h_p) * n_run",
  takes: { b_p: "m", h_p: "m", n_run: "1" },
  source: geometry,
  compute: ({ b_p, h_p, n_run }) => 2 * (b_p + h_p) * n_run,
});

export const bondLength = defineFormula({
  id: "takeoff-bond-length",
  symbol: "L_bond",
  means: "weld or bead laid for an area",
  unit: "m",
  text: "sum(A) * k_bond",
  takes: { A: "m2[]", k_bond: "m/m2" },
  source: arithmetic,
  compute: ({ A, k_bond }) => total(A) * k_bond,
});

export const bondArea = defineFormula({
  id: "takeoff-bond-area",
  symbol: "A_bond",
  means: "area that is glued",
  unit: "m2",
  text: "sum(A) * k_glue",
  takes: { A: "m2[]", k_glue: "1" },
  source: arithmetic,
  compute: ({ A, k_glue }) => total(A) * k_glue,
});

export const seamLength = defineFormula({
  id: "takeoff-seam-length",
  symbol: "L_seam",
  means: "taped joints: half of the edges of the pieces, since two pieces share a joint and two faces share a corner",
  unit: "m",
  text: "sum(L) / 2",
  takes: { L: "m[]" },
  source: source("each joint has two edges; edges at the floor and at openings count half, as an allowance", "derived"),
  compute: ({ L }) => total(L) / 2,
});
