import type { Sentences } from "../finding.ts";
import { capital, type Say } from "../say.ts";
import { whereWords } from "./moisture/where.ts";

/** Where a cold point lies. */
type Place = { section: string; near: string; along: number; across: number; up: number };

/** A surface against what a room asks of it. */
type Surface = Place & { room: string; when: string; factor: number; need: number; temperature: number; outside: number };

/** Every code of this check, its facts in SI, and the sentence made from them. */
export const SENTENCES = {
  "face with bridges": (f: { surface: string; field: number; bridged: number; share: number; bars: string }, say) =>
    f.bars === ""
      ? `${capital(f.surface)}: ${say.transmittance(f.field)} in the section of its field; no studs cross it.`
      : `${capital(f.surface)}: ${say.transmittance(f.bridged)} with ${f.bars}, ${say.transmittance(f.field)} without; they add ${say.share(f.share)}.`,
  "heat loss": (f: { loss: number; junctions: number; missing: number }) => {
    const missing = f.missing === 0 ? "" : `, without ${f.missing === 1 ? "a section" : `${f.missing} sections`} left out`;
    return `The box loses ${f.loss.toPrecision(3)} W for each kelvin by conduction${missing}, ${f.junctions.toPrecision(3)} W of it at edges, partitions and openings' frames; air that comes and goes is not counted.`;
  },
  "yearly heat": (f: { heat: number; degreeDays: number; base: number }, say) =>
    `By monthly means the box takes about ${say.energy(f.heat)} a year through its faces to stay at ${say.temperature(f.base)}, without sun, people, equipment and air.`,
  "surfaces clear": (f: Surface, say) =>
    `${f.room}: no surface in its sections is colder than it may be. The tightest is ${placeOf(f, say)}, ${factors(f)} (${f.when}).`,
  "surface condenses": (f: Surface, say) =>
    `${f.room}: water condenses in ${f.when} at ${placeOf(f, say)}: ${say.temperature(f.temperature)}, ${factors(f)}.`,
  "surface may grow mould": (f: Surface, say) =>
    `${f.room}: the air is over 80 % humid in ${f.when} at ${placeOf(f, say)}: ${say.temperature(f.temperature)}, ${factors(f)}.`,
  "surface condenses at the design hour": (f: Surface, say) =>
    `${f.room}: water condenses at the winter design hour at ${placeOf(f, say)}: ${say.temperature(f.temperature)} with ${say.temperature(f.outside)} outside, ${factors(f)}.`,
  "room air too damp": (f: { room: string; month: string; need: number }) =>
    `${f.room}: in ${f.month} the room's air is so damp that surfaces would need a temperature factor of ${f.need.toFixed(2)} against mould, which no wall of a box reaches; dry it, air it or heat it more.`,
  "nothing asked": (f: { room: string }) => `${f.room}: the outside is never colder than the room, so no inside surface is held to a temperature.`,
  "no heated room": () => "No room states a temperature to be held; say heatTo to have cold surfaces and moisture checked.",
  "humidity not stated": (f: { room: string; field: string }) =>
    `${f.room} states no humidity: say ${f.field} or its humidityClass to have mould and condensation checked.`,
  "months not stated": () => "The site states no monthly means; say site.monthly to have mould, vapour and the yearly heat checked.",
  "sections left out": (f: { names: string; count: number }) =>
    `${f.count === 1 ? "A section is" : `${f.count} sections are`} left out of heat loss and surfaces, because studs and openings leave no place to cut or the mesh was not fine enough: ${f.names}.`,
  "bare openings": (f: { openings: string; count: number; transmittance: number }, say) =>
    `${f.openings}: no article there states a transmittance, so ${f.count === 1 ? "it counts" : "each counts"} as a bare steel sheet, ${say.transmittance(f.transmittance)}, and ${f.count === 1 ? "its surface is" : "their surfaces are"} not checked.`,
  "no water in layers": (f: { room: string; surface: string; classes: string }) =>
    `${capital(f.surface)} beside ${f.room}: no vapour condenses in its layers in any month. From outside in: ${f.classes}.`,
  "water dries": (f: { room: string; surface: string; plane: string; month: string; amount: number; classes: string }, say) =>
    `${capital(f.surface)} beside ${f.room}: up to ${say.water(f.amount)} of water gathers at ${f.plane} by ${f.month} and dries within the year. From outside in: ${f.classes}.`,
  "water stays": (f: { room: string; surface: string; plane: string; left: number; amount: number; month: string; classes: string }, say) =>
    `${capital(f.surface)} beside ${f.room}: ${say.water(f.left)} of the water that gathers at ${f.plane} is left after a year, ${say.water(f.amount)} at most in ${f.month}. From outside in: ${f.classes}.`,
  "water stays behind foam": (f: { room: string; surface: string; plane: string; left: number; amount: number; month: string; classes: string }, say) =>
    `${capital(f.surface)} beside ${f.room}: by diffusion alone ${say.water(f.left)} a year stays at ${f.plane}, ${say.water(f.amount)} at most in ${f.month}; the foam is thick enough to count as its own vapour barrier. From outside in: ${f.classes}.`,
  "batts against steel": (f: { room: string; surface: string; plane: string; amount: number; month: string }, say) =>
    `${capital(f.surface)} beside ${f.room}: the batts lie against the steel with no foam between; up to ${say.water(f.amount)} of water gathers at ${f.plane} by ${f.month}.`,
  "foam is a barrier": (f: { surface: string; foam: number; least: number }, say) => {
    const [foam, least] = say.lengths(f.foam, f.least);
    return `${capital(f.surface)}: the foam is ${foam} thick at its least and counts as its own vapour barrier from ${least}.`;
  },
  "foam too thin for a barrier": (f: { surface: string; foam: number; least: number }, say) => {
    const [foam, least] = say.lengths(f.foam, f.least);
    return `${capital(f.surface)}: the foam is ${foam} thick at its least, less than the ${least} from which it counts as its own vapour barrier.`;
  },
  "foam is open": (f: { surface: string; foam: number }, say) =>
    `${capital(f.surface)}: open-cell foam, ${say.length(f.foam)}, lets vapour through to the steel; it needs a vapour barrier on its inside.`,
} as const satisfies Sentences;

function placeOf({ section, ...where }: Place, say: Say): string {
  return `the ${section}${where.near === "" ? "" : ","} ${whereWords(where, say)}`;
}

/** Factor and need with as many digits as tell them apart. */
function factors({ factor, need }: Surface): string {
  const digits = [2, 3, 4, 6].find((count) => factor.toFixed(count) !== need.toFixed(count)) ?? 8;
  return `temperature factor ${factor.toFixed(digits)}, needed ${need.toFixed(digits)}`;
}
