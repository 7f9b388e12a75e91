import type { Sentences } from "../finding.ts";
import { capital } from "../say.ts";

/** Every code of this check, its facts in SI, and the sentence made from them. */
export const SENTENCES = {
  "clear field": (f: { surface: string; resistance: number; transmittance: number; bridges: string; foam: number; mean: number }, say) =>
    `${capital(f.surface)}: ${say.resistance(f.resistance)} from air to air in the field between ${f.bridges}, ${say.transmittance(f.transmittance)}, with foam ${say.length(f.foam)} thick at its least and ${say.length(f.mean)} on average. ${capital(f.bridges)} and frame lower the true value.`,
  "clear field without foam": (f: { surface: string; resistance: number; transmittance: number }, say) =>
    `${capital(f.surface)}: ${say.resistance(f.resistance)} from air to air, ${say.transmittance(f.transmittance)}, without foam.`,
  "bare face": (f: { surface: string; resistance: number; rooms: string; count: number }, say) =>
    `${capital(f.surface)} has no foam though ${f.rooms} ${f.count === 1 ? "is" : "are"} heated or cooled; only ${say.resistance(f.resistance)} from air to air.`,
  "temperatures not stated": () => "No room states a temperature to be held; say heatTo or coolTo to have bare faces pointed out.",
} as const satisfies Sentences;
