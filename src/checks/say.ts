import { inch } from "../catalogue/imperial.ts";
import { formatLength, formatQuantity, type System } from "../units/format.ts";

/** Writes numbers for sentences, in the job's units. */
export interface Say {
  /** A length to the tape's usual step. */
  length(metres: number): string;
  /** A length that decides: too small for the usual step it is written finer, never as nothing. */
  amount(metres: number): string;
  /** A length rounded up to the usual step, for what has to be moved or added. */
  atLeast(metres: number): string;
  /** Two lengths that are compared, written finely enough to differ where they differ. */
  lengths(a: number, b: number): readonly [string, string];
  mass(kilograms: number): string;
  force(newtons: number): string;
  /** A thermal resistance in m2K/W, with the other system's figure behind it. */
  resistance(value: number): string;
  transmittance(value: number): string;
  temperature(degrees: number): string;
  /** Heat of a year, J. */
  energy(joules: number): string;
  /** Water on or in a layer, kg/m2. */
  water(value: number): string;
  /** A share of one as a percentage. */
  share(ratio: number): string;
}

/** The writer for one system of units. */
export function sayIn(system: System): Say {
  const other: System = system === "metric" ? "imperial" : "metric";
  return {
    length: (metres) => formatLength(metres, system),
    amount: (metres) =>
      STEPS[system].map((step) => formatLength(metres, system, { step })).find((text) => !isNothing(text)) ?? formatLength(0, system),
    atLeast: (metres) => formatLength(Math.ceil(metres / STEPS[system][0] - 1e-6) * STEPS[system][0], system),
    lengths: (a, b) => {
      const pairs = STEPS[system].map((step) => [formatLength(a, system, { step }), formatLength(b, system, { step })] as const);
      return pairs.find(([one, two]) => one !== two) ?? [formatLength(a, system), formatLength(b, system)];
    },
    mass: (kilograms) => formatQuantity("mass", kilograms, system, { unit: system === "metric" ? "kg" : "lb", digits: 4 }),
    force: (newtons) => formatQuantity("force", newtons, system, { unit: system === "metric" ? "kN" : "lbf", digits: 3 }),
    resistance: (value) =>
      `${formatQuantity("thermalResistance", value, system, { digits: 3 })} (${formatQuantity("thermalResistance", value, other, { digits: 3 })})`,
    transmittance: (value) => formatQuantity("thermalTransmittance", value, system, { digits: 3 }),
    temperature: (degrees) => formatQuantity("temperature", degrees, system),
    energy: (joules) => formatQuantity("energy", joules, system, { unit: "kWh", digits: 3 }),
    water: (value) => `${Number((value * 1000).toPrecision(2))} g/m2`,
    share: (ratio) => formatQuantity("ratio", ratio, system, { unit: "%", digits: 2 }),
  };
}

/** A count with its noun: "the hole", "both holes", "all 5 holes". */
export function every(count: number, one: string, many: string): string {
  if (count === 1) return one;
  return count === 2 ? `both ${many}` : `all ${count} ${many}`;
}

/** The text with a capital first letter. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** Steps in which lengths are written, the usual first. */
const STEPS: Readonly<Record<System, readonly [number, ...number[]]>> = {
  metric: [1e-3, 1e-4, 1e-5, 1e-6],
  imperial: [inch / 16, inch / 64, inch / 256, inch / 4096],
};

function isNothing(text: string): boolean {
  return !/[1-9]/.test(text);
}
