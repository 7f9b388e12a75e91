import type { PlacedOpening } from "../../build/build.ts";
import type { Surface } from "../../build/surface.ts";
import type { Finding } from "../check.ts";
import { tightest } from "../finding.ts";
import { around, partBox, spanGap, worldBox, type WorldBox } from "../places.ts";
import { type Fit, gapBetween, notNegative, type Rule } from "./context.ts";
import { TOWARD } from "./sides.ts";

/** No partition stands across an opening of the walls, the roof or the floor. */
export const openingsAndPartitions: Rule = (fit) => {
  const { build, make } = fit;
  const partitions = build.surfaces
    .filter(({ kind }) => kind === "partition")
    .flatMap((surface) => {
      const box = solidOf(fit, surface);
      return box === undefined ? [] : [{ surface, box }];
    });
  const cases = build.openings
    .filter(({ surface }) => surface.kind === "face" && surface.inward.x === 0)
    .flatMap((placed) =>
      partitions.map(({ surface, box }) => {
        const on = `opening ${placed.opening.id}`;
        const comparison = notNegative(gapBetween(openingBox(placed).x, on, box.x, surface.name, "along the box"));
        return { opening: placed.opening.id, partition: surface.id, comparison };
      }),
    );
  const out = cases
    .filter(({ comparison }) => !comparison.holds)
    .map(({ opening, partition, comparison }) =>
      make(
        "partition in opening",
        { opening, partition, over: -comparison.margin },
        {
          verdict: "stop",
          at: `openings-and-partitions/${opening}/${partition}`,
          about: [opening, partition],
          comparison,
        },
      ),
    );
  const least = tightest(cases);
  if (out.length > 0 || least === undefined) return out;
  const { opening, partition, comparison } = least;
  const facts = { opening, partition, clear: comparison.margin };
  return [
    make("openings clear of partitions", facts, {
      verdict: "pass",
      at: "openings-and-partitions",
      about: [opening, partition],
      comparison,
    }),
  ];
};

/** Floor openings lie between the cross-members. */
export const openingsAndCrossMembers: Rule = (fit) => {
  const { build, make } = fit;
  const holes = build.openings.filter(({ surface }) => surface.id === "floor");
  const members = fit.parts("floor", "cross-member").map((part) => ({ id: part.id, x: { from: part.rect.u0, to: part.rect.u1 } }));
  const out: Finding[] = [];
  const near: { opening: string; member: string; comparison: ReturnType<typeof notNegative> }[] = [];
  for (const { opening, hole } of holes) {
    const { id } = opening;
    const x = { from: hole.u0, to: hole.u1 };
    const cases = members.map((member) => ({
      opening: id,
      member: member.id,
      x: member.x,
      comparison: notNegative(gapBetween(x, `hole ${id}`, member.x, member.id, "along")),
    }));
    const worst = tightest(cases);
    if (worst === undefined) continue;
    if (worst.comparison.holds) {
      near.push(worst);
      continue;
    }
    const body = { at: `openings-and-cross-members/${id}`, about: [id, worst.member], comparison: worst.comparison };
    const width = x.to - x.from;
    const fewest = fewestCut(
      members.map((member) => member.x),
      width,
    );
    if (fewest > 0) {
      // A welded frame can carry the cut ends; without one they hang free.
      const verdict = opening.frame === undefined ? "stop" : "watch";
      out.push(make("opening wider than bay", { opening: id, count: fewest, width }, { ...body, verdict }));
      continue;
    }
    const back = x.to - worst.x.from;
    const on = worst.x.to - x.from;
    const facts = { opening: id, member: worst.member, move: Math.min(back, on), way: back < on ? TOWARD.x.from : TOWARD.x.to };
    out.push(make("cross-member in opening", facts, { ...body, verdict: "stop" }));
  }
  const least = tightest(near);
  if (out.length > 0 || least === undefined) return out;
  const { opening, member, comparison } = least;
  const facts = { opening, member, clear: comparison.margin };
  return [
    make("floor openings between cross-members", facts, {
      verdict: "pass",
      at: "openings-and-cross-members",
      about: [opening, member],
      comparison,
    }),
  ];
};

/** How many cross-members a hole of this width cuts at the place where it cuts fewest. */
function fewestCut(members: readonly { from: number; to: number }[], width: number): number {
  const counts = members.map((member) => {
    const hole = { from: member.to, to: member.to + width };
    return members.filter((other) => spanGap(hole, other) < -1e-6).length;
  });
  return Math.min(...counts.slice(0, -1), ...(counts.length === 1 ? counts : []));
}

/** What a partition takes: its framing and boards. */
function solidOf(fit: Fit, surface: Surface): WorldBox | undefined {
  const parts = fit.parts(surface.id, "track", "stud", "jamb stud", "cripple stud", "board");
  return parts.length === 0 ? undefined : around(parts.map((part) => partBox(surface, part)));
}

function openingBox({ surface, hole, lining }: PlacedOpening): WorldBox {
  const depth = { from: -surface.skinDepth, to: surface.stack.finished };
  return around([worldBox(surface, hole, depth), worldBox(surface, lining, depth)]);
}
