import type { PlacedOpening } from "../../build/build.ts";
import type { Part } from "../../build/part.ts";
import { overlaps, rectDistance } from "../../geometry/rect.ts";
import type { Finding } from "../check.ts";
import { tightest } from "../finding.ts";
import { type Fit, gapBetween, notNegative, type Rule } from "./context.ts";
import { sidesOf } from "./sides.ts";

/** Openings without framing of their own lie between the studs. */
export const openingsAndStuds: Rule = (fit) => {
  const bare = fit.build.openings.filter(({ framed }) => !framed);
  const out: Finding[] = [];
  const near: { opening: string; stud: string; comparison: ReturnType<typeof notNegative> }[] = [];
  for (const placed of bare) {
    const studs = fit.parts(placed.surface.id, "stud", "jamb stud", "cripple stud");
    const crossing = studs.find((stud) => overlaps(stud.rect, placed.lining));
    if (crossing !== undefined) {
      out.push(crossed(fit, placed, crossing));
      continue;
    }
    const beside = studs
      .filter((stud) => stud.rect.v0 < placed.lining.v1 && stud.rect.v1 > placed.lining.v0)
      .sort((a, b) => rectDistance(a.rect, placed.lining) - rectDistance(b.rect, placed.lining))[0];
    if (beside === undefined) continue;
    near.push({ opening: placed.opening.id, stud: beside.id, comparison: notNegative(roomBeside(placed, beside)) });
  }
  const least = tightest(near);
  if (out.length > 0 || least === undefined) return out;
  const { opening, stud, comparison } = least;
  const facts = { count: near.length, opening, stud, clear: comparison.margin };
  return [fit.make("openings between studs", facts, { verdict: "pass", at: "openings-and-studs", about: [opening, stud], comparison })];
};

function crossed({ make }: Fit, placed: PlacedOpening, stud: Part): Finding {
  const { id } = placed.opening;
  const [toStart, toEnd] = sidesOf(placed.surface);
  const back = placed.lining.u1 - stud.rect.u0;
  const on = stud.rect.u1 - placed.lining.u0;
  const facts = { opening: id, stud: stud.id, move: Math.min(back, on), way: (back < on ? toStart : toEnd).replace(/^on/, "to") };
  const comparison = notNegative(roomBeside(placed, stud));
  return make("stud in opening", facts, { verdict: "stop", at: `openings-and-studs/${id}`, about: [id, stud.id], comparison });
}

function roomBeside({ opening, lining }: PlacedOpening, stud: Part) {
  const hole = { from: lining.u0, to: lining.u1 };
  return gapBetween(hole, `opening ${opening.id}`, { from: stud.rect.u0, to: stud.rect.u1 }, stud.id, "along");
}
