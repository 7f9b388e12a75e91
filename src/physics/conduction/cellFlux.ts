import { nodeTemperatures } from "./nodeTemperatures.ts";
import type { Field } from "./solution.ts";

/** Heat flux at the centre of each cell, W/m2, above zero toward larger x and y; 0 where a cell holds no solid. */
export interface CellFlux {
  readonly x: Float64Array;
  readonly y: Float64Array;
}

/**
 * Heat flux in the cells of a field, for pictures. `temperatures` of the environments in the order of the field's shares,
 * degC. In a cell that a slope cuts it is the flux of a mean conductivity at the mean gradient; sheets are left out.
 * Throws RangeError where the number of temperatures is not that of the shares, or one is not a finite number.
 */
export function cellFlux(field: Field, temperatures: readonly number[]): CellFlux {
  const { xs, ys, active, conductivity } = field;
  const temperature = nodeTemperatures(field, temperatures);
  const columns = xs.length;
  const flux = { x: new Float64Array(conductivity.length), y: new Float64Array(conductivity.length) };
  conductivity.forEach((lambda, cell) => {
    if (lambda === 0) return;
    const i = cell % (columns - 1);
    const j = (cell - i) / (columns - 1);
    const k = j * columns + i;
    const step = (from: number, to: number): number | undefined =>
      active[from] === 1 && active[to] === 1 ? (temperature[to] as number) - (temperature[from] as number) : undefined;
    const dx = mean(step(k, k + 1), step(k + columns, k + columns + 1));
    const dy = mean(step(k, k + columns), step(k + 1, k + columns + 1));
    flux.x[cell] = (-lambda * dx) / ((xs[i + 1] as number) - (xs[i] as number));
    flux.y[cell] = (-lambda * dy) / ((ys[j + 1] as number) - (ys[j] as number));
  });
  return flux;
}

/** Mean of the steps that are there; one of two always is where a cell holds solid. */
function mean(a: number | undefined, b: number | undefined): number {
  const there = [a, b].filter((step) => step !== undefined);
  return there.reduce((sum, step) => sum + step, 0) / there.length;
}
