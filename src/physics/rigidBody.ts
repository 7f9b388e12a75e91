import { defineFormula } from "../working/formula.ts";
import { source } from "../working/source.ts";

const STATICS = source("statics of a rigid body", "derived");
const SPRINGS = source("statics of a rigid body on four equal springs at the corners of a rectangle", "derived");

/** Standard acceleration of free fall, m/s2: 3rd General Conference on Weights and Measures, 1901; exact by convention. */
export const STANDARD_GRAVITY = 9.80665;

/** Mass of several bodies, kg. Domain: any list; an empty one has no mass. */
export const massSum = defineFormula({
  id: "rigidBody.massSum",
  symbol: "m_sum",
  means: "mass of several bodies",
  unit: "kg",
  text: "sum(m)",
  takes: { m: "kg[]" },
  source: STATICS,
  compute: ({ m }) => sum(m),
});

/** First moment of mass of several bodies about the origin of one axis, kg m. */
export const massMoment = defineFormula({
  id: "rigidBody.massMoment",
  symbol: "S_m",
  means: "first moment of mass along one axis",
  unit: "kg m",
  text: "sum(m * x)",
  takes: { m: "kg[]", x: "m[]" },
  source: STATICS,
  compute: ({ m, x }) => sumOfProducts(m, x),
});

/** Place of the common centre of mass along one axis, m. Throws RangeError where the whole has no mass. */
export const massCentre = defineFormula({
  id: "rigidBody.massCentre",
  symbol: "x_cm",
  means: "centre of mass along one axis",
  unit: "m",
  text: "sum(S_m) / m_sum",
  takes: { S_m: "kg m[]", m_sum: "kg" },
  source: STATICS,
  compute: ({ S_m, m_sum }) => {
    if (!(m_sum > 0)) throw new RangeError(`rigidBody.massCentre: m_sum is ${m_sum} kg and has to be above zero`);
    return sum(S_m) / m_sum;
  },
});

/** Distance of the centre of mass from the middle of a length L_e that starts at the origin, m; positive in the axis' direction. */
export const eccentricity = defineFormula({
  id: "rigidBody.eccentricity",
  symbol: "e_cm",
  means: "distance of the centre of mass from the middle",
  unit: "m",
  text: "x_cm - L_e / 2",
  takes: { x_cm: "m", L_e: "m" },
  source: STATICS,
  compute: ({ x_cm, L_e }) => x_cm - L_e / 2,
});

/** Height of the centre of mass above the underside, m, from its height above a floor that lies h_floor over the underside. */
export const centreHeight = defineFormula({
  id: "rigidBody.centreHeight",
  symbol: "h_cm",
  means: "height of the centre of mass above the underside",
  unit: "m",
  text: "x_cm + h_floor",
  takes: { x_cm: "m", h_floor: "m" },
  source: STATICS,
  compute: ({ x_cm, h_floor }) => x_cm + h_floor,
});

/** Size of the eccentricity as a share of the length that it is measured along. Throws RangeError where that is not above zero. */
export const eccentricityShare = defineFormula({
  id: "rigidBody.eccentricityShare",
  symbol: "eps_cm",
  means: "eccentricity as a share of the length",
  unit: "1",
  text: "abs(e_cm) / L_e",
  takes: { e_cm: "m", L_e: "m" },
  source: STATICS,
  compute: ({ e_cm, L_e }) => {
    if (!(L_e > 0)) throw new RangeError(`rigidBody.eccentricityShare: L_e is ${L_e} m and has to be above zero`);
    return Math.abs(e_cm) / L_e;
  },
});

/**
 * Load on one of four supports at the corners of a rectangle S along by P across, N; negative where the corner would
 * lift off. `s_x` and `s_y` are +1 or -1: the corner's side along and across.
 *
 * Four supports of a rigid body are statically indeterminate; the supports are taken as equal springs, so that the four
 * loads lie in one plane. Force and both moments balance exactly. A box on uneven ground, or one that twists, loads its
 * corners otherwise.
 */
export const cornerLoad = defineFormula({
  id: "rigidBody.cornerLoad",
  symbol: "F_c",
  means: "load on one corner",
  unit: "N",
  text: "m_sum * g_n * (1 / 4 + s_x * e_x / (2 * S_x) + s_y * e_y / (2 * P_y))",
  takes: { m_sum: "kg", g_n: "m/s2", s_x: "1", s_y: "1", e_x: "m", e_y: "m", S_x: "m", P_y: "m" },
  source: SPRINGS,
  compute: ({ m_sum, g_n, s_x, s_y, e_x, e_y, S_x, P_y }) => {
    if (!(S_x > 0) || !(P_y > 0)) throw new RangeError(`rigidBody.cornerLoad: supports ${S_x} by ${P_y} m apart`);
    return m_sum * g_n * (1 / 4 + (s_x * e_x) / (2 * S_x) + (s_y * e_y) / (2 * P_y));
  },
});

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

function sumOfProducts(a: readonly number[], b: readonly number[]): number {
  if (a.length !== b.length) throw new RangeError(`rigidBody.massMoment: ${a.length} masses at ${b.length} places`);
  return a.reduce((total, value, index) => total + value * (b[index] as number), 0);
}
