import type { Part } from "../../build/part.ts";
import type { Surface } from "../../build/surface.ts";
import { catalogue } from "../../catalogue/catalogue.ts";
import type { Job } from "../../job/job.ts";
import { apply } from "../../working/formula.ts";
import { given, type Quantity } from "../../working/quantity.ts";
import { fromRow } from "../fromRow.ts";
import { tightest } from "../finding.ts";
import { AXES, type Axis, axisOf, normalAxis, partBox, spanGap, type WorldBox } from "../places.ts";
import { gapsBetween } from "./blocks.ts";
import { buildUpOn } from "./buildUpOn.ts";
import { atLeast, type Fit, type Rule } from "./context.ts";
import { rectangleDistance } from "./formulas.ts";
import { pairsOf } from "./pairs.ts";

/** The foam nozzle gets between the framing of two faces in every corner where one of them is foamed. */
export const nozzleRoom: Rule = (fit) => {
  const cases = pairsOf(fit.build.surfaces.filter(({ kind, id }) => kind === "face" && id !== "floor")).flatMap(([a, b]) =>
    cornerOf(fit, a, b),
  );
  const out = cases
    .filter(({ comparison }) => !comparison.holds)
    .map(({ corner, at, one, other, comparison }) => {
      const facts = { corner, one, other, has: comparison.left.value, needs: comparison.right.value, missing: -comparison.margin };
      return fit.make("nozzle room short", facts, { verdict: "stop", at: `nozzle-room/${at}`, about: [one, other], comparison });
    });
  const least = tightest(cases);
  if (out.length > 0 || least === undefined) return out;
  const { corner, one, other, comparison } = least;
  const facts = { count: cases.length, corner, has: comparison.left.value, needs: comparison.right.value };
  return [fit.make("nozzle room kept", facts, { verdict: "pass", at: "nozzle-room", about: [one, other], comparison })];
};

interface Corner {
  readonly corner: string;
  readonly at: string;
  readonly one: string;
  readonly other: string;
  readonly comparison: ReturnType<typeof atLeast>;
}

interface Member {
  readonly id: string;
  readonly box: WorldBox;
}

/** The nearest two members of a corner, measured square to the corner's line. */
function cornerOf(fit: Fit, a: Surface, b: Surface): readonly Corner[] {
  if (normalAxis(a) === normalAxis(b)) return [];
  const needs = [a, b].flatMap((surface) => nozzleOf(fit.build.job, surface)).sort((x, y) => y.value - x.value)[0];
  if (needs === undefined) return [];
  const axis = AXES.find((one) => one !== normalAxis(a) && one !== normalAxis(b));
  if (axis === undefined) return [];
  const across = AXES.filter((one) => one !== axis);
  const members = membersAt(fit, a, b, axis);
  let nearest: { one: Member; other: Member; apart: number } | undefined;
  for (const one of members[0]) {
    for (const other of members[1]) {
      const apart = Math.hypot(...across.map((side) => Math.max(0, spanGap(one.box[side], other.box[side]))));
      if (nearest === undefined || apart < nearest.apart) nearest = { one, other, apart };
    }
  }
  if (nearest === undefined) return [];
  const { one, other } = nearest;
  const [g_x, g_y] = gapsBetween(one.box, one.id, other.box, other.id, across) as [Quantity<"m">, Quantity<"m">];
  const means = `room for the nozzle between ${one.id} and ${other.id}`;
  const comparison = atLeast(apply(rectangleDistance, { g_x, g_y }, { means }), needs);
  return [{ corner: `${a.name} and ${b.name}`, at: `${a.id}/${b.id}`, one: one.id, other: other.id, comparison }];
}

/**
 * Studs that run along the corner. Where only one face has such, as joists beside an end wall, they stand against all
 * studs of the other; where neither has, the nozzle goes in between the studs' ends and there is nothing to measure.
 */
function membersAt(fit: Fit, a: Surface, b: Surface, axis: Axis): readonly [readonly Member[], readonly Member[]] {
  const studs = [a, b].map((surface) => fit.parts(surface.id, "stud", "jamb stud", "cripple stud").map((part) => ({ part, surface })));
  const along = studs.map((all) => all.filter(({ part, surface }) => runsAlong(part, surface) === axis));
  if (along.every(({ length }) => length === 0)) return [[], []];
  const [one = [], other = []] = along.map((found, index) => (found.length > 0 ? found : (studs[index] ?? [])));
  const member = ({ part, surface }: { part: Part; surface: Surface }): Member => ({ id: part.id, box: partBox(surface, part) });
  return [one.map(member), other.map(member)];
}

function runsAlong({ shape }: Part, surface: Surface): Axis | undefined {
  if (shape.kind !== "bar") return undefined;
  const direction = { u: surface.along, v: surface.up, w: surface.inward }[shape.runs];
  return axisOf(direction);
}

function nozzleOf(job: Job, surface: Surface): readonly Quantity<"m">[] {
  const foam = buildUpOn(job, surface)?.buildUp.foam;
  if (foam === undefined) return [];
  const row = catalogue.foams.get(foam.row);
  return [
    given(row.nozzleRoom, "m", "c_nozzle", `room that the gun needs for ${row.what}`, fromRow(`foams/${row.id}`, "nozzleRoom", row.source)),
  ];
}
