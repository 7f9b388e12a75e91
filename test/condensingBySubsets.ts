import { AIR_PERMEABILITY, airThicknessOf, type Wall, type WallAirs } from "../src/physics/moisture.ts";
import { saturationAt } from "../src/physics/moisture/saturation.ts";

/**
 * Where vapour condenses in a wall, kg/(s m2) at each face between layers, by trying every subset of faces: those in it are
 * held at saturation, the balance of vapour at all others is solved as linear equations, and the subset stands where no face
 * is above saturation and none gives water that it does not have; faces that are `wet` have it. For walls whose layers need
 * no slices.
 */
export function condensingBySubsets(
  { layers, outsideResistance, insideResistance }: Wall,
  { outside, inside }: WallAirs,
  wet: ReadonlySet<number> = new Set(),
): readonly number[] {
  const resistances = layers.map(({ thickness, conductivity }) => thickness / conductivity);
  const total = outsideResistance + resistances.reduce((sum, one) => sum + one, 0) + insideResistance;
  const last = layers.length;
  const limits = Array.from({ length: last + 1 }, (_, face) => {
    const before = outsideResistance + resistances.slice(0, face).reduce((sum, one) => sum + one, 0);
    return saturationAt(outside.temperature + ((inside.temperature - outside.temperature) * before) / total);
  });
  const permeances = layers.map((layer) => {
    const air = airThicknessOf(layer);
    return air === undefined ? 0 : AIR_PERMEABILITY.value / air;
  });
  const ends = [Math.min(outside.vapourPressure, limits[0]!), Math.min(inside.vapourPressure, limits[last]!)] as const;
  let best: { rates: readonly number[]; wrong: number } | undefined;
  for (let subset = 0; subset < 2 ** Math.max(0, last - 1); subset += 1) {
    const isIn = (face: number): boolean => (subset >> (face - 1)) % 2 === 1;
    if ([...wet].some((face) => !isIn(face))) continue;
    const held = limits.map((limit, face) => (face === 0 ? ends[0] : face === last ? ends[1] : isIn(face) ? limit : undefined));
    const pressures = balanced(held, permeances);
    if (pressures === undefined) continue;
    const rates = pressures.map((p, face) => {
      if (face === 0 || face === last || held[face] === undefined) return 0;
      return permeances[face]! * (pressures[face + 1]! - p) - permeances[face - 1]! * (p - pressures[face - 1]!);
    });
    // Shares of saturation and of the flow at stake, so that the digits lost in solving do not decide.
    const over = Math.max(...pressures.map((p, face) => p / limits[face]! - 1));
    const scale = Math.max(1e-13, ...rates.map(Math.abs));
    const wrong = Math.max(over, -Math.min(...rates.filter((_, face) => !wet.has(face))) / scale);
    if (best === undefined || wrong < best.wrong) best = { rates, wrong };
  }
  if (best === undefined || best.wrong > 1e-6) throw new Error(`no subset of faces stands: ${JSON.stringify(best)}`);
  return best.rates;
}

/** Pressures at all faces, those not held by the balance of vapour; undefined where nothing holds a face that nothing reaches. */
function balanced(held: readonly (number | undefined)[], permeances: readonly number[]): readonly number[] | undefined {
  const size = held.length;
  const rows = held.map((value, face) => {
    const row = new Array<number>(size + 1).fill(0);
    if (value !== undefined) {
      row[face] = 1;
      row[size] = value;
      return row;
    }
    const [outer, inner] = [permeances[face - 1]!, permeances[face]!];
    const scale = outer + inner;
    // Between two vapour-tight layers any pressure balances: none is as good as another.
    if (scale === 0) {
      row[face] = 1;
      return row;
    }
    row[face - 1] = -outer / scale;
    row[face] = 1;
    row[face + 1] = -inner / scale;
    return row;
  });
  return eliminated(rows);
}

function eliminated(rows: number[][]): readonly number[] | undefined {
  const size = rows.length;
  for (let column = 0; column < size; column += 1) {
    const pivot = rows.slice(column).reduce((most, row, at) => (Math.abs(row[column]!) > Math.abs(rows[most]![column]!) ? column + at : most), column);
    [rows[column], rows[pivot]] = [rows[pivot]!, rows[column]!];
    const head = rows[column]!;
    if (Math.abs(head[column]!) < 1e-13) return undefined;
    for (const row of rows) {
      if (row === head) continue;
      const times = row[column]! / head[column]!;
      for (let k = column; k <= size; k += 1) row[k] = row[k]! - times * head[k]!;
    }
  }
  return rows.map((row, at) => row[size]! / row[at]!);
}
