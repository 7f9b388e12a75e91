import type { Build } from "../../../build/build.ts";
import type { SurfaceId } from "../../../build/surface.ts";
import type { Comparison } from "../../../working/comparison.ts";
import type { CheckContext } from "../../context.ts";
import { tightest } from "../../finding.ts";
import { environmentOf } from "../cuts/airs.ts";
import { makeSolver } from "../heat/solved.ts";
import { type ColdPoint, coldestPoint, weightsOf } from "../moisture/coldest.ts";
import { dampRooms } from "../moisture/rooms.ts";
import { groupsOf, type SurfaceCase, surfaceCases } from "../moisture/surfaces.ts";
import { whereIs } from "../moisture/where.ts";
import { facePlan } from "../sections/fields.ts";

/** What the surfaces of a face are held to. */
export const SURFACE_CRITERIA = ["dew point in a month", "mould in a month", "dew point at the design hour"] as const;
export type SurfaceCriterion = (typeof SURFACE_CRITERIA)[number];

/** The tightest case of one criterion. */
export interface CriterionAnswer {
  readonly criterion: SurfaceCriterion;
  /** Name of the room. */
  readonly room: string;
  /** "January", or "the winter design hour". */
  readonly when: string;
  readonly comparison: Comparison<"1">;
}

/** What some faces of a build answer by their own sections: field, and studs on either flat. */
export interface FaceAnswers {
  /** One for each criterion that a room asks; none where no heated room states its humidity. */
  readonly answers: readonly CriterionAnswer[];
  /** The coldest surface of a heated room at the winter design hour, with the resistances against mould; undefined where no room is heated. */
  readonly coldest: { readonly factor: number; readonly room: string; readonly section: string } | undefined;
  /** Sections that could not be cut or solved, in words. */
  readonly leftOut: readonly string[];
}

/** Asks the faces of a build alone. Edges of the box, openings and partitions are not looked at. */
export function faceAnswers(build: Build, faces: readonly SurfaceId[], context: CheckContext): FaceAnswers {
  const surfaces = build.surfaces.filter(({ id }) => faces.includes(id));
  const plans = surfaces.flatMap((surface) => facePlan(build, surface) ?? []);
  const solver = makeSolver(build, context);
  const { rooms } = dampRooms(build);
  const groups = groupsOf({ faces: plans, junctions: [], missing: [] });
  const cases = surfaceCases(build, groups, rooms, solver);
  const temperatures = new Map(build.rooms.map((placed) => [environmentOf(placed), placed.room?.heatTo]));
  const { winterDesign } = build.job.site;
  const points = build.rooms.flatMap((placed) => {
    const heatTo = placed.room?.heatTo;
    if (heatTo === undefined || heatTo <= winterDesign) return [];
    const environment = environmentOf(placed);
    const weights = weightsOf(environment, winterDesign, heatTo, temperatures);
    return groups.flatMap(({ planned }) =>
      planned.flatMap((one) => {
        const solved = solver.solve(one, "mould");
        const point = solved === undefined ? undefined : coldestPoint(solved, environment, weights, "any");
        return point === undefined ? [] : [{ point, room: placed.name }];
      }),
    );
  });
  const coldest = points.reduce<{ readonly point: ColdPoint; readonly room: string } | undefined>((least, one) => (least === undefined || one.point.factor < least.point.factor ? one : least), undefined);
  return {
    answers: SURFACE_CRITERIA.flatMap((criterion) => tightestOf(criterion, cases)),
    coldest: coldest === undefined ? undefined : { factor: coldest.point.factor, room: coldest.room, section: whereIs(build, coldest.point).section },
    leftOut: [
      ...surfaces.filter((surface) => !plans.some((one) => one.surface === surface)).map(({ name }) => name),
      ...solver.unsolved().map(({ planned }) => planned.name),
    ],
  };
}

function tightestOf(criterion: SurfaceCriterion, cases: readonly SurfaceCase[]): readonly CriterionAnswer[] {
  const least = tightest(cases.filter((one) => criterionOf(one) === criterion));
  return least === undefined ? [] : [{ criterion, room: least.room.placed.name, when: least.month ?? "the winter design hour", comparison: least.comparison }];
}

function criterionOf({ criterion, month }: SurfaceCase): SurfaceCriterion {
  if (month === undefined) return "dew point at the design hour";
  return criterion === "mould" ? "mould in a month" : "dew point in a month";
}
