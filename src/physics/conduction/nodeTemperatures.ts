import type { Field } from "./solution.ts";

/**
 * Temperature of every node at these temperatures of the environments, degC, in the order of the field's shares; without
 * meaning where a node is not active. Throws RangeError where the number of temperatures is not that of the shares, or one is
 * not a finite number.
 */
export function nodeTemperatures({ shares, active }: Field, temperatures: readonly number[]): Float64Array {
  if (temperatures.length !== shares.length) {
    throw new RangeError(`temperatures: ${temperatures.length} are given for ${shares.length} environments`);
  }
  const sum = new Float64Array(active.length);
  temperatures.forEach((temperature, environment) => {
    if (!Number.isFinite(temperature)) throw new RangeError(`temperatures[${environment}] is ${temperature}, not a finite number`);
    shares[environment]?.forEach((share, k) => (sum[k] = (sum[k] as number) + share * temperature));
  });
  return sum;
}
