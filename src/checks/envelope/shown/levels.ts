import type { System } from "../../../units/format.ts";

/** Most isotherms that a picture of a section takes. */
const MOST = 12;

/** Round temperatures of a unit system that lie between two, in °C from the coldest: the finest step with few enough lines. */
export function levelsBetween(low: number, high: number, system: System): readonly number[] {
  const { degree, zero } = SCALES[system];
  const [from, to] = [(low - zero) / degree, (high - zero) / degree];
  const step = STEPS.find((one) => (to - from) / one <= MOST) ?? Math.ceil((to - from) / MOST);
  const first = Math.floor(from / step) + 1;
  const count = Math.max(0, Math.ceil(to / step) - first);
  return Array.from({ length: count }, (_, k) => zero + (first + k) * step * degree);
}

const STEPS: readonly number[] = [0.5, 1, 2, 5, 10, 20];

/** A degree of each system in kelvin, and its zero in °C: exact. */
const SCALES: Readonly<Record<System, { readonly degree: number; readonly zero: number }>> = {
  metric: { degree: 1, zero: 0 },
  imperial: { degree: 5 / 9, zero: (-32 * 5) / 9 },
};
