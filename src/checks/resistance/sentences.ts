import type { Sentences } from "../finding.ts";
import { capital } from "../say.ts";

/** Said of a face whose foam no studs and no cross-members cross. */
export const NO_BRIDGES = "none";

/** Every code of this check, its facts in SI, and the sentence made from them. */
export const SENTENCES = {
  "clear field": (f: { surface: string; resistance: number; transmittance: number; bridges: string; foam: number; mean: number }, say) => {
    const [least, mean] = [say.length(f.foam), say.length(f.mean)];
    const foam = least === mean ? `foam ${least} thick` : `foam ${least} thick at its least and ${mean} on average`;
    const [field, bridges] =
      f.bridges === NO_BRIDGES
        ? ["the field", "The box's frame lowers"]
        : [`the field between ${f.bridges}`, `${capital(f.bridges)} and frame lower`];
    const values = `${say.resistance(f.resistance)} from air to air in ${field}, ${say.transmittance(f.transmittance)}`;
    return `${capital(f.surface)}: ${values}, with ${foam}. ${bridges} the true value.`;
  },
  "clear field without foam": (f: { surface: string; resistance: number; transmittance: number }, say) =>
    `${capital(f.surface)}: ${say.resistance(f.resistance)} from air to air, ${say.transmittance(f.transmittance)}, without foam.`,
  "bare face": (f: { surface: string; resistance: number; rooms: string; count: number }, say) =>
    `${capital(f.surface)} has no foam though ${f.rooms} ${f.count === 1 ? "is" : "are"} heated or cooled; only ${say.resistance(f.resistance)} from air to air.`,
  "temperatures not stated": () => "No room states a temperature to be held; say heatTo or coolTo to have bare faces pointed out.",
} as const satisfies Sentences;
