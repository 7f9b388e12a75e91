import type { Build } from "../../../build/build.ts";
import { type Airs, type Criterion, leastSurfaceFactor, monthlyNeeds, type MonthNeed, resistanceForSurfaceFactor } from "../../../physics/moisture.ts";
import { type Comparison, compare } from "../../../working/comparison.ts";
import type { Quantity } from "../../../working/quantity.ts";
import type { Verdict } from "../../check.ts";
import { environmentOf } from "../cuts/airs.ts";
import type { SolvedSection, Solver } from "../heat/solved.ts";
import type { SectionPlan } from "../sections/sections.ts";
import type { Planned } from "../sections/planned.ts";
import { type ColdPoint, coldestPoint, factorOf, pointsOf, type Weights, weightsOf } from "./coldest.ts";
import { type DampRoom, MONTHS } from "./rooms.ts";
import { type Where, whereIs } from "./where.ts";

/** Sections that are judged together: of a face, of an edge of the box, of an opening. */
export interface Group {
  readonly id: string;
  readonly name: string;
  readonly about: readonly string[];
  readonly planned: readonly Planned[];
}

/** One question asked of the surfaces of a group in one room. */
export interface SurfaceCase {
  readonly room: DampRoom;
  readonly group: Group;
  readonly criterion: Criterion;
  /** "January", or undefined for the winter design hour. */
  readonly month: string | undefined;
  readonly where: Where;
  /** Temperatures of the outside and of the room, °C. */
  readonly outside: number;
  readonly inside: number;
  readonly comparison: Comparison<"1">;
}

/** The groups of a plan. */
export function groupsOf({ faces, junctions }: SectionPlan): readonly Group[] {
  const byId = new Map<string, Group>();
  for (const { surface, field, kinds } of faces) {
    byId.set(surface.id, { id: surface.id, name: surface.name, about: [surface.id], planned: [field, ...kinds.map(({ planned }) => planned)] });
  }
  for (const { id, name, main } of junctions) {
    const [own] = id.split("/") as [string];
    const known = byId.get(own);
    const planned = [...(known?.planned ?? []), main];
    byId.set(own, { id: own, name: own === id ? name : `opening ${own}`, about: main.about, planned });
  }
  return [...byId.values()];
}

/**
 * What the surfaces of every group are asked in every damp room: against mould and the dew point in the worst month, and
 * against the dew point at the winter design hour. Mould is asked of plain surfaces alone; windows, doors and their frames may
 * be damp for an hour, and are held to the dew point.
 */
export function surfaceCases(build: Build, groups: readonly Group[], rooms: readonly DampRoom[], { solve }: Solver): readonly SurfaceCase[] {
  const temperatures = new Map(build.rooms.map((placed) => [environmentOf(placed), placed.room?.heatTo]));
  return rooms.flatMap((room) =>
    questionsOf(room).flatMap((question) => {
      const weights = weightsOf(room.environment, question.airs.T_e.value, question.airs.T_i.value, temperatures);
      const where = question.criterion === "mould" ? "plain" : "any";
      return groups.flatMap((group): readonly SurfaceCase[] => {
        const point = coldestOf(group, solve, room.environment, weights, where);
        if (point === undefined) return [];
        const place = whereIs(build, point);
        const comparison = compare(factorOf(point, place.section), ">=", question.need);
        const { criterion, month, airs } = question;
        return [{ room, group, criterion, month, where: place, outside: airs.T_e.value, inside: airs.T_i.value, comparison }];
      });
    }),
  );
}

/** Below the dew point in a month: stop. Mould in a month: stop where people stay, else watch. At the design hour alone: watch. */
export function verdictIfMissed({ room, criterion, month }: SurfaceCase): Verdict {
  if (month === undefined) return "watch";
  return criterion === "condensation" || room.stayedIn ? "stop" : "watch";
}

/**
 * The greatest temperature factor that is asked of surfaces: R_si of 0.25 m2K/W before a wall of 5 m2K/W. Air that asks for more
 * is too damp for any wall of a box. Common practice.
 */
const REACHABLE = 0.95;

interface Question {
  readonly criterion: Criterion;
  readonly month: string | undefined;
  readonly airs: Airs;
  readonly need: Quantity<"1">;
}

/**
 * The questions of a room; none where the outside is never colder than the room. Months in which the room's own air is too
 * damp for any surface ask nothing of surfaces.
 */
function questionsOf({ months, design }: DampRoom): readonly Question[] {
  const monthly = (["condensation", "mould"] as const).flatMap((criterion): readonly Question[] => {
    const worst = worstOf((months === undefined ? [] : monthlyNeeds(months, criterion)).filter(({ factor }) => factor.value <= REACHABLE));
    return worst === undefined ? [] : [{ criterion, month: MONTHS[worst.month], airs: worst.airs, need: worst.factor }];
  });
  const need = leastSurfaceFactor(design, "condensation");
  return need === undefined ? monthly : [...monthly, { criterion: "condensation", month: undefined, airs: design, need }];
}

/** Months in which the room's own air is too damp for any surface. */
export function tooDamp({ months }: DampRoom, criterion: Criterion): MonthNeed | undefined {
  return worstOf((months === undefined ? [] : monthlyNeeds(months, criterion)).filter(({ factor }) => factor.value > REACHABLE));
}

/** The month that asks most, the earlier of equals. */
function worstOf(needs: readonly MonthNeed[]): MonthNeed | undefined {
  return needs.reduce<MonthNeed | undefined>((worst, one) => (worst !== undefined && worst.factor.value >= one.factor.value ? worst : one), undefined);
}

/**
 * The coldest point of a group with the resistances against mould. Sections are taken in the order of how cold they can be at
 * most, and solved again until no other can be colder.
 */
function coldestOf(group: Group, solve: Solver["solve"], room: string, weights: Weights, where: "plain" | "any"): ColdPoint | undefined {
  const bounds = group.planned
    .flatMap((planned) => {
      const rough = solve(planned);
      const bound = rough === undefined ? undefined : lowerBound(rough, room, weights, where);
      return bound === undefined ? [] : [{ planned, bound }];
    })
    .sort((a, b) => a.bound.factor - b.bound.factor);
  let coldest: ColdPoint | undefined;
  for (const { planned, bound } of bounds) {
    if (coldest !== undefined && bound.factor >= coldest.factor) break;
    const slow = solve(planned, "mould");
    const point = slow === undefined ? undefined : coldestPoint(slow, room, weights, where);
    if (point !== undefined && (coldest === undefined || point.factor < coldest.factor)) coldest = point;
  }
  return coldest;
}

/** Each point as cold as if its distance from the room grew with the resistance of the air before it; the coldest of them. */
function lowerBound(solved: SolvedSection, room: string, weights: Weights, where: "plain" | "any"): ColdPoint | undefined {
  const { solution, section } = solved;
  const slower = new Map(section.airs.map(({ id, resistance }) => [id, resistanceForSurfaceFactor("opaque").value / resistance]));
  return pointsOf(solution, room, weights, where)
    .map(({ at, air, factor }): ColdPoint => ({ solved, at, factor: 1 - (slower.get(air) as number) * (1 - factor) }))
    .reduce<ColdPoint | undefined>((least, one) => (least === undefined || one.factor < least.factor ? one : least), undefined);
}
