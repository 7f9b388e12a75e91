import { catalogue } from "../../catalogue/catalogue.ts";
import { surfaceOf } from "../../build/build.ts";
import type { Surface } from "../../build/surface.ts";
import type { BuildUp } from "../../job/job.ts";
import { pathText } from "../../job/path.ts";
import { SAME_LENGTH } from "../../geometry/tolerance.ts";
import { compare, type Comparison } from "../../working/comparison.ts";
import { given, type Quantity } from "../../working/quantity.ts";
import { fromRow } from "../fromRow.ts";
import type { Finding } from "../check.ts";
import { tightest } from "../finding.ts";
import { buildUpOn } from "./buildUpOn.ts";
import { atLeast, distance, type Fit, line, type Rule } from "./context.ts";

/** Foam goes in between sheet and boards, fills what is behind the studs, and is at least one pass thick. */
export const foamInStack: Rule = (fit) => {
  const { job, surfaces } = fit.build;
  const out: Finding[] = [];
  const fits: { id: string; surface: string; comparison: Comparison<"m"> }[] = [];
  for (const surface of surfaces) {
    const found = buildUpOn(job, surface);
    if (found?.buildUp.foam === undefined) continue;
    const { name, buildUp } = found;
    if (buildUp.boards.length > 0 || buildUp.studs !== undefined) {
      const comparison = withinBoards(surface);
      fits.push({ id: surface.id, surface: surface.name, comparison });
      if (!comparison.holds) out.push(proud(fit, surface, comparison));
    }
    out.push(...behindStuds(fit, surface, name, buildUp), ...onePass(fit, surface, buildUp));
  }
  out.push(...underFloor(fit));
  const least = tightest(fits);
  if (out.length > 0 || least === undefined) return out;
  const facts = { count: fits.length, surface: least.surface, spare: least.comparison.margin };
  return [
    fit.make("foam fits", facts, { verdict: "pass", at: "foam-in-stack", about: fits.map(({ id }) => id), comparison: least.comparison }),
  ];
};

function foamOf({ id, stack }: Surface): Quantity<"m"> {
  if (stack.foam === undefined) throw new RangeError(`${id} has no foam in its stack`);
  return distance(
    line(stack.foam.from, id, "back of foam"),
    line(stack.foam.to, id, "front of foam"),
    "thickness of foam from the inside plane",
  );
}

function withinBoards(surface: Surface): Comparison<"m"> {
  const { id, stack } = surface;
  const base = stack.foam?.from;
  if (base === undefined) throw new RangeError(`${id} has no foam in its stack`);
  const room = distance(line(base, id, "back of foam"), line(stack.boardPlane, id, "plane of the boards"), "room between sheet and boards");
  return compare(foamOf(surface), "<=", room, SAME_LENGTH);
}

function proud({ make }: Fit, surface: Surface, comparison: Comparison<"m">): Finding {
  const facts = { surface: surface.name, foam: comparison.left.value, room: comparison.right.value, over: -comparison.margin };
  return make("foam past boards", facts, { verdict: "stop", at: `foam-in-stack/${surface.id}/boards`, about: [surface.id], comparison });
}

function behindStuds({ make }: Fit, surface: Surface, name: string, { studs }: BuildUp): readonly Finding[] {
  if (studs === undefined) return [];
  const standOff = given(studs.standOff, "m", "c_off", "stand-off of the studs", {
    kind: "job",
    path: pathText(["buildUps", name, "studs", "standOff"]),
  });
  const comparison = atLeast(foamOf(surface), standOff);
  if (comparison.holds) return [];
  const facts = { surface: surface.name, foam: comparison.left.value, standOff: standOff.value };
  return [
    make("foam short of studs", facts, { verdict: "watch", at: `foam-in-stack/${surface.id}/studs`, about: [surface.id], comparison }),
  ];
}

function onePass({ make }: Fit, surface: Surface, { foam }: Pick<BuildUp, "foam">): readonly Finding[] {
  if (foam === undefined) return [];
  const row = catalogue.foams.get(foam.row);
  const least = given(
    row.passThickness.least,
    "m",
    "d_pass",
    `least pass of ${row.what}`,
    fromRow(`foams/${row.id}`, "passThickness.least", row.source),
  );
  const comparison = atLeast(foamOf(surface), least);
  if (comparison.holds) return [];
  const facts = { surface: surface.name, foam: comparison.left.value, least: least.value };
  return [
    make("foam below one pass", facts, { verdict: "watch", at: `foam-in-stack/${surface.id}/pass`, about: [surface.id], comparison }),
  ];
}

/** Foam under the floor keeps between the cross-members, where forks and chassis do not reach it. */
function underFloor(fit: Fit): readonly Finding[] {
  const { build, make } = fit;
  const { foam } = build.job.floor;
  if (foam === undefined) return [];
  const thin = onePass(fit, surfaceOf(build, "floor"), { foam });
  const { crossMembers, id } = build.box;
  const thickness = given(foam.thickness, "m", "d_foam", "thickness of foam under the floor", {
    kind: "job",
    path: "floor.foam.thickness",
  });
  const depth = given(
    crossMembers.depth,
    "m",
    "h_cross",
    "depth of the cross-members",
    fromRow(`boxes/${id}`, "crossMembers.depth", crossMembers.source),
  );
  const comparison = compare(thickness, "<=", depth, SAME_LENGTH);
  if (comparison.holds) return thin;
  const facts = { foam: thickness.value, depth: depth.value };
  return [
    ...thin,
    make("foam below cross-members", facts, { verdict: "watch", at: "foam-in-stack/floor/depth", about: ["floor"], comparison }),
  ];
}
