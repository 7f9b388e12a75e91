import { stackOf } from "../../build/stack.ts";
import { catalogue } from "../../catalogue/catalogue.ts";
import { inch } from "../../catalogue/imperial.ts";
import type { BuildUp } from "../../job/job.ts";
import type { System } from "../../units/format.ts";

/** Thicknesses between which foam may be chosen, m. */
export interface FoamRange {
  readonly least: number;
  readonly greatest: number;
}

/** What foam without studs and boards may reach, m. */
const FREE_FOAM = 0.15;

/** From one pass, and to the back of the studs at least, up to the plane of the boards. Throws RangeError where there is no foam. */
export function foamRange(buildUp: BuildUp): FoamRange {
  const { foam, studs } = buildUp;
  if (foam === undefined) throw new RangeError("the build-up has no foam");
  const onePass = catalogue.foams.get(foam.row).passThickness.least;
  if (studs === undefined) return { least: onePass, greatest: FREE_FOAM };
  const least = Math.max(onePass, studs.standOff);
  return { least, greatest: Math.max(least, stackOf(buildUp).boardPlane) };
}

const MOST_STEPS = 9;
const FINEST: Readonly<Record<System, number>> = { metric: 0.005, imperial: inch / 4 };

/** Thicknesses of the curve, ascending: round steps within the range, its ends, and what the job has. */
export function curveOf({ least, greatest }: FoamRange, present: number, system: System): readonly number[] {
  let step = FINEST[system];
  while ((greatest - least) / step > MOST_STEPS) step *= 2;
  const round: number[] = [];
  for (let k = Math.ceil(least / step); k * step <= greatest; k += 1) round.push(k * step);
  const all = [least, greatest, present, ...round].sort((a, b) => a - b);
  return all.filter((one, at) => at === 0 || one - (all[at - 1] as number) > SAME_THICKNESS);
}

const SAME_THICKNESS = 5e-4;
