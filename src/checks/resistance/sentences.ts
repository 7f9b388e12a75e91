import type { Sentences } from "../finding.ts";
import { capital, type Say } from "../say.ts";

/** Said of a face whose insulation no studs and no cross-members cross. */
export const NO_BRIDGES = "none";

/** Every code of this check, its facts in SI, and the sentence made from them. */
export const SENTENCES = {
  "clear field": (f: Field & Foam, say) => clearField(f, foamWords(f, say), say),
  "clear field of batts": (f: Field & { batts: number }, say) => clearField(f, `batts ${say.length(f.batts)} thick`, say),
  "clear field of foam and batts": (f: Field & Foam & { batts: number }, say) =>
    clearField(f, `${foamWords(f, say)}, and batts ${say.length(f.batts)} thick`, say),
  "clear field without foam": (f: { surface: string; resistance: number; transmittance: number }, say) =>
    `${capital(f.surface)}: ${say.resistance(f.resistance)} from air to air, ${say.transmittance(f.transmittance)}, without foam.`,
  "bare face": (f: { surface: string; resistance: number; rooms: string; count: number }, say) =>
    `${capital(f.surface)} has no foam though ${f.rooms} ${f.count === 1 ? "is" : "are"} heated or cooled; only ${say.resistance(f.resistance)} from air to air.`,
  "temperatures not stated": () => "No room states a temperature to be held; say heatTo or coolTo to have bare faces pointed out.",
} as const satisfies Sentences;

interface Field {
  readonly surface: string;
  readonly resistance: number;
  readonly transmittance: number;
  readonly bridges: string;
}

interface Foam {
  readonly foam: number;
  readonly mean: number;
}

function clearField(f: Field, insulation: string, say: Say): string {
  const [field, bridges] =
    f.bridges === NO_BRIDGES
      ? ["the field", "The box's frame lowers"]
      : [`the field between ${f.bridges}`, `${capital(f.bridges)} and frame lower`];
  const values = `${say.resistance(f.resistance)} from air to air in ${field}, ${say.transmittance(f.transmittance)}`;
  return `${capital(f.surface)}: ${values}, with ${insulation}. ${bridges} the true value.`;
}

function foamWords({ foam, mean }: Foam, say: Say): string {
  const [least, average] = [say.length(foam), say.length(mean)];
  return least === average ? `foam ${least} thick` : `foam ${least} thick at its least and ${average} on average`;
}
