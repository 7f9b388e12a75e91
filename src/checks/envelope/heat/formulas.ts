import { defineFormula } from "../../../working/formula.ts";
import { source } from "../../../working/source.ts";

const COUPLING = source("ISO 10211:2017", "memory", "thermal coupling coefficients and linear transmittances from plane sections");

/** Transmittance of an undisturbed field from a section of its width, W/(m2 K). Throws RangeError where the width is not above zero. */
export const fieldTransmittance = defineFormula({
  id: "envelope.fieldTransmittance",
  symbol: "U_0",
  means: "transmittance of the field",
  unit: "W/(m2 K)",
  text: "L_2D / b_win",
  takes: { L_2D: "W/(m K)", b_win: "m" },
  source: COUPLING,
  compute: ({ L_2D, b_win }) => {
    if (!(b_win > 0)) throw new RangeError(`envelope.fieldTransmittance: b_win is ${b_win} m and has to be above zero`);
    return L_2D / b_win;
  },
});

/** What passes a junction beyond its plain faces and the bars in them, W/(m K). Faces are measured on their inside planes. */
export const junctionTransmittance = defineFormula({
  id: "envelope.junctionTransmittance",
  symbol: "psi",
  means: "linear transmittance",
  unit: "W/(m K)",
  text: "L_2D - sum(U_0 * l_0) - sum(psi_bar)",
  takes: { L_2D: "W/(m K)", U_0: "W/(m2 K)[]", l_0: "m[]", psi_bar: "W/(m K)[]" },
  source: COUPLING,
  compute: ({ L_2D, U_0, l_0, psi_bar }) => L_2D - sumOf(U_0.map((one, k) => one * (l_0[k] as number))) - sumOf(psi_bar),
});

/** Area of a face between inside planes, its openings taken off, m2. Throws RangeError where nothing is left. */
export const plainArea = defineFormula({
  id: "envelope.plainArea",
  symbol: "A_face",
  means: "area of a face without its openings",
  unit: "m2",
  text: "b_p * h_p - sum(A_op)",
  takes: { b_p: "m", h_p: "m", A_op: "m2[]" },
  source: source("area of a rectangle", "derived"),
  compute: ({ b_p, h_p, A_op }) => {
    const area = b_p * h_p - sumOf(A_op);
    if (!(area > 0)) throw new RangeError(`envelope.plainArea: openings of ${sumOf(A_op)} m2 leave nothing of ${b_p} by ${h_p} m`);
    return area;
  },
});

/** Transmittance of a face with the bars that cross it, W/(m2 K). Throws RangeError where the area is not above zero. */
export const bridgedTransmittance = defineFormula({
  id: "envelope.bridgedTransmittance",
  symbol: "U",
  means: "transmittance of a face with its studs or cross-members",
  unit: "W/(m2 K)",
  text: "U_0 + sum(psi_bar * L_bar) / A_face",
  takes: { U_0: "W/(m2 K)", psi_bar: "W/(m K)[]", L_bar: "m[]", A_face: "m2" },
  source: COUPLING,
  compute: ({ U_0, psi_bar, L_bar, A_face }) => {
    if (!(A_face > 0)) throw new RangeError(`envelope.bridgedTransmittance: A_face is ${A_face} m2 and has to be above zero`);
    return U_0 + sumOf(psi_bar.map((one, k) => one * (L_bar[k] as number))) / A_face;
  },
});

/** Heat that the whole box loses for each kelvin, W/K, by conduction alone. */
export const heatLoss = defineFormula({
  id: "envelope.heatLoss",
  symbol: "H_loss",
  means: "heat that the box loses for each kelvin by conduction",
  unit: "W/K",
  text: "sum(U * A) + sum(psi * l)",
  takes: { U: "W/(m2 K)[]", A: "m2[]", psi: "W/(m K)[]", l: "m[]" },
  source: COUPLING,
  compute: ({ U, A, psi, l }) => sumOf(U.map((one, k) => one * (A[k] as number))) + sumOf(psi.map((one, k) => one * (l[k] as number))),
});

function sumOf(values: readonly number[]): number {
  return values.reduce((sum, one) => sum + one, 0);
}
