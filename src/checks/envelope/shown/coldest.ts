import type { Build } from "../../../build/build.ts";
import type { Vec2 } from "../../../geometry/vector.ts";
import { sayIn } from "../../say.ts";
import { OUTSIDE } from "../cuts/airs.ts";
import type { SolvedSection } from "../heat/solved.ts";
import { coldestPoint } from "../moisture/coldest.ts";
import { whereIs, whereWords } from "../moisture/where.ts";
import type { AirThen } from "./hour.ts";

/** The coldest point of a heated room's surface at an hour. */
export interface ColdestThen {
  readonly environment: string;
  /** In words: "bunk room". */
  readonly room: string;
  /** 0 outside, 1 the room. */
  readonly factor: number;
  /** °C */
  readonly temperature: number;
  /** In the section, m. */
  readonly at: Vec2;
  /** Where it lies: 'beside the corner post (7' 6" from the blind end, ...)', lengths in the job's units. */
  readonly words: string;
}

/** Of all heated rooms that a section shows; undefined where it shows none, or where none is warmer than the outside. */
export function coldestThen(build: Build, solved: SolvedSection, airs: ReadonlyMap<string, AirThen>): ColdestThen | undefined {
  const outside = (airs.get(OUTSIDE) as AirThen).temperature;
  const points = [...airs].flatMap(([environment, { name, temperature: T_i, isHeated }]): readonly ColdestThen[] => {
    if (!isHeated || !(T_i > outside)) return [];
    const weights = new Map([...airs].map(([one, { temperature }]) => [one, (temperature - outside) / (T_i - outside)]));
    const point = coldestPoint(solved, environment, weights, "any");
    if (point === undefined) return [];
    const { at, factor } = point;
    const words = whereWords(whereIs(build, point), sayIn(build.job.units));
    return [{ environment, room: name, factor, temperature: outside + factor * (T_i - outside), at, words }];
  });
  return points.toSorted((a, b) => a.temperature - b.temperature)[0];
}
