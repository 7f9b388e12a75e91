import type { Build } from "../../../build/build.ts";
import type { Finding } from "../../check.ts";
import type { EnvelopeStudy } from "../../envelope.ts";
import { type MakeFinding, tightest } from "../../finding.ts";
import { type DampRoom, MONTHS } from "../moisture/rooms.ts";
import { groupsOf, type SurfaceCase, surfaceCases, tooDamp, verdictIfMissed } from "../moisture/surfaces.ts";
import type { SENTENCES } from "../sentences.ts";

type Make = MakeFinding<typeof SENTENCES>;

/** For each damp room what its surfaces miss, the gravest for each group of sections, or one pass with the least margin. */
export function surfaceFindings(build: Build, study: EnvelopeStudy, rooms: readonly DampRoom[], make: Make): readonly Finding[] {
  const cases = surfaceCases(build, groupsOf(study.plan), rooms, study.solver);
  return rooms.flatMap((room) => {
    const own = cases.filter((one) => one.room === room);
    const groups = [...new Set(own.map(({ group }) => group))];
    const missed = groups.flatMap((group) => {
      const failed = own.filter((one) => one.group === group && !one.comparison.holds);
      const gravest = [...failed].sort((a, b) => 10 * (gravity(b) - gravity(a)) + a.comparison.margin - b.comparison.margin)[0];
      return gravest === undefined ? [] : [missedFinding(gravest, make)];
    });
    return [...dampFindings(room, make), ...(missed.length > 0 ? missed : clearFinding(room, own, make))];
  });
}

function dampFindings(room: DampRoom, make: Make): readonly Finding[] {
  const need = tooDamp(room, "mould");
  if (need === undefined) return [];
  const facts = { room: room.placed.name, month: MONTHS[need.month] as string, need: need.factor.value };
  return [make("room air too damp", facts, { verdict: "watch", at: `${room.environment}/air`, about: [room.environment], working: [need.factor] })];
}

function clearFinding(room: DampRoom, own: readonly SurfaceCase[], make: Make): readonly Finding[] {
  const least = tightest(own);
  const body = { at: `${room.environment}/surfaces`, about: [room.environment] };
  if (least === undefined) return [make("nothing asked", { room: room.placed.name }, { verdict: "note", ...body })];
  return [make("surfaces clear", factsOf(least), { verdict: "pass", ...body, comparison: least.comparison })];
}

function missedFinding(missed: SurfaceCase, make: Make): Finding {
  const { room, group, comparison } = missed;
  const facts = factsOf(missed);
  const body = { verdict: verdictIfMissed(missed), at: `${room.environment}/${group.id}`, about: [room.environment, ...group.about], comparison };
  if (missed.month === undefined) return make("surface condenses at the design hour", facts, body);
  return make(missed.criterion === "mould" ? "surface may grow mould" : "surface condenses", facts, body);
}

/** Margins lie within one of each other, so that gravity rules. */
function gravity(one: SurfaceCase): number {
  const stop = verdictIfMissed(one) === "stop" ? 2 : 0;
  return stop + (one.criterion === "condensation" && one.month !== undefined ? 1 : 0);
}

function factsOf({ room, month, where, comparison, outside, inside }: SurfaceCase) {
  const factor = comparison.left.value;
  return {
    ...where,
    room: room.placed.name,
    when: month ?? "the winter design hour",
    factor,
    need: comparison.right.value,
    temperature: outside + factor * (inside - outside),
    outside,
  };
}
