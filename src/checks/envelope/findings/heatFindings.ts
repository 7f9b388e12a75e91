import { type Build, surfaceOf } from "../../../build/build.ts";
import type { Finding } from "../../check.ts";
import type { MakeFinding } from "../../finding.ts";
import type { EnvelopeStudy } from "../../envelope.ts";
import { yearlyHeatOf } from "../heat/yearlyHeat.ts";
import type { SENTENCES } from "../sentences.ts";

type Make = MakeFinding<typeof SENTENCES>;

/** Faces with what bridges them, the whole box, the year, and what the sum leaves out. */
export function heatFindings(build: Build, study: EnvelopeStudy, make: Make): readonly Finding[] {
  return [...faceFindings(build, study, make), ...wholeFindings(build, study, make), ...leftOut(study, make), ...bareOpenings(study, make)];
}

function faceFindings(build: Build, { losses }: EnvelopeStudy, make: Make): readonly Finding[] {
  return losses.faces.map(({ surface, field, bridged, bars }) =>
    make(
      "face with bridges",
      {
        surface: surfaceOf(build, surface).name,
        field: field.value,
        bridged: bridged.value,
        share: bridged.value / field.value - 1,
        bars: bars.map(({ name }) => name).join(" and "),
      },
      { verdict: "note", at: `face/${surface}`, about: [surface], working: [bridged] },
    ),
  );
}

function wholeFindings(build: Build, { plan, unsolved, losses: { whole, junctions } }: EnvelopeStudy, make: Make): readonly Finding[] {
  if (whole === undefined) return [];
  const atJunctions = junctions.reduce((sum, { psi, length }) => sum + psi.value * length.value, 0);
  const loss = make("heat loss", { loss: whole.value, junctions: atJunctions, missing: plan.missing.length + unsolved.length }, { verdict: "note", at: "heat-loss", about: [], working: [whole] });
  const year = yearlyHeatOf(build, whole);
  if (year === undefined) return [loss];
  const { heat, degreeDays, base } = year;
  return [loss, make("yearly heat", { heat: heat.value, degreeDays: degreeDays.value, base: base.value }, { verdict: "note", at: "yearly-heat", about: [], working: [heat] })];
}

function leftOut({ plan, unsolved }: EnvelopeStudy, make: Make): readonly Finding[] {
  const names = [...plan.missing, ...unsolved.map(({ planned }) => planned.name)];
  if (names.length === 0) return [];
  return [make("sections left out", { names: names.join("; "), count: names.length }, { verdict: "note", at: "left-out", about: [] })];
}

function bareOpenings({ losses }: EnvelopeStudy, make: Make): readonly Finding[] {
  const bare = losses.openings.filter(({ isBare }) => isBare);
  const [first] = bare;
  if (first === undefined) return [];
  const openings = bare.map(({ opening }) => opening);
  const facts = { openings: openings.join(", "), count: bare.length, transmittance: first.transmittance.value };
  return [make("bare openings", facts, { verdict: "note", at: "bare-openings", about: openings, working: [first.transmittance] })];
}
